/** Words of fields and buttons that many forms share, in English. */
export const fieldWords = {
  yes: "yes",
  no: "no",
  notKnown: "not known",
  notANumber: "Write a number, for example 45 or 45.5; leave the field empty when it is not known.",
  twoReadings: (large: string, small: string) =>
    `This can be read in two ways. Write ${large} or ${small}, with no mark between the thousands.`,
  tooManyDecimals: (decimals: number) =>
    decimals === 0
      ? "This currency has no decimals. Write a whole number, for example 30000."
      : `This currency has ${decimals} decimals. Write no more of them.`,
  notAnAmount: "Write an amount, for example 30000 or 30000.50.",
  codesHint: "Two capital letters each, with commas between: NO, DE, AT.",
  fillIn: "Fill this in.",
  notWhole: "What stands here cannot be read. Write it again.",
  lookAgain: "Something is still missing; nothing has been sent.",
  save: "Save",
  cancel: "Cancel",
  remove: "Remove",
  keptDraft: "What you type is kept in this tab until it is saved. An empty field means not known.",
} as const;
