/** Papers of money as they are kept, and read again. */
import { expect, test } from "vitest";
import { totalsOf } from "#lib/costing/costing.ts";
import { costsTheSame, readCosting } from "#lib/costing/frozen.ts";
import type { CostingContent } from "#lib/costing/schema.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { aFeeScale, someLines } from "#tests/support/money.ts";

const party = {
  name: "N",
  address: "A",
  city: "C",
  countryCode: "NO",
  email: "e@example.org",
  phone: "+47 1",
};
const content: CostingContent = {
  format: "costing-1",
  kind: "quotation",
  version: 1,
  loan: {
    number: "L 1",
    title: "Course",
    purpose: "teaching",
    startsOn: "2027-03-01",
    returnBy: "2027-06-01",
    specimens: 2,
    venue: "Hall",
  },
  lender: party,
  borrower: { ...party, contactName: "A. B." },
  drawnUpOn: "2026-11-25",
  validUntil: "2026-12-25",
  currency: "EUR",
  minorDigits: 2,
  costRecovery: true,
  rounding: "half-up-line-net-tax-on-sum",
  feeScaleVersion: 1,
  ...totalsOf({ currency: "EUR", lines: someLines(), exchange: [] }),
  exchange: [],
  cancellation: aFeeScale().cancellation,
  against: null,
  note: "",
};

test("what was frozen is read as it was", () => {
  expect(readCosting(canonicalText(content))).toEqual(content);
});

test.each([
  ["no text of ours", "nonsense"],
  ["something left over", canonicalText({ ...content, extra: 1 })],
  ["something missing", canonicalText({ ...content, totalMinor: undefined })],
  ["another form", canonicalText({ ...content, format: "costing-0" })],
  ["another way to write it", JSON.stringify(content, null, 1)],
])("a text is refused that is %s", (_what, text) => {
  expect(() => readCosting(text)).toThrow(expect.objectContaining({ reason: "costing.other-format" }));
});

test("a paper with another number and day says the same; with another line it does not", () => {
  const frozen = canonicalText(content);
  expect(costsTheSame(frozen, { ...content, version: 2, drawnUpOn: "2026-11-26" })).toBe(true);
  expect(costsTheSame(frozen, { ...content, validUntil: "2027-01-01" })).toBe(false);
  expect(costsTheSame(frozen, { ...content, note: "Without the ferry." })).toBe(false);
});
