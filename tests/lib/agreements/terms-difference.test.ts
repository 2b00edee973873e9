import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agreementTerms } from "#lib/agreements/terms.ts";
import { termsDifference } from "#lib/agreements/terms-difference.ts";
import { aTermsSubject, termsFacts } from "#tests/lib/agreements/terms-facts.ts";
import { aRequestFact, aVenueFact } from "#tests/support/loan-cases.ts";

const terms = (said: Parameters<typeof termsFacts>[0] = {}) => agreementTerms(termsFacts(said));
const before = terms();
const paths = (said: Parameters<typeof termsFacts>[0]) =>
  termsDifference(before, terms(said)).map(({ path, before: was, after: is }) => [path.join("/"), was, is]);

test("terms that say the same differ in nothing, whatever their number and day", () => {
  expect(termsDifference(before, before)).toEqual([]);
  expect(paths({ loan: { ...before.loan, version: 2, drawnUpOn: "2027-02-01" } })).toEqual([]);
});

describe("what differs is named once, with what was and what is", () => {
  test.each<[string, Parameters<typeof termsFacts>[0], unknown[]]>([
    ["a parameter of a clause", { parameters: { recallDays: 45 } }, [["parameter/recallDays", 30, 45]]],
    [
      "a day",
      { request: aRequestFact({ endsOn: "2027-08-01" }) },
      [["term/returnBy", "2027-07-01", "2027-08-01"]],
    ],
    [
      "the venue",
      { request: aRequestFact({ venue: aVenueFact({ name: "Hall 3" }) }) },
      [["venue/name", "Hall 2", "Hall 3"]],
    ],
    ["a second language", { languages: ["en", "fr"] }, [["languages", ["en"], ["en", "fr"]]]],
    ["the opening day", { opensOn: "2027-03-15" }, [["opensOn", null, "2027-03-15"]]],
    [
      "a stage of the journey",
      {
        stages: [
          {
            direction: "out",
            carrier: "Careful carriers",
            through: [],
            departsOn: "2027-02-26",
            arrivesOn: "2027-03-01",
          },
        ],
      },
      [["stage/out/2027-02-26", null, ["Careful carriers", "2027-03-01"]]],
    ],
  ])("%s", (_what, said, differences) => {
    expect(paths(said)).toEqual(differences);
  });
});

test("an added specimen is one difference, and what it adds to the sum another", () => {
  const subjects = [
    aTermsSubject(),
    aTermsSubject({ specimen: { accessionNumber: "AN 9", title: "Heart" } }),
  ];
  expect(paths({ subjects })).toEqual([
    ["cover/needed", { currency: "EUR", minor: 1_200_000 }, { currency: "EUR", minor: 2_400_000 }],
    ["specimen/AN 9", null, "Heart"],
  ]);
});

test("a clause that comes in is named with its parameters", () => {
  const request = aRequestFact({ venue: aVenueFact({ countryCode: "DE" }) });
  const said = paths({ request }).map(([path]) => path);
  expect(said).toContain("clause/border");
  expect(said).toContain("parameter/permitDays");
});

test("terms of the earlier form differ from the library's in their clauses", () => {
  const { languages: _languages, opensOn: _opens, annexes: _annexes, amends: _amends, ...common } = before;
  const earlier = {
    ...common,
    format: "loan-agreement-2" as const,
    language: "en" as const,
    clauses: [{ id: "parties", number: 1, heading: "Parties", text: "As it was signed." }],
  };
  const said = termsDifference(earlier, before);
  expect(said.find(({ path }) => path.join("/") === "clause/parties")).toMatchObject({ before: 0, after: 1 });
  expect(termsDifference(earlier, earlier)).toEqual([]);
});

test("turned round, each difference is turned round", () => {
  const anySaid = fc.record({
    parameters: fc.record({
      recallDays: fc.constantFrom(30, 45),
      courier: fc.constantFrom("none", "by video"),
    }),
    opensOn: fc.constantFrom(null, "2027-03-15"),
    languages: fc.constantFrom<("en" | "de")[][]>(["en"], ["de", "en"]),
  });
  fc.assert(
    fc.property(anySaid, anySaid, (one, other) => {
      const [first, second] = [terms(one), terms(other)];
      const there = termsDifference(first, second);
      const back = termsDifference(second, first).map(({ path, before: was, after: is }) => ({
        path,
        before: is,
        after: was,
      }));
      const sorted = (list: typeof there) => list.map((item) => JSON.stringify(item)).sort();
      expect(sorted(back)).toEqual(sorted(there));
    }),
    { numRuns: 12 },
  );
});
