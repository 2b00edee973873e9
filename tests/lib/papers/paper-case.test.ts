import { describe, expect, test } from "vitest";
import {
  crateOn,
  crateSubject,
  crateSubjects,
  numberedCrates,
  paperCrate,
  paperSpecimen,
  partsOfSubject,
  specimensIn,
  stageOf,
  wayOf,
} from "#lib/papers/paper-case.ts";
import { firstCrate, someCase, stageIds } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 5, crates: 2 });

test("the way out begins at the house, the way home ends there", () => {
  const [out, home] = [stageIds.out, stageIds.home].map((id) => wayOf(paperCase, stageOf(paperCase, id)));
  expect([out?.from, out?.to]).toEqual([paperCase.house, paperCase.venue]);
  expect([home?.from, home?.to]).toEqual([paperCase.venue, paperCase.house]);
});

test("only crates that hold something are counted", () => {
  const [first, ...others] = paperCase.crates;
  if (!first) throw new RangeError("There is a crate.");
  const crates = numberedCrates({ ...paperCase, crates: [{ ...first, contents: [] }, ...others] });
  expect(crates.map(({ code, number, of }) => [code, number, of])).toEqual([["L 2026-031/2", 1, 1]]);
});

test("a crate names its specimens by position, and nothing that is not for its paper", () => {
  const { crate, stage } = crateOn(paperCase, firstCrate);
  expect(stage.direction).toBe("out");
  expect(specimensIn(paperCase, crate).map(({ accessionNumber }) => accessionNumber)).toEqual([
    "AN 2004.0001",
    "AN 2004.0002",
    "AN 2004.0003",
  ]);
  expect(Object.keys(paperCrate(crate))).not.toContain("contents");
  const [specimen] = specimensIn(paperCase, crate);
  expect(Object.keys(specimen ? paperSpecimen(specimen) : {})).not.toContain("id");
});

describe("subjects", () => {
  test("name a stage and a crate on it", () => {
    expect(partsOfSubject(crateSubject("s", "c"))).toEqual({ stageId: "s", crateId: "c" });
    expect(partsOfSubject("s")).toEqual({ stageId: "s", crateId: null });
    expect(crateSubjects(paperCase)).toHaveLength(4);
  });

  test("of nothing are a fault of the program", () => {
    expect(() => stageOf(paperCase, "nothing")).toThrow(RangeError);
    expect(() => crateOn(paperCase, crateSubject(stageIds.out, "nothing"))).toThrow(RangeError);
  });
});
