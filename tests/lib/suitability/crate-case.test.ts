import { expect, test } from "vitest";
import type { Passage } from "#lib/people/schema.ts";
import {
  type CrateQuestion,
  crateQuestionOf,
  isUprightOnly,
  passageOf,
  planCrate,
} from "#lib/suitability/crate-case.ts";
import { Passage as WayPassage } from "#lib/transport/schema.ts";
import { aLentSpecimen } from "#tests/support/loan-cases.ts";

const passage = (said: Partial<Passage>): Passage => ({
  kind: "door",
  name: "P",
  widthMm: 900,
  heightMm: 2000,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
  ...said,
});

test.each([
  ["a door", passage({}), { kind: "door", name: "P", clearWidthMm: 900, clearHeightMm: 2000 }],
  [
    "a turn with both widths",
    passage({ kind: "corridor turn", secondWidthMm: 1200 }),
    { kind: "corridor-turn", name: "P", firstWidthMm: 900, secondWidthMm: 1200, clearHeightMm: 2000 },
  ],
  [
    "a turn of which one width is known",
    passage({ kind: "corridor turn" }),
    { kind: "corridor-turn", name: "P", firstWidthMm: 900, clearHeightMm: 2000 },
  ],
  [
    "a lift with depth and load",
    passage({ kind: "lift", depthMm: 2100, loadKg: 1000 }),
    {
      kind: "lift",
      name: "P",
      doorWidthMm: 900,
      doorHeightMm: 2000,
      carWidthMm: 900,
      carHeightMm: 2000,
      carDepthMm: 2100,
      ratedMassKg: 1000,
    },
  ],
  [
    "a lift that nobody has measured inside",
    passage({ kind: "lift" }),
    { kind: "lift", name: "P", doorWidthMm: 900, doorHeightMm: 2000, carWidthMm: 900, carHeightMm: 2000 },
  ],
  [
    "a ramp",
    passage({ kind: "ramp", loadKg: 500 }),
    { kind: "ramp", name: "P", clearWidthMm: 900, ratedMassKg: 500 },
  ],
] as const)("%s keeps what is known and leaves out what is not", (_what, venues, expected) => {
  expect(passageOf(venues)).toEqual(expected);
  expect(WayPassage.parse(passageOf(venues))).toEqual(expected);
});

const circumstances = { passages: [], carrierClass: "specialist-door-to-door", count: 1 } as const;

test("the mount counts where there is one", () => {
  const specimen = aLentSpecimen({
    mountedSize: { lengthMm: 300, widthMm: 300, heightMm: 500 },
    mountedMassKg: 4,
  });
  expect(crateQuestionOf(specimen, circumstances)).toMatchObject({
    sides: { lengthMm: 300, widthMm: 300, heightMm: 500 },
    massKg: 4,
  });
});

test("without size or mass there is no question", () => {
  expect(crateQuestionOf(aLentSpecimen({ size: null }), circumstances)).toBeNull();
  expect(crateQuestionOf(aLentSpecimen({ massKg: null }), circumstances)).toBeNull();
});

test("a sheet is asked for with its thickness and the span across", () => {
  const sheet = aLentSpecimen({
    kind: "sheet",
    preparation: "epoxy sheet",
    size: { lengthMm: 420, widthMm: 320, heightMm: 6 },
    sheetThicknessMm: 4,
  });
  expect(crateQuestionOf(sheet, circumstances)).toMatchObject({
    fragilityClass: "sheet",
    sheet: { thicknessMm: 4, spanMm: 320 },
  });
  expect(crateQuestionOf({ ...sheet, sheetThicknessMm: null }, circumstances)).toMatchObject({
    sheet: { thicknessMm: 6, spanMm: 320 },
  });
});

test("jars, frames, filigree and bodies stay upright", () => {
  expect(
    ["jar", "articulated-skeleton", "corrosion-cast", "whole-body"].every((name) =>
      isUprightOnly(name as never),
    ),
  ).toBe(true);
  expect(isUprightOnly("compact-organ")).toBe(false);
});

test("the curator's own figures stand above the table", () => {
  expect(
    crateQuestionOf(aLentSpecimen(), { ...circumstances, fragilityClass: "bone", curatorPeakG: 22 }),
  ).toMatchObject({
    fragilityClass: "bone",
    curatorPeakG: 22,
  });
});

test("a question that the tables cannot answer has no plan, and any other has one", () => {
  const question = crateQuestionOf(aLentSpecimen(), circumstances) as CrateQuestion;
  expect(planCrate(question)?.crate.grossMassKg).toBeGreaterThan(1.2);
  expect(planCrate({ ...question, sides: { lengthMm: 9_000, widthMm: 200, heightMm: 200 } })).toBeNull();
  expect(planCrate({ ...question, massKg: Number.NaN })).toBeNull();
});
