/** What stays named between a loan and its next step until it is settled: cover, what was seen on the way, days that are not kept. */
import { describe, expect, test } from "vitest";
import { nextSteps, type StepFacts } from "#lib/loans/next-step.ts";
import { finding } from "#lib/suitability/rules/case.ts";
import { codes, facts, id, line, other, second } from "#tests/lib/loans/step-facts.ts";

describe("cover", () => {
  const gap = {
    gate: "cover",
    holds: false,
    facts: [{ code: "gate.cover-no-cover", parameters: { from: "a", to: "b" } }],
  } as const;
  const old = finding(id, "V2", "cover", {
    outcome: "attend",
    fact: "cover.cost-old",
    wayOut: "way.state-cost",
  });
  const foreign = finding(id, "V3", "cover", {
    outcome: "attend",
    fact: "cover.other-currency",
    wayOut: "way.one-currency",
  });
  test("is named while an hour is uncovered, although there is a certificate", () => {
    const accepted = { state: "accepted", lines: line("accepted"), hasCover: true } as const;
    expect(codes({ ...accepted, gates: [gap] as never })).toEqual([
      ["attend", "next.gate", "recordCover"],
      ["clear", "next.draw-up", "drawUpAgreement"],
    ]);
    expect(codes({ ...accepted, gates: [{ ...gap, holds: true }] as never })).toEqual([
      ["clear", "next.draw-up", "drawUpAgreement"],
    ]);
  });
  test("is named while a finding on it wants attention, once for each rule, until it leaves", () => {
    const findings = [old, foreign, { ...old, specimenId: other }];
    const lines = [...line("accepted"), ...second("accepted")];
    for (const said of [
      { state: "accepted" as const, gates: [] },
      { state: "preparing" as const, gates: [{ gate: "signed" as const, holds: true, facts: [] }] },
    ]) {
      const steps = nextSteps(facts({ ...said, lines, hasCover: true, findings }));
      expect(
        steps
          .filter(({ code }) => code === "next.cover")
          .map(({ action, parameters }) => [action, parameters]),
      ).toMatchObject([
        ["reviseSpecimen", { specimen: "AN 1", fact: "cover.cost-old", specimens: 2 }],
        ["recordCover", { specimen: "AN 1", fact: "cover.other-currency", specimens: 1 }],
      ]);
    }
  });
});

describe("what was seen on the way", () => {
  const crate = {
    kind: "crate",
    crate: "L 1/1",
    sealBroken: true,
    damage: "",
    at: "2027-03-09T08:00:00.000Z",
    unchecked: 1,
  } as const;
  const changed = { specimenId: id, specimen: "AN 1", checkedOn: "2027-03-09", new: 1, worse: 0 };
  test("stands before what can be done, with the check that answers a crate", () => {
    const harm = [crate, { kind: "away", ...changed }] as const;
    expect(codes({ state: "at venue", lines: line("at venue"), harm })).toEqual([
      ["attend", "next.seal-broken", "recordCheck"],
      ["attend", "next.changed-away", null],
      ["clear", "next.send-home", "sendHome"],
    ]);
  });
  test("stays after the check-in where the verdict is grave", () => {
    const harm = [
      { kind: "verdict", specimenId: id, specimen: "AN 1", verdict: "damage", checkedOn: null },
    ] as const;
    expect(codes({ state: "checked in", lines: line("checked in"), harm })).toEqual([
      ["attend", "next.judged-gravely", null],
      ["clear", "next.close", "closeLoan"],
    ]);
  });
});

describe("days of what is out", () => {
  const away = { state: "at venue", lines: line("at venue") } as const;
  const until = (endsOn: string) => new Map([[id, { endsOn }]]);
  test("are kept until the way home is over, or it is said that they are not", () => {
    const codesOf = (said: Partial<StepFacts>) => codes({ ...away, ...said }).map(([, code]) => code);
    expect(codesOf({ booked: until("2027-07-02") })).toEqual(["next.send-home"]);
    expect(codesOf({ booked: until("2027-07-01") })).toEqual(["next.days-not-kept", "next.send-home"]);
    expect(codesOf({ booked: new Map() })).toContain("next.days-not-kept");
    expect(codesOf({ homeOn: null, booked: until("2027-03-11") })).toEqual([
      "next.plan-home",
      "next.send-home",
    ]);
    const [step] = nextSteps(facts({ ...away, homeOn: null, booked: until("2027-03-10") }));
    expect(step).toMatchObject({
      code: "next.days-not-kept",
      action: "planStage",
      parameters: { specimen: "AN 1", until: "2027-03-09", neededOn: "2027-03-10" },
    });
  });
});
