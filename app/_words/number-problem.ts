/** Why a typed number cannot be read, as a sentence that says how to write it. */
import { type NumberKind, numberProblem } from "#app/_parts/typed-number.ts";
import { fieldWords as words } from "#app/_words/en/fields.ts";

/** @returns nothing for what can be read, and for an empty field */
export function numberSentence(text: string, kind: NumberKind): string | undefined {
  const problem = numberProblem(text, kind);
  switch (problem?.why) {
    case undefined:
      return undefined;
    case "two readings":
      return words.twoReadings(problem.large, problem.small);
    case "too many decimals":
      return words.tooManyDecimals(problem.decimals);
    case "not a number":
      return typeof kind === "object" ? words.notAnAmount : words.notANumber;
  }
}
