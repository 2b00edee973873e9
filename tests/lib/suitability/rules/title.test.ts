import { expect, test } from "vitest";
import type { TitleInput } from "#lib/provenance/schema.ts";
import { judgeTitle, verdictOnTitle } from "#lib/suitability/rules/title.ts";
import { aSpecimenCase } from "#tests/support/loan-cases.ts";

const aTitle = (said: Partial<TitleInput>): TitleInput => ({
  status: "owned",
  ownerName: "County museum",
  leaveToLend: false,
  leaveReference: "",
  recordedOn: "2020-01-01",
  ...said,
});
const leave = { leaveToLend: true, leaveReference: "Letter of 3 May 2026" };

test.each([
  ["what is ours is clear", { status: "owned" }, "clear", "title.owned"],
  ["a deposit without leave is a bar", { status: "deposit" }, "bar", "title.no-leave"],
  ["a deposit with written leave is clear", { status: "deposit", ...leave }, "clear", "title.leave"],
  ["a loan to us without leave is a bar", { status: "loan-in" }, "bar", "title.no-leave"],
  ["a loan to us with written leave is clear", { status: "loan-in", ...leave }, "clear", "title.leave"],
  ["leave without a writing is no leave", { status: "deposit", leaveToLend: true }, "bar", "title.no-leave"],
  ["a disputed title without leave is a bar", { status: "disputed" }, "bar", "title.no-leave"],
  [
    "a disputed title with leave is attend",
    { status: "disputed", ...leave },
    "attend",
    "title.leave-but-unsettled",
  ],
  [
    "an unknown title with leave is attend",
    { status: "unknown", ...leave },
    "attend",
    "title.leave-but-unsettled",
  ],
] as const)("%s", (_what, said, outcome, fact) => {
  expect(verdictOnTitle(aTitle(said))).toMatchObject({ outcome, fact });
});

test("a title that nobody recorded is a bar", () => {
  expect(verdictOnTitle(null)).toMatchObject({ outcome: "bar", fact: "title.no-record" });
});

test("the finding stands in the group of title", () => {
  expect(judgeTitle(aSpecimenCase())).toMatchObject([{ rule: "T1", group: "title", outcome: "clear" }]);
});
