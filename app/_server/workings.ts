/**
 * All computations of the house in one list: what the screens, the API and the
 * command line offer. It needs no database.
 */
import { z } from "zod";
import { conditionWorkings } from "#lib/condition/workings.ts";
import { costingWorkings } from "#lib/costing/workings.ts";
import { environmentWorkings } from "#lib/environment/workings.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { specimensWorkings } from "#lib/specimens/workings.ts";
import { transportWorkings } from "#lib/transport/workings.ts";
import type { Declaration, Explanation } from "#lib/workings/working.ts";

/** A working as the list sees it: its declaration, and how to explain one run. */
export type AnyWorking = Declaration<z.ZodType, z.ZodType> & {
  explain(input: unknown): Explanation<unknown>;
};

const all: readonly AnyWorking[] = [
  ...(specimensWorkings as unknown as AnyWorking[]),
  ...(environmentWorkings as unknown as AnyWorking[]),
  ...(conditionWorkings as unknown as AnyWorking[]),
  ...(transportWorkings as unknown as AnyWorking[]),
  ...(costingWorkings as unknown as AnyWorking[]),
];

export function listWorkings(): readonly AnyWorking[] {
  return all;
}

/** @throws {Refusal} "not-found" */
export function getWorking(id: string): AnyWorking {
  const found = all.find((entry) => entry.id === id);
  if (!found) throw notFound("working");
  return found;
}

/** What a working says of itself, with JSON Schemas of its input and output. */
export function describeWorking(entry: AnyWorking) {
  return {
    id: entry.id,
    title: entry.title,
    about: entry.about,
    input: z.toJSONSchema(entry.input, { io: "input", unrepresentable: "any" }),
    output: z.toJSONSchema(entry.output, { unrepresentable: "any" }),
    sources: entry.sources,
    cautions: entry.cautions,
  };
}
