/** A facility report with something in every kind of answer, or with nothing, or with the longest words. */
import type { FacilityPaper } from "#lib/papers/facility-paper/document.ts";
import { FacilityAnswers } from "#lib/people/facility-report.ts";
import { longGerman, longTitle } from "#tests/lib/papers/paper-cases.ts";

export const aPaper = (said: Partial<FacilityPaper> = {}): FacilityPaper => ({
  institution: "Port Selwyn Faculty of Medicine",
  venue: "Dissection room 2",
  address: "Harbour Road 4, Port Selwyn",
  countryCode: "NO",
  version: 2,
  reportedOn: "2026-05-04",
  validUntil: "2028-05-04",
  reportedBy: "Bela Registrar",
  answers: FacilityAnswers.parse({
    building: { yearBuilt: 1908, construction: "masonry", floorLoadKgPerM2: 1_500 },
    climate: { setHumidity: 0.485, runsDayAndNight: true },
    water: { pipesAbove: false },
    passages: [
      {
        kind: "door",
        name: "North door",
        widthMm: 1_400,
        heightMm: 2_100,
        depthMm: null,
        secondWidthMm: 1_200,
        loadKg: null,
        slopePercent: null,
      },
    ],
    licences: [
      {
        kind: "public display",
        number: "PD-7741",
        authority: "Harbour county",
        responsiblePerson: "Bela Registrar",
        validFrom: "2024-01-01",
        validUntil: "2029-01-01",
      },
    ],
  }),
  ...said,
});

export const emptyPaper = aPaper({ answers: FacilityAnswers.parse({}) });
export const longPaper = aPaper({
  institution: longGerman,
  venue: longTitle,
  address: longGerman,
  answers: FacilityAnswers.parse({
    references: { earlierLenders: `${longGerman} `.repeat(5) },
    building: { worksNote: `${longTitle} `.repeat(4) },
    passages: Array.from({ length: 30 }, (_none, index) => ({
      kind: "lift",
      name: `Warenaufzugsschachttür ${index}`,
      widthMm: 1_400,
      heightMm: 2_100,
      depthMm: 2_400,
      secondWidthMm: null,
      loadKg: 1_500,
      slopePercent: null,
    })),
  }),
});
