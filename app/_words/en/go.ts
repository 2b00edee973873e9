/** Words of the field that goes anywhere: frequent acts as they are typed, and what stands on its card. */
export const actWords = {
  newSpecimen: ["new specimen", "record a specimen"],
  newSeries: ["new series"],
  newInstitution: ["new institution", "new borrower"],
  newLoan: ["new loan", "open a loan"],
  set: ["put a set together", "set", "borrow"],
  slip: ["slip", "enquiry slip", "new request", "ask for a loan"],
  donors: ["donors"],
  whatHappened: ["what happened", "audit"],
  accounts: ["accounts", "people"],
  places: ["places", "stores"],
  institutions: ["institutions", "borrowers"],
  loans: ["loans"],
  due: ["due", "at risk", "due and at risk"],
  series: ["series"],
  centre: ["centre", "house"],
  workings: ["workings"],
} as const satisfies Record<string, readonly [string, ...string[]]>;
export type ActName = keyof typeof actWords;

export const exampleWords = {
  specimen: "a specimen by its number, also a former one",
  structure: "what shows a structure, in English, Latin or German",
  loan: "a loan",
  institution: "an institution",
  act: "a frequent act",
} as const;

/** What the catalogue says of a text that leads elsewhere, and not for this person. */
export const soughtWords = {
  loan: (text: string) =>
    `There is no loan ${text}, or it is not yours to see. The catalogue was looked through instead.`,
  act: (text: string) =>
    `“${text}” is not among the acts of your role. The catalogue was looked through instead.`,
} as const;
export type Sought = keyof typeof soughtWords;
