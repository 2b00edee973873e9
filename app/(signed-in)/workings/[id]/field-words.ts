/** What stands at a field of a working: its label, its bounds, its options, and why it was refused. */
import type { FormIssue } from "#app/_parts/form-state.ts";
import { roundForReading } from "#app/_parts/record-page.tsx";
import { fractionToPercent } from "#app/_parts/typed-number.ts";
import {
  type BooleanField,
  type ChoiceField,
  type Field,
  kindOfNumber,
  type NumberField,
} from "#app/_parts/working-fields.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import { wordsOfValue } from "#app/_words/names.ts";
import { numberSentence } from "#app/_words/number-problem.ts";

/** Bounds beyond this only keep nonsense out and say nothing to a person. */
const widest = 1e6;

export function labelOf(field: Field): string {
  const unit = field.kind === "number" || field.kind === "choice" ? field.unit : "";
  return unit === "" ? field.title : `${field.title}, ${unit}`;
}

/** The bounds of a number in words, in the unit it is typed in. */
export function rangeOf(field: NumberField): string | undefined {
  const shown = (bound: number) => roundForReading(field.percent ? fractionToPercent(bound) : bound);
  const { minimum, maximum, aboveMinimum, unit } = field;
  const low = minimum === null ? null : shown(minimum);
  const high = maximum === null || maximum >= widest ? null : shown(maximum);
  if (low !== null && high !== null)
    return aboveMinimum ? words.above(low, high, unit) : words.between(low, high, unit);
  if (low !== null) return aboveMinimum ? words.aboveOnly(low, unit) : words.atLeast(low, unit);
  return high === null ? undefined : words.atMost(high, unit);
}

export function hintOf(field: Field): string | undefined {
  const hints = [
    field.kind === "number" ? rangeOf(field) : undefined,
    field.required || (field.kind === "number" && field.start !== null) ? undefined : words.optional,
  ].filter((hint) => hint !== undefined);
  return hints.join("; ") || undefined;
}

export function optionsOf(field: ChoiceField | BooleanField): (readonly [value: string, word: string])[] {
  if (field.kind === "boolean")
    return [
      ["yes", words.yes],
      ["no", words.no],
    ];
  return field.options.map((option) => [String(option), wordsOfValue(String(option))] as const);
}

/** @param path where the value stands in the input */
export function refusalOf(
  field: Field,
  path: string,
  value: unknown,
  issues: readonly FormIssue[],
): string | undefined {
  const issue = issues.find((each) => each.path === path);
  if (!issue) return undefined;
  if (value === undefined) return words.needed;
  if (field.kind !== "number") return issue.message;
  if (typeof value === "string") return numberSentence(value, kindOfNumber(field)) ?? words.notANumber;
  if (typeof value !== "number") return words.notANumber;
  const range = rangeOf(field);
  return range === undefined ? issue.message : words.outside(range);
}
