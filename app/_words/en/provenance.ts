/** Sentences about donors, consent, permits and title, in English. */
export const provenanceWords = {
  refusals: {
    "donor.consent-changed-meanwhile":
      "Somebody else recorded a consent of this donor at the same moment. Look at the new state, then try again.",
    "donor.code-pattern": "A donor's code is D- and five letters or digits, for example D-4K7QX.",
    "donor.no-code-left": "No free donor code was found. Try again; if it stays so, tell the administrator.",
    "donor.not-of-an-animal":
      "{accessionNumber} is recorded as animal, and animals have no donor. Correct the species first if that is wrong.",
    "donor.reason-missing":
      "Say why the sealed record is opened, in at least ten characters. The reason is kept with your name.",
    "donor.dates-reversed": "The day of death lies before the day of birth.",
    "consent.country-both-ways":
      "The same country is both allowed and refused. Keep it in one of the two lists.",
    "consent.ends-before-signed": "The consent would end before it was signed. Look at both dates.",
    "consent.date-to-come": "This day is still to come. Write the day on which it happened.",
    "consent.withdrawn-since":
      "The donor's consent was withdrawn on {withdrawnOn}. Only a form signed on or after that day can take its place.",
    "consent.none-to-withdraw":
      "This donor has no consent on record. Record the form first, as unknown where it is lost, then the withdrawal.",
    "consent.already-withdrawn": "This consent is already withdrawn, from {withdrawnOn}.",
    "consent.effective-too-early": "A withdrawal cannot take effect before it was received.",
    "permit.reason-missing":
      "Say why the permit is taken back, in at least ten characters. The reason stays on record.",
    "permit.withdrawn-already":
      "This permit is taken back already, from {withdrawnOn}. To put that right, record the permit again first.",
    "permit.ended-before":
      "This permit ended on {validUntil} by itself. Only a permit that still counts on that day can be taken back.",
    "permit.changed-meanwhile":
      "Somebody else took this permit back at the same moment. Look at the new state, then try again.",
    "permit.period-reversed": "The permit would end before it begins. Look at both dates.",
    "title.owner-missing": "A deposit and a loan-in belong to somebody else. Name the owner.",
    "title.leave-unproven": "Name the letter or paper in which the owner allows lending.",
  },
} as const;
