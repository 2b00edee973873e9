/** Words of closing a loan: what is still missing, and the customs discharge, in English. */

export const closingWords = {
  title: "What is still missing before the close",
  nothing: "Nothing is missing.",
  holds: "holds the file open",
  told: "told; the file can be closed",
  customs: "Customs discharge",
  customsAbout: (countries: string) =>
    `The way crossed a customs border (${countries}). What went out for a time is shown to be back, or cleared, before the file is closed. Which office and which paper: check with the local authority.`,
  why: "A temporary stay that is not discharged becomes a claim for duty. It concerns the papers only and never holds a specimen back from coming home.",
  whySource: "Common practice, no source",
  none: "No discharge is on record.",
  caption: "Customs discharges on record",
  record: "Record the discharge",
  again: "Record a further discharge",
  dischargedOn: "Discharged on",
  office: "Customs office",
  reference: "Reference",
  referenceHint: "Of the entry, the carnet's counterfoil or the office's notice.",
  note: "Note",
  by: "Recorded by",
  recorded: "The discharge is on record.",
  see: "See to it",
  refusals: {
    "discharge.office-missing": "Name the customs office.",
    "discharge.reference-missing": "Write the reference of the entry, the counterfoil or the notice.",
    "discharge.no-border": "No customs border lies on the way of {loan}: there is nothing to discharge.",
    "discharge.before-it-left": "On this day it had not left yet.",
    "loan.not-discharged":
      "The loan crossed a customs border ({countries}) and its discharge is not on record. Record it, then close.",
  },
  missing: {
    "close.not-checked-in": "{specimen} is not checked in: {state}[specimens:|; {specimens} in all].",
    "close.not-discharged": "The customs discharge is not on record ({countries}).",
    "close.claim-open": "Claim {claim} for {specimen} is open; it goes on after the close.",
    "close.no-statement": "No cost statement says what the loan came to.",
    "close.not-paid": "{minor} of what is owed is not paid.",
    "close.owed-back": "{minor} more was paid than is owed: to be paid back.",
    "close.no-check-arrival":
      "No check on arrival at the venue: {specimen}[specimens:|, one of {specimens} specimens].",
    "close.no-check-departure":
      "No check before the way home: {specimen}[specimens:|, one of {specimens} specimens].",
    "close.no-climate-record": "No record of the air at {venue} between {from} and {until} is filed.",
  },
  due: {
    "due.customs-discharge":
      "{loan}, {borrower}: home, and the customs discharge is not on record; to be shown by {date}.",
    "due.payment-before-dispatch":
      "{loan}, {borrower}: what the quotation, version {version}, asks for is not all paid; dispatch waits for it.",
    "due.statement-unpaid": "{loan}, {borrower}: the cost statement, version {version}, is not all paid.",
  },
} as const;
