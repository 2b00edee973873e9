/**
 * Whether a sheet of a series is here, lent or missing, from the states of its
 * loan lines. A number of the series that has no specimen is missing; so is a
 * sheet that did not come home.
 */

/** States of a loan line in which its specimen is out of the house; the same as in the room of loans. */
export const statesAway = [
  "travelling out",
  "resting at venue",
  "at venue",
  "travelling home",
  "missing",
] as const;

export const sheetStates = ["here", "lent", "missing"] as const;
export type SheetState = (typeof sheetStates)[number];

/** @param lineStates of the sheet's loan lines, or null when the number has no specimen */
export function sheetStateOf(lineStates: readonly string[] | null): SheetState {
  if (lineStates === null || lineStates.includes("missing")) return "missing";
  return lineStates.some((state) => (statesAway as readonly string[]).includes(state)) ? "lent" : "here";
}
