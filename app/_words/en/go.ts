/** Frequent acts, as they are typed, and where they are done. */
export const actWords: readonly (readonly [words: readonly string[], address: string])[] = [
  [["new specimen", "record a specimen"], "/specimens/new"],
  [["new series"], "/series/new"],
  [["new institution", "new borrower"], "/institutions/new"],
  [["slip", "enquiry slip", "new request", "ask for a loan"], "/slip"],
  [["due", "at risk", "due and at risk"], "/"],
  [["loans"], "/loans"],
  [["donors"], "/donors"],
  [["what happened", "audit"], "/audit"],
  [["workings"], "/workings"],
];
