import { expect, test } from "vitest";
import type { Finding, Occasion } from "#lib/condition/schema.ts";
import { checksBesideEarlier } from "#lib/loans/line-checks.ts";
import { aFinding } from "#tests/support/lending.ts";

const loanId = "01920000-0000-7000-8000-000000000001";
const check = (occasion: Occasion, findings: Finding[]) => ({ loanId, occasion, findings });
const crack = aFinding({ severity: "trace" });
const worse = { ...crack, severity: "moderate" as const };

test("each check stands beside the one before, and home beside going out", () => {
  const all = checksBesideEarlier([
    check("out", [crack]),
    check("arrival", [worse]),
    check("departure", [worse]),
    check("home", [worse, aFinding({ severity: "minor" })]),
  ]);
  expect(
    all.map(({ check: { occasion }, comparison }) => [
      occasion,
      comparison && [comparison.totals.new, comparison.totals.worse, comparison.totals.same],
    ]),
  ).toEqual([
    ["out", null],
    ["arrival", [0, 1, 0]],
    ["departure", [0, 0, 1]],
    ["home", [1, 1, 0]],
  ]);
});

test("a specimen without a check has none", () => {
  expect(checksBesideEarlier([])).toEqual([]);
});
