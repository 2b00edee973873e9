/**
 * The lending centre of the scenario: an invented house in an invented town. Its
 * stores are a tree of places; each specimen has its own shelf in one of them.
 */
import type { CentreSettings } from "#lib/people/schema.ts";
import type { PlaceKind } from "#lib/whereabouts/schema.ts";

export const centre = {
  name: "Halmren Centre for Anatomical Preservation",
  address: "Tollgate Quay 4, 20 170 Halmren",
  city: "Halmren",
  countryCode: "FI",
  email: "loans@halmren.example",
  phone: "+358 2 555 0140",
  emergencyPhone: "+358 2 555 0199",
  accessionPattern: "AN \\d{4}\\.\\d{4}|SR \\d{2}\\.\\d{3}",
  accessionExample: "AN 2019.0142",
  currency: "EUR",
  publicCatalogue: true,
} satisfies CentreSettings;

export type ScenarioPlace = { code: string; name: string; kind: PlaceKind; within: string | null };

const place = (code: string, name: string, kind: PlaceKind, within: string | null = null): ScenarioPlace => ({
  code,
  name,
  kind,
  within,
});
const shelves = (room: string, count: number, word: string): ScenarioPlace[] =>
  Array.from({ length: count }, (_, index) =>
    place(`${room}.${index + 1}`, `${word} ${index + 1}`, "shelf", room),
  );

/** Parents stand before what lies in them. */
export const places: ScenarioPlace[] = [
  place("H", "Centre, Tollgate Quay", "room"),
  place("H-DRY", "Dry store", "store", "H"),
  ...shelves("H-DRY", 8, "Bay"),
  place("H-WET", "Fluid store", "store", "H"),
  ...shelves("H-WET", 3, "Cabinet"),
  place("H-SHEET", "Sheet store", "store", "H"),
  ...shelves("H-SHEET", 6, "Rack"),
  place("H-CAST", "Cast and bone room", "store", "H"),
  ...shelves("H-CAST", 5, "Case"),
  place("H-SLIDE", "Slide cabinet", "cabinet", "H"),
  place("H-HALL", "Whole-body bay", "store", "H"),
  place("H-WORK", "Conservation workshop", "workshop", "H"),
  place("H-PACK", "Packing room", "room", "H"),
  place("H-DOCK", "Loading dock", "room", "H"),
];
