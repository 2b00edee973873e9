/**
 * What rules of law ask of the specimens of the scenario. Most came from donors of
 * the centre's own country and have their papers; a few came from elsewhere, and of
 * some nobody knows. The time of death follows from the donor's month of death.
 */
import { deathPeriods, type LegalFacts, nothingKnownInLaw } from "#lib/specimens/schema.ts";
import type { ScenarioDonor } from "#seed/scenario/consent-forms.ts";
import { donors } from "#seed/scenario/donors.ts";
import { borderPapers } from "#seed/scenario/permits.ts";
import type { ScenarioPermit, ScenarioSpecimen } from "#seed/scenario/shape.ts";

/** First years of the periods after the first. */
const beginnings = [1906, 1920, 1933, 1946, 1970, 2000];

function periodOf(died: string): LegalFacts["deathPeriod"] {
  const year = Number(died.slice(0, 4));
  if (died === "" || year === 1906) return null;
  return deathPeriods[beginnings.filter((beginning) => year >= beginning).length] ?? null;
}

const said: Record<string, Partial<LegalFacts>> = {
  "AN 2021.0007": { originCountry: "GB", imported: true },
  "AN 2020.0078": { originCountry: "GB", imported: true, heldSince: "2004-05-10" },
  "AN 1938.0004": { speciesAppendix: "I", originCountry: "FI", imported: false },
  "AN 1911.0012": { speciesAppendix: "I", originCountry: "FI", imported: false },
  "AN 2018.0200": { speciesAppendix: "not listed", originCountry: "DK", imported: true },
  "AN 2021.0220": { speciesAppendix: "not listed", originCountry: "NO", imported: true },
  "AN 2009.0040": { freeFluidMl: 3_600 },
  "AN 1871.0002": { originCountry: null, madePeriod: "1850 to 1899" },
};

/** Where a donor is on record, the body came through the centre's own office with its papers. */
export function legalFactsOf({ record, donors: keys }: ScenarioSpecimen): LegalFacts {
  const own = said[record.accessionNumber] ?? {};
  if (!record.human) return { ...nothingKnownInLaw, containsCells: record.kind !== "cast", ...own };
  const all: Record<string, ScenarioDonor> = donors;
  const periods = new Set(keys.map((key) => periodOf(all[key]?.died ?? "")));
  const [deathPeriod] = periods;
  const isKnown = keys.length > 0;
  return {
    ...nothingKnownInLaw,
    containsCells: record.preparation !== "corrosion cast",
    wholeBody: record.kind === "whole body",
    originCountry: isKnown ? "FI" : null,
    imported: isKnown ? false : null,
    deathPeriod: periods.size === 1 ? (deathPeriod ?? null) : null,
    deathPapers: isKnown ? true : null,
    anatomicalExamination: isKnown ? true : null,
    ...own,
  };
}

/** Papers for teaching in Ireland, where what comes in on loan is authorised before. */
const irish = [
  "AN 2022.0051",
  "AN 2020.0015",
  "AN 2021.0019",
  "AN 2018.0071",
  "AN 2017.0044",
  "AN 2017.0080",
];

export function furtherPermitsOf({ record: { accessionNumber } }: ScenarioSpecimen): ScenarioPermit[] {
  return irish.includes(accessionNumber)
    ? borderPapers(accessionNumber.slice(5).replace(".", "/"), "IE", 400)
    : [];
}
