/**
 * A working is a computation that shows how it was done: typed input with units
 * and ranges, the steps in the order of the paper, the sources, the cautions.
 *
 * Declared once, it is a plain function for other rooms (`cushion(input)`), and
 * `explain` gives the same result with every step, which is what a margin note,
 * the API and the command line show. Steps are recorded only when asked for.
 */
import type { z } from "zod";
import { parseInput } from "#lib/platform/parse.ts";
import type { Citation } from "#lib/workings/sources.ts";

/** One line of a working: what, how much, in which unit, by which formula. */
export type Step = { label: string; value: number | string | boolean; unit: string; formula: string };

/** Records a step; returns the value so that it can stand inside an expression. */
export type Note = <V extends number | string | boolean>(
  label: string,
  value: V,
  unit?: string,
  formula?: string,
) => V;

export type Explanation<Output> = {
  output: Output;
  steps: Step[];
  sources: readonly Citation[];
  cautions: readonly string[];
};

export type Declaration<Input extends z.ZodType, Output extends z.ZodType> = {
  /** kebab-case, unique in the program, the last part of its address in the API. */
  id: string;
  title: string;
  /** One sentence: what it answers. */
  about: string;
  input: Input;
  output: Output;
  sources: readonly Citation[];
  cautions: readonly string[];
  compute(input: z.output<Input>, note: Note): z.output<Output>;
};

export type Working<Input extends z.ZodType, Output extends z.ZodType> = Declaration<Input, Output> & {
  (input: z.input<Input>): z.output<Output>;
  /** @throws {Refusal} "invalid", with an issue per field, when the input is outside the schema. */
  explain(input: unknown): Explanation<z.output<Output>>;
};

const silent: Note = (_label, value) => value;

export function working<Input extends z.ZodType, Output extends z.ZodType>(
  declaration: Declaration<Input, Output>,
): Working<Input, Output> {
  const run = (input: z.input<Input>) => declaration.compute(parseInput(declaration.input, input), silent);
  const explain = (input: unknown): Explanation<z.output<Output>> => {
    const steps: Step[] = [];
    const note: Note = (label, value, unit = "", formula = "") => {
      steps.push({ label, value, unit, formula });
      return value;
    };
    const output = declaration.compute(parseInput(declaration.input, input), note);
    return { output, steps, sources: declaration.sources, cautions: declaration.cautions };
  };
  return Object.assign(run, declaration, { explain }) as Working<Input, Output>;
}
