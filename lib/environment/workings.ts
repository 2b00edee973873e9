/** The computations of this room that a reader can open, for the registry above the rooms. */
import { acclimatisation } from "#lib/environment/acclimatisation.ts";
import { air } from "#lib/environment/air.ts";
import { kineticTemperature } from "#lib/environment/kinetic-temperature.ts";
import { lightDose } from "#lib/environment/light-dose.ts";

export const environmentWorkings = [acclimatisation, air, kineticTemperature, lightDose] as const;
