/** Words of what rules of law ask of a specimen, in English. */
export const legalFactsWords = {
  legend: "Origin and law",
  hint: "What rules of lending ask for. Leave open what nobody knows: what is not known is never taken for good.",
  containsCells: "Contains tissue with cells, preserved or not",
  wholeBody: "A whole body",
  originCountry: "Country it came from",
  originCountryHint: "Two capital letters, for example NO.",
  imported: "Came to the centre's country from another",
  heldSince: "In a collection since, here or before",
  deathPeriod: "Time of death",
  deathPapers: "Papers on cause and registration of the death are on file",
  anatomicalExamination: "Used or authorised for anatomical examination",
  speciesAppendix: "Appendix of species protection",
  madePeriod: "Time of making",
  freeFluidMl: "Free fluid in its own container, ml",
  unknown: "not known",
} as const;
