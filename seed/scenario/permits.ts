/** Papers of invented authorities, as specimens of the scenario have them. */
import type { Day, ScenarioPermit } from "#seed/scenario/shape.ts";

const fromTheStart: Day = -900;

export const veterinary = (number: string, territories: string[], until: Day): ScenarioPermit => ({
  kind: "veterinary",
  number,
  authority: "Halmren Veterinary Authority",
  territories,
  from: fromTheStart,
  until,
});

/** The species office's word on a specimen: a permit for a protected species, or that none is needed. */
export const speciesOffice = (number: string, territories: string[], until: Day): ScenarioPermit => ({
  kind: "species protection (CITES)",
  number,
  authority: "Northern Species Office",
  territories,
  from: fromTheStart,
  until,
});

/** Both sides of the border for one country. */
export const borderPapers = (number: string, country: string, until: Day): ScenarioPermit[] => [
  {
    kind: "export",
    number: `HX ${number}`,
    authority: "Halmren Health Authority",
    territories: [country],
    from: fromTheStart,
    until,
  },
  {
    kind: "import",
    number: `${country}-I ${number}`,
    authority: `Tissue office of the receiving country (${country})`,
    territories: [country],
    from: fromTheStart,
    until,
  },
];
