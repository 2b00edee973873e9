import { expect, test } from "vitest";
import { type FoldFacts, foldedSections } from "#app/(signed-in)/loans/[id]/folded-sections.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { ruleGroups } from "#lib/suitability/schema.ts";

const clear = Object.fromEntries(ruleGroups.map((group) => [group, "clear"])) as FoldFacts["matrix"][string];

const facts: FoldFacts = {
  state: "at venue",
  matrix: {
    one: clear,
    two: { ...clear, light: "attend" },
    three: { ...clear, light: "attend", free: "bar" },
  },
  request: { startsOn: "2026-03-02", endsOn: "2026-09-01" },
  decisions: [
    { office: "donor officer", outcome: "accept", counts: true },
    { office: "curator", outcome: "decline", counts: false },
    { office: "curator", outcome: "accept", counts: true },
  ],
  agreements: [{ version: 2, signatures: [{ party: "lender" }, { party: "borrower" }] }],
  crates: [{}],
  covers: [{}, {}],
  time: { plan: { rows: [{ done: { on: "2026-01-05" } }, { done: null }] } },
  speaks: false,
};

test("nothing of a loan is folded before it is decided", () => {
  for (const state of ["enquiry", "requested"] as const)
    expect(foldedSections({ ...facts, state })).toEqual({});
});

test("what is folded once stays folded until the loan ends", () => {
  const way = ["accepted", "at venue", "travelling home", "closed"] as const;
  const folded = way.map((state) => Object.keys(foldedSections({ ...facts, state })));
  for (const [index, before] of folded.slice(0, -1).entries())
    expect(folded[index + 1]).toEqual(expect.arrayContaining(before));
});

test("each state of a loan is placed", () => {
  for (const state of loanStates) expect(() => foldedSections({ ...facts, state }), state).not.toThrow();
});

test("away from the house, a folded section says in one line what it came to", () => {
  expect(foldedSections(facts)).toMatchObject({
    suitability: "1 barred, 1 to attend to",
    decision: "accepted by: donor officer, curator",
    plan: "1 of 2 steps done",
    agreement: "version 2, signed by both",
  });
  expect(foldedSections({ ...facts, matrix: { one: clear } }).suitability).toBe("every specimen clear");
});

test("a decision stays open for who may still speak, and where it was a no", () => {
  expect(foldedSections({ ...facts, state: "accepted" })).toHaveProperty("decision");
  expect(foldedSections({ ...facts, state: "accepted", speaks: true })).not.toHaveProperty("decision");
  expect(foldedSections({ ...facts, state: "declined" })).not.toHaveProperty("decision");
});

test("an agreement stays open until both have signed its newest version", () => {
  const [newest] = facts.agreements;
  expect(
    foldedSections({ ...facts, agreements: [{ version: 3, signatures: [] }, ...facts.agreements] }),
  ).not.toHaveProperty("agreement");
  expect(foldedSections({ ...facts, agreements: newest ? [newest] : [] })).toHaveProperty("agreement");
});

test("who may not see the certificates is not told how many there are", () => {
  const home = { ...facts, state: "checked in" } as const;
  expect(foldedSections(home).cover).toBe("2 certificates");
  expect(foldedSections({ ...home, covers: null }).cover).toBe("");
});
