/** Sentences about recording checks of condition, in English. */
export const conditionWords = {
  refusals: {
    "check.needs-loan": "A check on this occasion belongs to a loan. Say to which.",
    "check.not-on-loan": "The specimen is not on this loan.",
    "check.not-on-this-occasion":
      "A borrower records checks at arrival, before departure and after an incident.",
    "check.in-future": "A check is recorded on the day it was made or later, not before.",
  },
} as const;
