/** Sentences about institutions, venues and accounts, in English. */
export const peopleWords = {
  refusals: {
    "institution.name-taken": "There is already an institution of this name.",
    "venue.low-above-high": "The highest lies below the lowest.",
    "venue.subdivision-pattern": "Write the part of the country by ISO 3166-2, for example GB-SCT or US-CA.",
    "venue.subdivision-elsewhere": "This part lies in another country than the venue.",
    "venue.name-taken": "This institution already has a venue of this name.",
    "account.email-taken": "There is already an account with this e-mail address.",
    "account.institution-of-borrower":
      "A borrower belongs to one institution; the house's own people belong to none.",
    "centre.pattern-broken":
      "This pattern cannot be read. Use a regular expression, for example AN \\d{4}\\.\\d{4}.",
    "language.tag": "Write a language as a tag, for example en or de-AT.",
  },
} as const;
