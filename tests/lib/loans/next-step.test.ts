import { describe, expect, test } from "vitest";
import { nextSteps, type StepFacts } from "#lib/loans/next-step.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { acts } from "#lib/people/permission.ts";
import { finding } from "#lib/suitability/rules/case.ts";
import { outcomes } from "#lib/workings/outcome.ts";
import { codes, facts, id, line, other, second } from "#tests/lib/loans/step-facts.ts";

const taken = finding(id, "B1", "free", {
  outcome: "bar",
  fact: "free.taken-until",
  wayOut: "way.later-or-substitute",
});
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
  test("that is whole can be submitted, whatever the decision may bar", () => {
    expect(codes({})).toEqual([["clear", "next.submit", "submitRequest"]]);
    expect(codes({ findings: [withdrawn] })).toEqual([["clear", "next.submit", "submitRequest"]]);
  });
  test("for days that somebody else has cannot be submitted", () => {
    expect(codes({ findings: [taken] })).toEqual([["bar", "next.barred", "removeSpecimen"]]);
  });
  test("for a day that is too near names the earliest possible one", () => {
    const faultOfStart = { code: "loan.starts-too-soon", earliest: "2027-03-24" };
    expect(nextSteps(facts({ faultOfStart }))).toMatchObject([
      {
        outcome: "bar",
        code: "next.other-start",
        action: "stateRequest",
        parameters: { fact: "loan.starts-too-soon", earliest: "2027-03-24" },
      },
    ]);
  });
  test("counts what is on the slip, and not what was taken off", () => {
    const [step] = nextSteps(facts({ lines: [...line("noted"), ...second("withdrawn")] }));
    expect(step).toMatchObject({ code: "next.submit", parameters: { specimens: 1 } });
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
      ["clear", "next.decline", "decideLoan"],
    ]);
  });
  test("can be accepted only once every word is there, nothing is barred and nothing was added", () => {
    const asked = { state: "requested", lines: line("requested") } as const;
    const lastOf = (said: Partial<StepFacts>) => codes({ ...asked, ...said }).at(-1)?.[1];
    expect(lastOf({ findings: [tight] })).toBe("next.decide");
    expect(lastOf({ findings: [withdrawn] })).toBe("next.decline");
    const needed = { officesNeeded: ["conservator", "curator"] } as const;
    expect(lastOf(needed)).toBe("next.decline");
    expect(lastOf({ ...needed, officesAccepted: ["conservator"] })).toBe("next.decide");
  });
  test("is decided by the curator, whoever else may speak", () => {
    const [step] = nextSteps(facts({ state: "requested", lines: line("requested") }));
    expect(step).toMatchObject({ code: "next.decide", parameters: { office: "curator" } });
  });
  test("to which something was noted later is submitted again before it can be accepted", () => {
    expect(codes({ state: "requested", lines: [...line("requested"), ...second("noted")] })).toEqual([
      ["attend", "next.submit-added", "submitRequest"],
      ["clear", "next.decline", "decideLoan"],
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
  test("is neither drawn up nor signed while a specimen is barred", () => {
    const barred = {
      state: "accepted",
      lines: line("accepted"),
      hasCover: true,
      findings: [withdrawn],
    } as const;
    expect(codes(barred)).toEqual([["bar", "next.barred", "removeSpecimen"]]);
    const agreement = { version: 1, signedByLender: false, signedByBorrower: false };
    expect(codes({ ...barred, agreement })).toEqual([["bar", "next.barred", "removeSpecimen"]]);
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
  test("lets out what is packed, and counts nothing that was taken off", () => {
    const [step] = nextSteps(
      facts({
        state: "preparing",
        lines: [...line("packed"), ...second("withdrawn")],
        gates: [{ gate: "signed", holds: true, facts: [] }],
      }),
    );
    expect(step?.parameters).toEqual({ specimens: 1 });
  });
  test.each([
    ["signed", "gate.other-schedule", {}, "drawUpAgreement"],
    ["signed", "gate.not-signed", {}, "signAgreement"],
    ["cover", "gate.cost-not-known", {}, "reviseSpecimen"],
    ["cover", "gate.several-currencies", {}, "reviseSpecimen"],
    ["cover", "gate.cover-no-cover", {}, "recordCover"],
    ["condition", "gate.grade-not-signed-off", { office: "conservator" }, "decideLoan"],
    ["condition", "gate.no-check-out", {}, "recordCheck"],
    ["permits", "gate.finding", { fact: "law.licence-missing" }, "keepVenue"],
    ["permits", "gate.finding", { fact: "law.species-paper-days" }, "recordPermit"],
    ["nothing barred", "gate.finding", { fact: "consent.transit-refused" }, "planStage"],
    ["nothing barred", "gate.finding", { fact: "consent.withdrawn" }, "removeSpecimen"],
    ["crates", "gate.not-sealed", {}, "sealCrate"],
  ] as const)("that fails at %s by %s (%o) offers %s", (gate, code, parameters, act) => {
    const gates = [{ gate, holds: false, facts: [{ code, parameters }] }];
    const [step] = nextSteps(facts({ state: "preparing", lines: line("packed"), gates }));
    expect(step).toMatchObject({ outcome: "bar", code: "next.gate", action: act, parameters });
  });
});

describe("a loan that is away", () => {
  test("rests until the moment of its crate, then is opened", () => {
    const resting = [{ crate: "L 1/1", notBefore: "2027-03-10T10:00:00.000Z", specimenIds: [id] }];
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
  test("of which all that is left is missing waits for no crate", () => {
    expect(codes({ state: "travelling home", lines: line("missing") })).toEqual([
      ["bar", "next.missing", "countReturn"],
    ]);
    expect(codes({ state: "travelling home", lines: [...line("missing"), ...second("checked in")] })).toEqual(
      [["bar", "next.missing", "countReturn"]],
    );
  });
  test("of which one is missing has what is home checked, and receives nothing", () => {
    const lines = [...line("missing"), ...second("resting at home")];
    expect(codes({ state: "travelling home", lines })).toEqual([
      ["bar", "next.missing", "countReturn"],
      ["attend", "next.check-home", "recordCheck"],
    ]);
  });
  test("receives what is on its way, and counts what rests at home already", () => {
    const lines = [...line("travelling home"), ...second("resting at home")];
    const resting = [{ crate: "L 1/2", notBefore: null, specimenIds: [other] }];
    expect(codes({ state: "travelling home", lines, resting })).toEqual([
      ["clear", "next.receive-home", "receiveHome"],
      ["clear", "next.count", "countReturn"],
    ]);
  });
  test("receives the rest while a first crate is opened at the venue", () => {
    const lines = [...line("travelling out"), ...second("resting at venue")];
    const resting = [{ crate: "L 1/2", notBefore: null, specimenIds: [other] }];
    expect(codes({ state: "travelling out", lines, resting })).toEqual([
      ["clear", "next.receive", "receiveLoan"],
      ["clear", "next.open", "openCrate"],
      ["clear", "next.send-home", "sendHome"],
    ]);
  });
  test("does not open at the venue what rests at home", () => {
    const lines = [...line("at venue"), ...second("resting at home")];
    const resting = [{ crate: "L 1/2", notBefore: null, specimenIds: [other] }];
    expect(codes({ state: "at venue", lines, resting }).map(([, code]) => code)).toEqual([
      "next.send-home",
      "next.count",
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
    const resting = [{ crate: "L 1/1", notBefore: null, specimenIds: [id] }];
    expect(codes({ state: "home, to be checked", lines: line("resting at home"), resting })).toEqual([
      ["clear", "next.count", "countReturn"],
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
