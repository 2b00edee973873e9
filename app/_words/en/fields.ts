/** Words of fields and buttons that many forms share, in English. */
export const fieldWords = {
  yes: "yes",
  no: "no",
  notKnown: "not known",
  notANumber: "Write a number, for example 45 or 45.5; leave the field empty when it is not known.",
  codesHint: "Two capital letters each, with commas between: NO, DE, AT.",
  save: "Save",
  cancel: "Cancel",
  remove: "Remove",
  keptDraft: "What you type is kept in this tab until it is saved. An empty field means not known.",
} as const;
