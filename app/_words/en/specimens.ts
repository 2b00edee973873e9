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
    "specimen.appendix-animal-only": "Appendices are for animals. Leave it empty for a human specimen.",
    "specimen.death-period-human-only": "The time of death is for human specimens only. Leave it empty.",
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
    "filter.unreadable": "This search cannot be read as it stands. Correct what is named.",
    "filter.unknown-parameter": "A search has no such parameter. It knows {known}.",
    "filter.no-such-parameter": "There is no such parameter.",
    "filter.parameter-twice": "This stands twice. Give it once.",
    "filter.true-or-false": "Write true or false.",
    "set.too-many": "A set is sought for twenty structures at most.",
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

/** Words of the list of specimens. */
export const specimenListWords = {
  search: "Number, title, or a structure in English, Latin or German",
  searchHint: "Try AN 2019.0142, “upper limb”, “n. vagus”, “Niere” or X. A typing error is forgiven.",
  daysHint: (small: number, crate: number, body: number) =>
    `Days for packing, travel and checks before and after are kept free too: ${small} for what one person carries, ${crate} for what needs a crate, ${body} for a whole body.`,
  withSheets: "Sheets of series too",
  withSheetsHint: "A sheet is found by its number in any case.",
  found: "Found",
  all: "All specimens",
  rowKeys: "The arrow keys move from row to row, Enter opens.",
  hits: {
    number: (number: string) => `other number ${number}`,
    ownNumber: "by its number",
    title: "by its title",
    "number and title": "by its number and title",
    alike: "its title is like this",
  },
  shows: (structures: string) => `shows ${structures}`,
  impliedBy: (structures: string) => `recorded as a whole: ${structures}`,
  further: (count: number) => `and ${count} more`,
  free: "Free in the next two years",
  toBeHad: "To be had in the next two years",
  region: "Region",
  anyRegion: "any region",
  system: "System",
  anySystem: "any system",
  species: "Animal species",
  anySpecies: "any species",
  freeWithin: "Free on these days",
  sheetsLeftOut: "Sheets of series are left out.",
  showSheets: "Show them too",
  showImplied: "Also likely, not verified",
  impliedAbout: (meant: string) =>
    `These should contain ${meant}, because a larger whole or region is recorded and nothing says that it is gone. Nobody has verified it.`,
  showRecorded: "Back to what is recorded",
} as const;

/** Words of the strips of days. */
export const stripWords = {
  strip: (label: string, window: string, free: readonly string[]) =>
    free.length === 0 ? `${label}, ${window}: not free` : `${label}, ${window}: free ${free.join("; ")}`,
  free: "free",
  promised: "promised",
  toBeHad: "can be with you, days for packing, travel and checks taken off",
  notToBeHad: "cannot",
  asked: "the days asked for",
  around: "with the days for packing, travel and checks",
  letters: "A tick is the first of a month; the letters are its months, or the year where they stand close.",
} as const;
