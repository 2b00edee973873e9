import { describe, expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import type { Finding, Occasion } from "#lib/condition/schema.ts";
import { type CheckOfLine, type Harm, type HarmFacts, harmCode, signsOfHarm } from "#lib/loans/harm.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { aFinding } from "#tests/support/lending.ts";

const one = "01920000-0000-7000-8000-000000000101";
const two = "01920000-0000-7000-8000-000000000102";
const crack = aFinding({ severity: "trace" });
const worse: Finding = { ...crack, severity: "moderate" };

let hour = 0;
const check = (occasion: Occasion, findings: Finding[], byHouse = occasion === "out"): CheckOfLine => {
  hour += 1;
  return {
    loanId: "l",
    occasion,
    checkedOn: "2027-03-01",
    recordedAt: new Date(Date.UTC(2027, 2, 1, hour)).toISOString(),
    byHouse,
    findings,
  };
};
const line = (specimenId: string, state: LineState, said: Partial<HarmFacts["lines"][number]> = {}) => ({
  specimenId,
  accessionNumber: specimenId === one ? "AN 1" : "AN 2",
  state,
  verdict: null,
  checkedAgain: false,
  ...said,
});
const signs = (said: Partial<HarmFacts>) =>
  signsOfHarm({ lines: [], crates: [], checks: new Map(), ...said });

describe("a crate that came with a broken seal", () => {
  const seen = { at: "2027-03-01T00:30:00.000Z", sealIntact: false, outsideDamage: "" };
  const crates = [{ code: "L 1/1", specimenIds: [one, two], events: [seen] }];
  const lines = [line(one, "at venue"), line(two, "at venue")];
  test("stands until each specimen in it has been checked since", () => {
    expect(signs({ lines, crates })).toMatchObject([{ kind: "crate", crate: "L 1/1", unchecked: 2 }]);
    const arrival = check("arrival", []);
    expect(signs({ lines, crates, checks: new Map([[one, [arrival]]]) })).toMatchObject([{ unchecked: 1 }]);
    const both = new Map([
      [one, [arrival]],
      [two, [arrival]],
    ]);
    expect(signs({ lines, crates, checks: both })).toEqual([]);
  });
  test("is not answered by a check from before, and is by the check-in", () => {
    const before = { ...check("out", []), recordedAt: "2027-02-28T00:00:00.000Z" };
    const checks = new Map([
      [one, [before]],
      [two, [before]],
    ]);
    expect(signs({ lines, crates, checks })).toHaveLength(1);
    expect(signs({ lines: [line(one, "checked in"), line(two, "closed")], crates, checks })).toEqual([]);
  });
  test("is no sign where the seal was whole and nothing was dented", () => {
    for (const sealIntact of [true, null]) {
      const whole = [{ code: "L 1/1", specimenIds: [one], events: [{ ...seen, sealIntact }] }];
      expect(signs({ lines, crates: whole })).toEqual([]);
    }
    const dented = [
      { code: "L 1/1", specimenIds: [one], events: [{ ...seen, sealIntact: true, outsideDamage: "dent" }] },
    ];
    expect(signs({ lines, crates: dented })).toMatchObject([{ sealBroken: false, damage: "dent" }]);
  });
});

describe("a change that was seen while it was away", () => {
  const away = [line(one, "at venue")];
  const of = (...checks: CheckOfLine[]) => new Map([[one, checks]]);
  test("stands until somebody of the house has checked it, whatever the borrower checks", () => {
    const out = check("out", [crack]);
    const arrival = check("arrival", [worse]);
    expect(signs({ lines: away, checks: of(out, check("arrival", [crack])) })).toEqual([]);
    const found = { kind: "away", specimen: "AN 1", checkedOn: "2027-03-01", new: 0, worse: 1 };
    expect(signs({ lines: away, checks: of(out, arrival) })).toMatchObject([found]);
    expect(signs({ lines: away, checks: of(out, arrival, check("departure", [worse])) })).toMatchObject([
      found,
    ]);
    expect(signs({ lines: away, checks: of(out, arrival, check("incident", [worse], true)) })).toEqual([]);
  });
  test("is told of a check by the house as well, until the next one", () => {
    const checks = of(check("out", []), check("arrival", [worse], true));
    expect(signs({ lines: away, checks })).toMatchObject([{ kind: "away", new: 1 }]);
  });
});

describe("a change that was seen at home", () => {
  const out = check("out", [crack]);
  const home = check("home", [worse], true);
  const checks = new Map([[one, [out, home]]]);
  test("stands until it is checked in", () => {
    expect(signs({ lines: [line(one, "resting at home")], checks })).toMatchObject([
      { kind: "home", specimen: "AN 1", worse: 1 },
    ]);
    expect(signs({ lines: [line(one, "checked in", { verdict: "change within wear" })], checks })).toEqual(
      [],
    );
  });
  test("is taken back by a second check that finds it as it went out", () => {
    const again = new Map([[one, [out, home, check("home", [crack], true)]]]);
    expect(signs({ lines: [line(one, "resting at home")], checks: again })).toEqual([]);
  });
});

describe("a verdict at home", () => {
  test.each([
    ["damage", 1],
    ["needs treatment", 1],
    ["change within wear", 0],
    ["no change", 0],
  ] as const)("of %s is told %s times, until it is checked again", (verdict, times) => {
    for (const state of ["checked in", "closed"] as const) {
      expect(signs({ lines: [line(one, state, { verdict })] })).toHaveLength(times);
      expect(signs({ lines: [line(one, state, { verdict, checkedAgain: true })] })).toEqual([]);
    }
  });
});

test("every sign has its sentence in the file and on the desk", () => {
  const crate = { kind: "crate", crate: "L 1/1", at: "", unchecked: 1 } as const;
  const change = { specimenId: one, specimen: "AN 1", checkedOn: "2027-03-01", new: 1, worse: 0 };
  const all: Harm[] = [
    { ...crate, sealBroken: true, damage: "" },
    { ...crate, sealBroken: false, damage: "dent" },
    { ...crate, sealBroken: true, damage: "dent" },
    { kind: "away", ...change },
    { kind: "home", ...change },
    { kind: "verdict", specimenId: one, specimen: "AN 1", verdict: "damage", checkedOn: null },
  ];
  const codes = all.map(harmCode);
  expect(new Set(codes).size).toBe(6);
  for (const code of codes) {
    expect(hasSentence(`next.${code}`), code).toBe(true);
    expect(hasSentence(`due.${code}`), code).toBe(true);
  }
});
