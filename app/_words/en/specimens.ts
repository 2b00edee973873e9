/** Sentences and labels of the catalogue, in English. */
export const specimensWords = {
  refusals: {
    "specimen.number-taken": "Another specimen has this accession number already. Choose the next free one.",
    "specimen.number-pattern":
      "This number does not follow the centre's pattern. The settings of the centre show an example.",
    "specimen.species-mismatch":
      "A human specimen is Homo sapiens, and only a human one is. Correct the species, or whether it is human.",
    "specimen.fluid-missing": "Name the fluid: limits and transport depend on it.",
    "specimen.fluid-not-for-this":
      "Only a fluid-preserved specimen has a fluid. Leave it empty, or choose that preparation.",
    "specimen.age-band-human-only": "An age band is for human specimens only. Leave it empty.",
    "specimen.mount-lighter-than-specimen":
      "With its mount the specimen cannot weigh less than without. Check both masses.",
    "specimen.twice": "This stands in the list already. Remove one of the two.",
    "specimen.whole-unknown": "There is no such specimen to be part of. Choose it from the catalogue.",
    "specimen.whole-in-ring":
      "This specimen is itself a whole of the one you chose, so it cannot be a part of it. Choose another whole.",
    "specimen.sheet-of-series": "It belongs to a series of sheets, so its kind stays “sheet”.",
    "shown.twice": "This structure stands in the list already with the same side. Keep one of the two.",
    "series.code-taken": "There is already a series with this code. Choose another.",
    "series.number-taken": "The series has a sheet with this number already.",
    "series.number-outside": "This number lies outside the numbers of the series.",
    "series.sheet-outside":
      "Some recorded sheets would lie outside the series. Keep the first number and the count wide enough for them.",
    "series.landmarks-disorder":
      "Each further sheet has to mean a further level in the same direction, and each level and sheet stands once.",
    "step.ends-before-start": "The step ends before it starts. Check both days.",
    "picture.too-many-pixels":
      "The picture has more than 60 million pixels. Save a copy with fewer and try again.",
    "filter.both-days": "Give both days, the first and the last, or neither.",
    "filter.days-reversed": "The last day has to lie after the first.",
    "page.key-unknown": "This page of the list does not exist. Start from the first page.",
  },
  labels: {
    evidence: {
      recorded: "Recorded as shown",
      implied: "Should contain it, not verified",
    },
    sheetStates: { here: "here", lent: "lent", missing: "missing" },
    shownStates: {
      shown: "shown",
      removed: "removed in dissection",
      absent: "absent by nature or surgery",
      variant: "shown, as a variant",
      "not assessed": "not assessed",
    },
    directions: {
      "head to foot": "numbered from head to foot",
      "foot to head": "numbered from foot to head",
      "left to right": "numbered from left to right",
      "right to left": "numbered from right to left",
      "front to back": "numbered from front to back",
      "back to front": "numbered from back to front",
    },
  },
} as const;
