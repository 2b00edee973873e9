/** Sentences about recording checks of condition, in English. */
export const conditionWords = {
  refusals: {
    "check.needs-loan": "A check on this occasion belongs to a loan. Say to which.",
    "check.not-on-loan": "The specimen is not on this loan.",
    "check.not-on-this-occasion":
      "A borrower records checks at arrival, before departure and after an incident.",
    "check.not-where-it-is":
      "The occasion does not fit where {specimen} is on this loan: {state}. Choose one that does.",
    "check.crate-closed":
      "{specimen} is still in the closed crate {crate}. It is looked at once the crate has been opened and counted.",
    "check.in-future": "A check is recorded on the day it was made or later, not before.",
    "check.other-day": "Give another day.",
    "check.before-prepared":
      "The specimen was prepared on {from}. Nobody can have looked at it earlier: give that day or a later one.",
    "check.before-acquired":
      "The specimen came into the collection on {from}. A check here is of that day or later.",
    "check.before-latest":
      "The check before this one is of {from}. A check stands after the ones before it: give that day or a later one.",
    "check.before-accepted": "The loan was accepted on {from}. A check for it is of that day or later.",
    "check.before-arrived": "The crate came to the venue on {from}. A check there is of that day or later.",
    "check.before-opened":
      "The crate was opened at the venue on {from}. A check there is of that day or later.",
    "check.before-counted":
      "The crate was opened and counted at home on {from}. The check after the return is of that day or later.",
  },
} as const;
