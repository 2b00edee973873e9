import fc from "fast-check";
import { expect, test } from "vitest";
import { Refusal } from "#lib/platform/refusal.ts";
import { CratePlan, cratePlan, explainCratePlan } from "#lib/transport/crate-plan.ts";
import { dropHeightMm } from "#lib/transport/drop-height.ts";
import { carrierClasses, fragilityClasses } from "#lib/transport/schema.ts";

const heart = {
  sides: { lengthMm: 150, widthMm: 120, heightMm: 110 },
  massKg: 0.4,
  fragilityClass: "compact-organ",
  uprightOnly: false,
  carrierClass: "specialist-door-to-door",
} as const;

const sheet = {
  sides: { lengthMm: 480, widthMm: 330, heightMm: 3 },
  massKg: 0.6,
  fragilityClass: "sheet",
  uprightOnly: false,
  carrierClass: "specialist-door-to-door",
} as const;

const jar = {
  sides: { lengthMm: 200, widthMm: 200, heightMm: 300 },
  massKg: 8,
  fragilityClass: "jar",
  uprightOnly: false,
  jar: { fluidVolumeMl: 5000 },
  carrierClass: "specialist-door-to-door",
} as const;

test("a heart lies in a single case that one person carries", () => {
  const plan = cratePlan(heart);
  expect(plan).toMatchObject({ kind: "single-case", innerCaseWallMm: null, orientation: "any-side" });
  expect(plan.handling.mode).toBe("one-person");
  expect(plan.cushion.holds).toBe(true);
});

test("a single case gives way to a double one where a light organ is too light for its foam", () => {
  expect(cratePlan({ ...heart, carrierClass: "mixed-carriers" }).kind).toBe("double-case");
});

test("a sheet of known thickness and short span stands in slots, any other lies on its full face", () => {
  expect(cratePlan({ ...sheet, sheet: { thicknessMm: 3, spanMm: 330 } })).toMatchObject({
    kind: "upright-slot-case",
    sheetSupport: "upright-in-slots",
    orientation: "this-side-up",
  });
  const carrier = { kind: "full-face-sheet-carrier", sheetSupport: "full-face" };
  expect(cratePlan({ ...sheet, sheet: { thicknessMm: 1, spanMm: 330 } })).toMatchObject(carrier);
  expect(cratePlan(sheet)).toMatchObject(carrier);
});

test("an outcome that is not clear has its reasons", () => {
  const wideDoor = { kind: "door", clearWidthMm: 1600, clearHeightMm: 2400 } as const;
  const reasonsOf = (input: Parameters<typeof cratePlan>[0]) => cratePlan(input).reasons;
  expect(cratePlan({ ...heart, passages: [wideDoor] })).toMatchObject({ outcome: "clear", reasons: [] });
  expect(reasonsOf(heart)).toEqual(["way-in-not-known"]);
  expect(reasonsOf({ ...heart, passages: [wideDoor, { kind: "door", clearWidthMm: 900 }] })).toEqual([
    "passage-to-attend",
  ]);
  expect(reasonsOf({ ...heart, passages: [{ ...wideDoor, clearWidthMm: 200 }] })).toEqual(["passage-bars"]);
});

test("a plan that was kept before reasons and the higher filters were told can still be read", () => {
  const { reasons: _reasons, handling, ...kept } = cratePlan(heart);
  const { onePersonHigherKg: _one, twoPersonHigherKg: _two, ...keptHandling } = handling;
  expect(CratePlan.parse({ ...kept, handling: keptHandling })).toEqual({
    ...cratePlan(heart),
    reasons: [],
  });
});

test("a narrow crate that would tip on the road is attended to, whatever the way in", () => {
  const plan = cratePlan({
    ...sheet,
    sheet: { thicknessMm: 3, spanMm: 330 },
    passages: [{ kind: "door", clearWidthMm: 900, clearHeightMm: 2000 }],
  });
  expect(plan.crate.standsUnlashedOnRoad).toBe(false);
  expect(plan).toMatchObject({ route: "clear", outcome: "attend" });
  expect(plan.handling.cautions).toContain("secure-against-tipping");
});

test("a jar stays upright, carries nothing on its lid, and has absorbent for all its fluid", () => {
  const plan = cratePlan(jar);
  expect(plan).toMatchObject({ kind: "jar-case", orientation: "this-side-up", absorbentMl: 5500 });
  expect(plan.crate.lidLoadKn).toBe(0);
  expect(plan.handling.cautions).toContain("keep-upright");
});

test("very fragile contents get at least 100 mm", () => {
  const cast = { ...heart, fragilityClass: "corrosion-cast" } as const;
  expect(cratePlan(cast).cushion.thicknessMm).toBeGreaterThanOrEqual(100);
});

test("where nothing holds the plan is barred and says what would hold", () => {
  const plan = cratePlan({
    ...heart,
    sides: { lengthMm: 200, widthMm: 200, heightMm: 250 },
    fragilityClass: "corrosion-cast",
    carrierClass: "parcel-or-courier",
  });
  expect(plan.outcome).toBe("bar");
  expect(plan.cushion.holds).toBe(false);
  expect(plan.cushion.wouldHold?.dropHeightMm).toBeLessThan(plan.dropHeightMm);
});

test("the way in decides with the crate's own sides and mass, truck included", () => {
  const recumbent = {
    sides: { lengthMm: 1800, widthMm: 700, heightMm: 600 },
    massKg: 90,
    fragilityClass: "whole-body",
    uprightOnly: true,
    carrierClass: "specialist-door-to-door",
  } as const;
  const open = cratePlan({
    ...recumbent,
    passages: [{ kind: "door", clearWidthMm: 1200, clearHeightMm: 2100 }],
  });
  expect(open).toMatchObject({ route: "clear", outcome: "clear", handling: { mode: "pallet-truck" } });
  const needed = open.passages[0]?.checks.find((one) => one.fact === "door-height")?.needed;
  expect(needed).toBe(open.crate.outer.heightMm + 30 + 20);
  const narrow = cratePlan({
    ...recumbent,
    passages: [{ kind: "door", clearWidthMm: 800, clearHeightMm: 2100 }],
  });
  expect(narrow).toMatchObject({ route: "bar", outcome: "bar" });
  expect(cratePlan(recumbent)).toMatchObject({ route: "attend", outcome: "attend" });
});

const anySpecimen = fc.record({
  sides: fc.record({
    lengthMm: fc.integer({ min: 20, max: 2000 }),
    widthMm: fc.integer({ min: 20, max: 900 }),
    heightMm: fc.integer({ min: 20, max: 1900 }),
  }),
  massKg: fc.double({ min: 0.02, max: 150, noNaN: true }),
  fragilityClass: fc.constantFrom(...fragilityClasses),
  uprightOnly: fc.boolean(),
  carrierClass: fc.constantFrom(...carrierClasses),
});

test("the crate is heavy enough for the drop that it was designed for", () => {
  fc.assert(
    fc.property(anySpecimen, (specimen) => {
      const plan = cratePlan(specimen);
      expect(dropHeightMm(specimen.carrierClass, plan.crate.grossMassKg)).toBeLessThanOrEqual(
        plan.dropHeightMm,
      );
    }),
    { numRuns: 150 },
  );
});

test("the drop height, its margin note and the step of the plan are one figure", () => {
  fc.assert(
    fc.property(anySpecimen, (specimen) => {
      const { plan, margin } = explainCratePlan(specimen);
      const { dropHeightMm: shownMm, cushion, crate } = plan.output;
      expect(margin.dropHeight.output.dropHeightMm).toBe(shownMm);
      expect(plan.steps.filter(({ label }) => label === "drop height").map(({ value }) => value)).toEqual([
        shownMm,
      ]);
      expect(margin.dropHeight.steps.at(-1)).toMatchObject({ label: "drop height", value: shownMm });
      const ofTable = dropHeightMm(specimen.carrierClass, crate.grossMassKg);
      if (shownMm > ofTable)
        expect(
          margin.dropHeight.steps.some(({ label }) => label === `a crate designed for ${ofTable} mm`),
        ).toBe(true);
      expect(margin.cushion.output).toEqual(cushion);
      expect(margin.handling.output).toEqual(plan.output.handling);
    }),
    { numRuns: 100 },
  );
});

test("a light crate is designed for the drop of the row above its own, and the margin says why", () => {
  const { plan, margin } = explainCratePlan({
    sides: { lengthMm: 160, widthMm: 160, heightMm: 180 },
    massKg: 0.6,
    fragilityClass: "bone",
    uprightOnly: false,
    carrierClass: "specialist-door-to-door",
  });
  expect(plan.output.dropHeightMm).toBe(610);
  expect(plan.output.crate.grossMassKg).toBeGreaterThanOrEqual(19);
  expect(margin.dropHeight.steps.map(({ label }) => label)).toEqual([
    "table",
    "drop height of the table",
    "a crate designed for 460 mm",
    "drop height",
  ]);
});

test("the figures of the plan agree with each other", () => {
  fc.assert(
    fc.property(anySpecimen, (specimen) => {
      const plan = cratePlan(specimen);
      expect(plan.crate.grossMassKg).toBeGreaterThan(plan.innerCase.massKg);
      expect(plan.innerCase.massKg).toBeGreaterThanOrEqual(specimen.massKg);
      expect(plan.crate.inner.lengthMm).toBeCloseTo(
        plan.innerCase.sides.lengthMm + 2 * (plan.innerCase.wrapMm + plan.cushion.thicknessMm),
        6,
      );
      expect(plan.cushion.holds).toBe(plan.cushion.wouldHold === null);
      if (!plan.cushion.holds) expect(plan.outcome).toBe("bar");
      if (plan.cushion.holds) expect(plan.cushion.peakG).toBeLessThan(plan.peakG);
      expect(plan.chargeableMassKg).toBeGreaterThanOrEqual(plan.crate.grossMassKg - 1e-6);
    }),
    { numRuns: 150 },
  );
});

test("each margin note gives the figure of the plan, with its source", () => {
  const { plan, margin } = explainCratePlan({
    ...sheet,
    sheet: { thicknessMm: 3, spanMm: 330 },
    passages: [{ kind: "door", name: "north door", clearWidthMm: 900, clearHeightMm: 2000 }],
  });
  expect(margin.cushion.output).toEqual(plan.output.cushion);
  expect(margin.crate.output).toEqual(plan.output.crate);
  expect(margin.innerCase.output).toEqual(plan.output.innerCase);
  expect(margin.handling.output).toEqual(plan.output.handling);
  expect(margin.passages.map((one) => one.output)).toEqual(plan.output.passages);
  expect(margin.sheetSupport?.output.support).toBe(plan.output.sheetSupport);
  expect(margin.fragility.output.peakG).toBe(plan.output.peakG);
  for (const note of [margin.fragility, margin.dropHeight, margin.innerCase, margin.cushion, margin.crate]) {
    expect(note.sources.length).toBeGreaterThan(0);
    expect(note.steps.length).toBeGreaterThan(0);
  }
  expect(plan.steps.map((step) => step.label)).toEqual(
    expect.arrayContaining([
      "greatest shock",
      "bending stress",
      "drop height",
      "gross mass",
      "handling",
      "outcome",
    ]),
  );
});

test("what is too heavy or too long for a timber crate is refused", () => {
  expect(() => cratePlan({ ...heart, massKg: 1200 })).toThrow(/transport.crate-beyond-table/);
  expect(() => cratePlan({ ...heart, sides: { lengthMm: 5000, widthMm: 500, heightMm: 500 } })).toThrow(
    Refusal,
  );
});

test.each([
  [{ massKg: -1 }, "massKg"],
  [{ fragilityClass: "glass" }, "fragilityClass"],
  [{ sides: { lengthMm: 1, widthMm: 1 } }, "sides.heightMm"],
  [{ passages: [{ kind: "door", clearWidthMm: 1e9 }] }, "passages.0.clearWidthMm"],
])("input with %j is refused at its field", (wrong, path) => {
  try {
    explainCratePlan({ ...heart, ...wrong });
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    expect((error as Refusal).issues.map((issue) => issue.path)).toContain(path);
  }
});
