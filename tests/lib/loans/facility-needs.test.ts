/** What specimens need of a venue: asked only where one of them needs it, told only where it deviates. */
import { describe, expect, test } from "vitest";
import { climateDeviations, facilityDeviations, facilityNeeds } from "#lib/loans/facility-needs.ts";
import { FacilityAnswers } from "#lib/people/facility-report.ts";
import { everythingSaid } from "#seed/scenario/facility-reports.ts";

const organ = {
  accessionNumber: "T 1",
  human: true,
  kind: "organ",
  preparation: "silicone-impregnated",
  fluidName: null,
  hasTeeth: false,
  light: "ordinary",
  partsAtRisk: "",
} as const;
const jar = {
  ...organ,
  accessionNumber: "T 2",
  preparation: "fluid-preserved",
  fluidName: "ethanol",
} as const;
const animal = { ...organ, accessionNumber: "T 3", human: false } as const;

const complete = FacilityAnswers.parse({
  ...everythingSaid,
  fire: { fireDetection: true },
  security: { nightGuard: true },
  staff: { supervisedRoom: true },
  display: { ...everythingSaid.display, restrictedView: true },
  fluids: { ...everythingSaid.fluids, spillProvision: true },
});
const quiet = { handled: false, publicShow: false };
const needsOf = (...args: Parameters<typeof facilityDeviations>) =>
  facilityDeviations(...args).map(({ need }) => need);

describe("a venue against a loan", () => {
  test("that says everything has no deviation, whatever is shown and handled there", () => {
    expect(facilityDeviations([organ, jar, animal], { handled: true, publicShow: true }, complete)).toEqual(
      [],
    );
  });

  test("that says nothing deviates in every need, each not known", () => {
    const found = facilityDeviations(
      [organ, jar],
      { handled: true, publicShow: true },
      FacilityAnswers.parse({}),
    );
    expect(found.map(({ need }) => need)).toEqual(facilityNeeds);
    expect(new Set(found.map(({ state }) => state))).toEqual(new Set(["not known"]));
  });

  test("ventilation is needed by jars alone, and sparks are a matter of alcohol", () => {
    const open = { ...complete, fluids: { ...complete.fluids, ventilated: false, ignitionKeptOut: false } };
    expect(facilityDeviations([organ, jar], quiet, open)).toEqual([
      { need: "ventilation", state: "lacking", specimens: ["T 2"] },
      { need: "no source of ignition", state: "lacking", specimens: ["T 2"] },
    ]);
    expect(facilityDeviations([organ], quiet, open)).toEqual([]);
    const formalin = { ...jar, fluidName: "formaldehyde solution" } as const;
    expect(needsOf([formalin], quiet, open)).toEqual(["ventilation"]);
  });

  test("pictures, complaints and what is discarded are asked for human specimens alone", () => {
    const free = FacilityAnswers.parse({
      ...complete,
      respect: { picturePolicy: "free", nothingDiscarded: true },
    });
    expect(needsOf([organ], quiet, free)).toEqual([
      "pictures not free",
      "picture rule kept",
      "route for complaints",
    ]);
    expect(needsOf([animal], quiet, free)).toEqual([]);
  });

  test("either a case or a barrier suffices for a show", () => {
    const show = { handled: false, publicShow: true };
    const barrier = { ...complete, display: { ...complete.display, lockedCases: false, barriers: true } };
    expect(facilityDeviations([animal], show, barrier)).toEqual([]);
    const neither = { ...complete, display: { ...complete.display, lockedCases: false, barriers: false } };
    expect(needsOf([animal], show, neither)).toEqual(["case or barrier"]);
    expect(needsOf([animal], quiet, neither)).toEqual([]);
  });

  test("works, pipes and one handler alone deviate", () => {
    const odd = {
      ...complete,
      building: { ...complete.building, worksPlanned: true },
      water: { ...complete.water, pipesAbove: true },
      handling: { ...complete.handling, trainedHandlers: 1 },
    };
    expect(needsOf([animal], quiet, odd)).toEqual(["no pipes above", "no works planned", "trained handlers"]);
  });

  test("nothing is needed for nothing", () => {
    expect(facilityDeviations([], quiet, FacilityAnswers.parse({}))).toEqual([]);
    expect(climateDeviations([], {} as never, null)).toEqual([]);
  });
});

test("climate deviates by the strictest specimen, and only where it does", () => {
  const room = {
    temperatureLowC: 18,
    temperatureHighC: 20,
    temperatureSwing24hK: 1,
    humidityLow: 0.45,
    humidityHigh: 0.5,
    humiditySwing24h: 0.03,
    illuminanceLx: 60,
    uvMicrowattPerLumen: 5,
    hoursOpenPerDay: 8,
  };
  const reasons = (specimens: Parameters<typeof climateDeviations>[0]) =>
    climateDeviations(specimens, room, 60).map(({ quantity, outcome }) => [quantity, outcome]);
  expect(reasons([organ])).toEqual([]);
  expect(reasons([organ, jar])).toEqual([["illuminanceLx", "bar"]]);
});
