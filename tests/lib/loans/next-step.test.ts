import { describe, expect, test } from "vitest";
import { nextSteps, type StepFacts } from "#lib/loans/next-step.ts";
import { finding } from "#lib/loans/rules/case.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { acts } from "#lib/people/permission.ts";
import { outcomes } from "#lib/workings/outcome.ts";

const id = "01920000-0000-7000-8000-000000000101";
const facts = (said: Partial<StepFacts>): StepFacts => ({
  state: "enquiry",
  today: "2027-03-10",
  now: "2027-03-10T09:00:00.000Z",
  endsOn: "2027-07-01",
  missingFields: [],
  lines: [{ specimenId: id, accessionNumber: "AN 1", state: "noted", isChecked: false }],
  findings: [],
  officesNeeded: ["curator"],
  officesAccepted: [],
  agreement: null,
  hasCover: false,
  gates: [],
  hasStageHome: true,
  resting: [],
  ...said,
});
const codes = (said: Partial<StepFacts>) =>
  nextSteps(facts(said)).map(({ outcome, code, action }) => [outcome, code, action]);
const line = (state: StepFacts["lines"][number]["state"], isChecked = false) => [
  { specimenId: id, accessionNumber: "AN 1", state, isChecked },
];
const withdrawn = finding(id, "G3", "consent", {
  outcome: "bar",
  fact: "consent.withdrawn",
  wayOut: "way.donor-officer-only",
});
const tight = finding(id, "W1", "way in", {
  outcome: "attend",
  fact: "way-in.tight",
  wayOut: "way.site-visit",
});

describe("an enquiry", () => {
  test("without specimens asks for one", () => {
    expect(codes({ lines: [] })).toEqual([["bar", "next.no-specimens", "noteSpecimen"]]);
  });
  test("that is half stated asks for the rest", () => {
    const [step] = nextSteps(facts({ missingFields: ["title", "contactPhone"] }));
    expect(step).toMatchObject({
      outcome: "bar",
      action: "stateRequest",
      parameters: { fields: "title, contactPhone" },
    });
  });
  test("that is whole can be submitted", () => {
    expect(codes({})).toEqual([["clear", "next.submit", "submitRequest"]]);
  });
});

describe("a request", () => {
  test("shows its bars first, then what wants attention, then whose word is missing, then the decision", () => {
    expect(
      codes({
        state: "requested",
        lines: line("requested"),
        findings: [tight, withdrawn],
        officesNeeded: ["donor officer", "oversight body", "curator"],
        officesAccepted: ["donor officer"],
      }),
    ).toEqual([
      ["bar", "next.barred", "removeSpecimen"],
      ["attend", "next.attend", null],
      ["attend", "next.word-of-office", "decideLoan"],
      ["clear", "next.decide", "decideLoan"],
    ]);
  });
});

describe("an accepted loan", () => {
  test("is drawn up, then signed by both", () => {
    expect(codes({ state: "accepted", lines: line("accepted") })).toEqual([
      ["attend", "next.record-cover", "recordCover"],
      ["clear", "next.draw-up", "drawUpAgreement"],
    ]);
    expect(
      codes({
        state: "accepted",
        lines: line("accepted"),
        hasCover: true,
        agreement: { version: 1, signedByLender: true, signedByBorrower: false },
      }),
    ).toEqual([["attend", "next.sign", "signAgreement"]]);
  });
});

describe("an agreed loan", () => {
  const gates = [
    { gate: "crates", holds: false, facts: [{ code: "gate.in-no-crate", parameters: { specimen: "AN 1" } }] },
    { gate: "carrier", holds: false, facts: [{ code: "gate.no-carrier", parameters: {} }] },
    { gate: "signed", holds: true, facts: [] },
  ] as const;
  test("names the gates that fail with the act that clears each", () => {
    expect(codes({ state: "agreed", lines: line("accepted"), gates: [...gates] as never })).toEqual([
      ["bar", "next.gate", "planCrates"],
      ["bar", "next.gate", "planStage"],
    ]);
  });
  test("goes out when all hold", () => {
    expect(
      codes({
        state: "preparing",
        lines: line("packed"),
        gates: [{ gate: "signed", holds: true, facts: [] }],
      }),
    ).toEqual([["clear", "next.dispatch", "dispatchLoan"]]);
  });
});

describe("a loan that is away", () => {
  test("rests until the moment of its crate, then is opened", () => {
    const resting = [{ crate: "L 1/1", notBefore: "2027-03-10T10:00:00.000Z" }];
    expect(codes({ state: "at venue", lines: line("resting at venue"), resting })[0]).toEqual([
      "attend",
      "next.rest",
      null,
    ]);
    expect(
      codes({
        state: "at venue",
        lines: line("resting at venue"),
        resting,
        now: "2027-03-10T10:00:00.000Z",
      })[0],
    ).toEqual(["clear", "next.open", "openCrate"]);
  });
  test("may always be sent home, and is overdue from the return-by on", () => {
    expect(codes({ state: "at venue", lines: line("at venue") })).toEqual([
      ["clear", "next.send-home", "sendHome"],
    ]);
    expect(codes({ state: "at venue", lines: line("at venue"), today: "2027-07-01" })[0]).toEqual([
      "attend",
      "next.overdue",
      "sendHome",
    ]);
  });
  test("names what is missing", () => {
    expect(codes({ state: "travelling home", lines: line("missing") })[0]).toEqual([
      "bar",
      "next.missing",
      "countReturn",
    ]);
  });
});

describe("a loan that is home", () => {
  test("wants a check, then is checked in, then closed", () => {
    expect(codes({ state: "home, to be checked", lines: line("resting at home") })).toEqual([
      ["attend", "next.check-home", "recordCheck"],
    ]);
    expect(codes({ state: "home, to be checked", lines: line("resting at home", true) })).toEqual([
      ["clear", "next.check-in", "checkIn"],
    ]);
    expect(codes({ state: "checked in", lines: line("checked in") })).toEqual([
      ["clear", "next.close", "closeLoan"],
    ]);
  });
});

test("what has ended has no next step, and every other state has one", () => {
  for (const state of loanStates) {
    const has =
      nextSteps(
        facts({ state, gates: [{ gate: "signed", holds: true, facts: [] }], lines: line("resting at home") }),
      ).length > 0;
    expect(has, state).toBe(!["closed", "declined", "withdrawn"].includes(state));
  }
});

test("steps stand in order of harm and name acts that exist", () => {
  const steps = nextSteps(
    facts({ state: "requested", findings: [tight, withdrawn], officesNeeded: ["donor officer", "curator"] }),
  );
  const ranks = steps.map((step) => outcomes.indexOf(step.outcome));
  expect(ranks).toEqual([...ranks].sort((a, b) => b - a));
  for (const step of steps) if (step.action !== null) expect(Object.keys(acts)).toContain(step.action);
});
