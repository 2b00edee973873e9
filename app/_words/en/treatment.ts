/** Words of the hours of treatment before a specimen leaves, in English. */
export const treatmentWords = {
  refusals: {
    "treatment.hours-places": "Write hours with at most two places, such as 1.5 or 0.25.",
    "treatment.hours-many": "More than 2000 hours are a project of their own and no treatment before a loan.",
    "treatment.work-missing": "Say what is to be done in these hours.",
  },
  title: "Treatment before it leaves",
  about:
    "The conservator's hours go into the next quotation, at the fee scale's rate for preparation and treatment. A quotation that is drawn up keeps what it says.",
  caption: "Hours of treatment by specimen",
  specimen: "Specimen",
  hours: "Hours",
  work: "What is to be done",
  by: "Estimated by",
  none: "not estimated",
  noneYet: "Nobody has estimated hours of treatment. The conservator does, before the loan is quoted.",
  together: (hours: string) => `Together ${hours} h.`,
  estimate: "Estimate treatment",
  hoursHint: "0 where nothing is to be done. Empty takes the estimate back.",
  save: "Keep the estimate",
  done: (specimen: string) => `The estimate for ${specimen} is kept. The next quotation counts it.`,
  takenBack: (specimen: string) => `The estimate for ${specimen} is taken back.`,
  inQuotation: (hours: string) =>
    `The conservator estimates ${hours} h of treatment for what is on the loan now. A new version begins with the quantities of the version before.`,
} as const;
