/** The computations of this room that a reader can open, for the registry above the rooms. */
import { sheetAtPosition, sheetSeries, sheetShrinkage } from "#lib/specimens/sheet-series.ts";

export const specimensWorkings = [sheetSeries, sheetAtPosition, sheetShrinkage] as const;
