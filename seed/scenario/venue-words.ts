/**
 * How a borrower of the scenario and its venues are written down: days count from
 * the day of loading, and what a venue leaves open is null.
 */
import type { InstitutionInput, Licence, VenueInput } from "#lib/people/schema.ts";
import type { Day } from "#seed/scenario/shape.ts";

type ScenarioLicence = Omit<Licence, "validFrom" | "validUntil"> & { from: Day | null; until: Day | null };
export type ScenarioVenue = Omit<
  VenueInput,
  | "id"
  | "institutionId"
  | "reportedOn"
  | "licences"
  | "countryCode"
  | "subdivisionCode"
  | "town"
  | "floorLoadKgPerM2"
> &
  Partial<Pick<VenueInput, "subdivisionCode" | "town" | "floorLoadKgPerM2">> & {
    reported: Day | null;
    licences: ScenarioLicence[];
  };
export type ScenarioInstitution = Omit<InstitutionInput, "id" | "verifiedOn"> & {
  verified: Day | null;
  venues: Record<string, ScenarioVenue>;
};

/** A room whose climate is kept and written down. */
export const steadyRoom = {
  temperatureLowC: 18.5,
  temperatureHighC: 21.5,
  temperatureSwing24hK: 1.5,
  humidityLow: 0.45,
  humidityHigh: 0.53,
  humiditySwing24h: 0.05,
  illuminanceLx: 50,
  uvMicrowattPerLumen: 8,
  hoursOpenPerDay: 7,
  daysOpenPerWeek: 5,
  supervisedRoom: true,
  restrictedView: true,
  spillProvision: true,
  fireDetection: true,
  nightGuard: true,
} as const;

export const notStated = {
  temperatureLowC: null,
  temperatureHighC: null,
  temperatureSwing24hK: null,
  humidityLow: null,
  humidityHigh: null,
  humiditySwing24h: null,
  illuminanceLx: null,
  uvMicrowattPerLumen: null,
  hoursOpenPerDay: null,
  daysOpenPerWeek: null,
  supervisedRoom: null,
  restrictedView: null,
  spillProvision: null,
  fireDetection: null,
  nightGuard: null,
} as const;
