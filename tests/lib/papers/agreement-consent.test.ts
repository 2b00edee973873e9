import { describe, expect, test } from "vitest";
import type { Restriction } from "#lib/agreements/frozen-terms.ts";
import { consentBlocks, restrictionText } from "#lib/papers/agreement-consent.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { cellText, onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";

const five = someTerms(5);
const rowsOf = (blocks: Parameters<typeof onlyTable>[0]) =>
  onlyTable(blocks).rows.map((row) => row.map(cellText));

describe("what the donors allowed", () => {
  test("stands once for those that share it, and never for an animal", () => {
    const rows = rowsOf(consentBlocks(five, words));
    expect(rows.map(([numbers]) => numbers)).toEqual(["1, 4", "2, 3"]);
    expect(rows[0]?.[1]).toBe("No restriction beyond the clauses.");
    expect(rows[1]?.[1]).toContain("Shown to professionals only.");
    expect(rows[1]?.[1]).toContain("Only in Ireland and Norway.");
  });

  test("says nothing of who the donors were", () => {
    expect(textOfBlocks(consentBlocks(five, words))).not.toMatch(/D-[0-9A-Z]/);
  });
});

test.each<[Restriction, string]>([
  [
    { code: "restriction.audience-not-known", parameters: {} },
    "The donor's wish about the audience is not known: only the stated audience.",
  ],
  [
    { code: "restriction.audience-within", parameters: { audience: "enrolled students" } },
    "Shown to enrolled students and professionals only.",
  ],
  [{ code: "restriction.not-handled", parameters: {} }, "Not handled by learners."],
  [{ code: "restriction.not-public", parameters: {} }, "Not shown to the general public."],
  [{ code: "restriction.not-for-admission", parameters: {} }, "Not shown where admission is charged."],
  [{ code: "restriction.not-sampled", parameters: {} }, "Not sampled."],
  [{ code: "restriction.not-cast-or-scanned", parameters: {} }, "Not cast or scanned."],
  [
    { code: "restriction.only-in", parameters: { countries: ["IE", "NO", "SE"] } },
    "Only in Ireland, Norway and Sweden.",
  ],
  [
    { code: "restriction.no-country-in-common", parameters: {} },
    "In no country: the donors' lists have none in common.",
  ],
  [{ code: "restriction.not-in", parameters: { countries: ["DE", "FR"] } }, "Not in Germany or France."],
  [
    { code: "restriction.no-pictures-for", parameters: { pictures: ["online", "press"] } },
    "No pictures for publication online or for the press.",
  ],
  [
    { code: "restriction.recognisable", parameters: {} },
    "The person could be recognised: no picture of the whole specimen leaves the venue.",
  ],
  [
    { code: "restriction.consent-ends", parameters: { endsOn: "2030-01-01" } },
    "The consent holds until 1 January 2030.",
  ],
  [
    { code: "restriction.owed-back", parameters: { disposition: "burial", dueOn: "2031-05-01" } },
    "Owed to burial by 1 May 2031.",
  ],
  [
    { code: "restriction.owed-back", parameters: { disposition: "unknown", dueOn: "2031-05-01" } },
    "Owed back, it is not known how, by 1 May 2031.",
  ],
])("%j is said in words", (restriction, sentence) => {
  expect(restrictionText(restriction, words).normalize("NFKC")).toBe(sentence);
});
