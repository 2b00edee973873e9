/** Sentences and labels of the vocabulary of anatomy, in English. */
export const anatomyWords = {
  refusals: {
    "structure.unknown":
      "The vocabulary has no such structure. Choose one from the list that opens while you type.",
    "anatomy.ring": "The vocabulary goes round in a ring: {ring}. Take one of these relations out.",
    "anatomy.unknown-structure": "The vocabulary refers to “{id}”, which it does not have.",
  },
  labels: {
    relations: {
      "part-of": "part of",
      "is-a": "kind of",
      "in-region": "in the region",
      "in-system": "in the system",
    },
    structureKinds: { structure: "structure", region: "region", system: "system", class: "class" },
    languages: { en: "English", la: "Latin", de: "German" },
    tiers: {
      "preferred name": "this name",
      "other name": "another name for it",
      "other ending": "the same name with another ending",
      "other form": "the same name in another form",
      beginning: "begins like this",
      "near name": "perhaps meant",
      "loose beginning": "has a word that begins like this",
      "typing error": "perhaps meant",
      likeness: "similar",
    },
  },
} as const;
