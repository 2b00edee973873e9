/** A word against a bar: for one specimen, one rule and one fact, by an office that the book names. */
import { describe, expect, test } from "vitest";
import { ruleBook } from "#lib/suitability/rules/book.ts";
import { mayGoAgainst, type SetAside, withSetAside } from "#lib/suitability/rules/set-aside.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const bar: Finding = {
  specimenId: "one",
  rule: "C2",
  group: "condition",
  outcome: "bar",
  fact: "condition.too-old",
  parameters: {},
  source: "s",
  wayOut: "way.check-anew",
};
const word: SetAside = {
  specimenId: "one",
  rule: "C2",
  fact: "condition.too-old",
  office: mayGoAgainst("C2")[0] ?? "curator",
  by: "Somebody",
  grounds: "Looked at yesterday by the courier.",
  evidence: "Courier's note 4",
  on: "2027-02-01",
};

test("makes the bar attend, and stands with it", () => {
  const { specimenId: _id, rule: _rule, fact: _fact, ...kept } = word;
  expect(withSetAside([bar], [word])).toEqual([{ ...bar, outcome: "attend", setAside: kept }]);
});

describe("leaves a bar as it is", () => {
  test.each([
    ["of another specimen", { specimenId: "two" }],
    ["of another rule", { rule: "C1" }],
    ["on another fact", { fact: "condition.grade-poor" }],
    ["by an office that the book does not name", { office: "oversight body" }],
  ] as [string, Partial<SetAside>][])("%s", (_what, said) => {
    expect(mayGoAgainst("C2")).not.toContain("oversight body");
    expect(withSetAside([bar], [{ ...word, ...said }])).toEqual([bar]);
  });
});

test("says nothing to what is not a bar", () => {
  const attend: Finding = { ...bar, outcome: "attend" };
  expect(withSetAside([attend], [word])).toEqual([attend]);
});

test("a withdrawal, a claim and a disposition that is due are nobody's to set aside but the donor officer's, with evidence", () => {
  for (const entry of ruleBook.filter(({ id }) => id === "G3" || id === "G12")) {
    expect(entry.overriddenBy).toEqual(["donor officer"]);
    expect(entry.needsEvidence).toBe(true);
  }
});

test("nobody's word stands for the leave of an owner", () => {
  expect(mayGoAgainst("T1")).toEqual([]);
  const title: Finding = { ...bar, rule: "T1", group: "title", fact: "title.no-leave" };
  expect(withSetAside([title], [{ ...word, rule: "T1", fact: "title.no-leave" }])).toEqual([title]);
});
