/** The computations of this room that a reader can open, for the registry above the rooms. */
import { colourDifference, yellowness } from "#lib/condition/colour-workings.ts";
import { labOfReading, xyzOfReading } from "#lib/condition/reading-workings.ts";

export const conditionWorkings = [colourDifference, yellowness, labOfReading, xyzOfReading] as const;
