/** The address of a working with figures filled in, for the margin note beside a computed figure. */
import { fieldsOf, type JsonSchema, writeInput } from "#app/_parts/working-fields.ts";
import { describeWorking, getWorking } from "#app/_server/workings.ts";

/** @param input what the working was run with; fields it does not know are left out */
export function workingHref(id: string, input: Readonly<Record<string, unknown>>): string {
  const fields = fieldsOf(describeWorking(getWorking(id)).input as JsonSchema);
  return `/workings/${id}?${writeInput(fields, input)}#result`;
}
