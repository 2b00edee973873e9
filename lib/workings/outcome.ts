/**
 * The three answers of a rule, the same in every room. What is not known is
 * never clear.
 */
export const outcomes = ["clear", "attend", "bar"] as const;
export type Outcome = (typeof outcomes)[number];

/** The strictest of several answers; "clear" when there are none. */
export function strictestOutcome(answers: readonly Outcome[]): Outcome {
  if (answers.includes("bar")) return "bar";
  return answers.includes("attend") ? "attend" : "clear";
}
