import { describe, expect, test } from "vitest";
import { annexBlocks } from "#lib/papers/agreement-annexes.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";

const terms = someTerms(5);
const text = textOfBlocks(annexBlocks(terms, words));
const part = (mark: string) =>
  text.split(/\n(?=[A-M] Annex )/).find((one) => one.trim().startsWith(`${mark} Annex`)) ?? "";

test("only annexes that apply are printed, and each keeps its letter", () => {
  const few = { ...terms, annexes: { ...terms.annexes, applies: ["A" as const, "J" as const] } };
  const headings = annexBlocks(few, words).flatMap((block) => (block.kind === "heading" ? [block.mark] : []));
  expect(headings).toEqual(["A", "J"]);
});

describe("an annex", () => {
  test.each([
    ["B", "before it leaves\t10 November 2026\tgood (A)"],
    ["C", "Highest temperature, °C\t21\t20\tbeyond the limit"],
    ["C", "Highest relative humidity, %\t52\t60\tnone"],
    ["C", "Guard at night\nno"],
    ["D", "Distance, mm\n1,000"],
    ["E", "Lender at any hour\n+47 00 00 09"],
    ["F", "Empty crates at most, °C\n25"],
    ["H", "AN 2004.0100\ton record for every donor\towned by the lender"],
    ["I", "Transport borne by\nthe borrower"],
    ["I", "No quotation had been accepted"],
    ["J", "for viewing only\talcohol"],
    ["K", "Credit\nLending office for anatomical specimens"],
    ["L", "At least every 30 minutes"],
  ])("%s holds: %s", (mark, said) => {
    expect(part(mark).replaceAll("\u00A0", " ")).toContain(said);
  });
});

test("an accepted quotation is part of the agreement by its hash", () => {
  const costing = {
    kind: "quotation",
    version: 2,
    sha256: "c".repeat(64),
    total: { minor: 480_000, currency: "EUR" },
    drawnUpOn: "2026-12-01",
  };
  const priced = textOfBlocks(annexBlocks(someTerms(2, { costing }), words));
  expect(priced).toContain("version 2 of 1 December 2026, comes to 4,800.00 EUR");
  expect(priced).toContain("c".repeat(64));
});

test("annex C names the version and the day of the facility report that was agreed", () => {
  expect(text).toContain(
    "facility report of the venue, version 3, reported on 15 October 2026, which counts until 15 October 2028",
  );
  const { report: _report, ...facility } = terms.annexes.facility;
  const earlier = { ...terms, annexes: { ...terms.annexes, facility } };
  expect(textOfBlocks(annexBlocks(earlier, words))).toContain("Stated by the venue on");
});

test("annex G says whether cover holds during the stay, and is silent where a version did not say it", () => {
  const said = (coversStay?: boolean) => {
    const certificates = terms.cover.certificates.map(({ coversStay: _stay, ...rest }) =>
      coversStay === undefined ? rest : { ...rest, coversStay },
    );
    return textOfBlocks(annexBlocks({ ...terms, cover: { ...terms.cover, certificates } }, words));
  };
  expect(said(true)).toContain("The stay at the venue is covered.");
  expect(said(false)).toContain("The stay at the venue is not covered.");
  expect(said()).not.toContain("The stay at the venue");
});

test("what a venue has not stated is said to be so", () => {
  const facility = {
    ...terms.annexes.facility,
    report: null,
    reportedOn: null,
    answers: [{ fact: "nightGuard", stated: null }],
  };
  const said = textOfBlocks(annexBlocks({ ...terms, annexes: { ...terms.annexes, facility } }, words));
  expect(said).toContain("has not stated when");
  expect(said).toContain("Guard at night\nnot stated");
});

test("notices stand in each language of the agreement, and none beside what is not lent", () => {
  const both = textOfBlocks(annexBlocks(someTerms(5, { languages: ["en", "de"] }), words));
  expect(both).toContain("Please look and do not touch.\nBitte ansehen und nicht berühren.");
  const animals = someTerms(5);
  const without = { ...animals, schedule: animals.schedule.filter((row) => !row.isHuman) };
  const said = textOfBlocks(annexBlocks(without, words));
  expect(said).not.toContain("Beside human specimens");
  expect(said).not.toContain("Beside jars");
});

test("no annex names a donor", () => {
  expect(text).not.toContain("D-7QX4M");
});
