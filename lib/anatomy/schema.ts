/**
 * The words of the vocabulary of gross anatomy: what a structure is, how it is
 * named, and which four relations are stated between structures. Regions, systems
 * and classes stand in the same vocabulary as the structures that lie in them.
 *
 * Strict part, kind, region and system are kept apart: a nerve that crosses
 * regions is part of none of them, but lies in each.
 */

export const structureKinds = ["structure", "region", "system", "class"] as const;
export type StructureKind = (typeof structureKinds)[number];

export const relations = ["part-of", "is-a", "in-region", "in-system"] as const;
export type Relation = (typeof relations)[number];

/** By which way a structure follows from another: part of it, kind of it, in its region, in its system. */
export const ancestorPaths = ["part", "kind", "region", "system"] as const;
export type AncestorPath = (typeof ancestorPaths)[number];

/** BCP 47 tags of the languages that the shipped vocabulary speaks. */
export const nameLanguages = ["en", "la", "de"] as const;
export type NameLanguage = (typeof nameLanguages)[number];

export const nameKinds = ["preferred", "synonym"] as const;
export type NameKind = (typeof nameKinds)[number];

/** One line of the vocabulary, as its author states it. */
export type VocabularyRow = {
  id: string;
  kind: StructureKind;
  animal: boolean;
  english: string;
  latin: string;
  partOf: readonly string[];
  isA: readonly string[];
  regions: readonly string[];
  /** Empty for a region, which lies across all systems. */
  system: string;
  paired: boolean;
  englishSynonyms: readonly string[];
  latinSynonyms: readonly string[];
  /** In languages beside English and Latin, each at most once. */
  otherNames: readonly OtherNames[];
};

export type OtherNames = { language: NameLanguage; preferred: string; synonyms: readonly string[] };

/** A relation as stated. */
export type StructureLink = { childId: string; relation: Relation; parentId: string };

/** A relation as it follows. */
export type StructureAncestor = { ancestorId: string; descendantId: string; via: AncestorPath };

/** One way of naming a structure, with the key that searching compares. */
export type StructureName = {
  structureId: string;
  language: NameLanguage;
  text: string;
  kind: NameKind;
  searchKey: string;
};

/**
 * How a searched text met a name, best first: the same words; the same words with
 * other endings; as noun where the name has the adjective ("femoris artery"); whole
 * words of it, or the beginnings of all of them; the whole name but for one slip of
 * the hand; the beginning of some word of a longer name; within a few slips; alike.
 */
export const matchTiers = [
  "preferred name",
  "other name",
  "other ending",
  "other form",
  "beginning",
  "near name",
  "loose beginning",
  "typing error",
  "likeness",
] as const;
export type MatchTier = (typeof matchTiers)[number];
