import { describe, expect, test } from "vitest";
import { type AgreementTerms, clausesAgreed } from "#lib/agreements/frozen-terms.ts";
import { agreementDocument, partMark } from "#lib/papers/agreement-document.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { layOut } from "#lib/papers/layout.ts";
import { bothSigned, hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { plain, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { bodyOf, collisions, fixedWidth, linesOf, strays } from "#tests/lib/papers/fixed-width.ts";

const documentOf = (terms: ReturnType<typeof someTerms>, signatures = bothSigned(terms)) =>
  agreementDocument({ terms, sha256: hashOf(terms), signatures }, words);
const flat = (blocks: readonly Block[]): Block[] =>
  blocks.flatMap((block) => (block.kind === "together" ? flat(block.blocks) : [block]));

test("parts are marked with letters", () => {
  expect([0, 1, 25, 26, 27, 52].map(partMark)).toEqual(["A", "B", "Z", "AA", "AB", "BA"]);
});

describe("an agreement", () => {
  const terms = someTerms(5);
  const document = documentOf(terms);
  const headings = (blocks: readonly Block[]) =>
    flat(blocks).flatMap((block) => (block.kind === "heading" ? [`${block.mark} ${block.text}`] : []));

  test("has its parts in the order in which they prevail, the signatures, and the annexes", () => {
    expect(headings(document.blocks)).toEqual([
      "I Parties",
      "II The loan",
      "III Conditions of the decision",
      "IV Clauses",
      "V Signatures",
      "A Annex A: schedule of specimens",
      "B Annex B: condition reports",
      "C Annex C: facility report and deviations",
      "D Annex D: air, light and display",
      "E Annex E: itinerary and contacts",
      "F Annex F: packing and crates",
      "G Annex G: certificates of cover",
      "H Annex H: index of consent and licence evidence",
      "I Annex I: fees and costs",
      "J Annex J: handling, cleaning and emergency",
      "K Annex K: texts of labels and notices",
      "L Annex L: sheet for the record of air and light",
    ]);
  });

  test("in the form before the library keeps its parts under letters, without those that do not concern it", () => {
    const { languages, opensOn, annexes, amends, clauses, ...common } = terms;
    expect([languages.length, opensOn, annexes.applies.length, amends, clauses.length]).not.toContain(0);
    const earlier: AgreementTerms = {
      ...common,
      format: "loan-agreement-2",
      language: "en",
      conditions: [],
      schedule: terms.schedule.filter((row) => !row.isHuman),
      clauses: [{ id: "parties", number: 1, heading: "Parties", text: "As it was signed." }],
    };
    const printed = agreementDocument({ terms: earlier, sha256: hashOf(earlier), signatures: [] }, words);
    expect(headings(printed.blocks)).toEqual([
      "A Parties",
      "B The loan",
      "C Schedule of specimens",
      "D Limits of air and light",
      "E Packing and transport",
      "F Cover",
      "G Clauses",
      "H Signatures",
    ]);
    expect(textOfBlocks(printed.blocks)).toContain("1 Parties\nAs it was signed.");
  });

  test("prints every clause of the terms as it stands there, in order", () => {
    const clauses = flat(document.blocks).filter((block) => block.kind === "clause");
    const spaced = (text: string) => text.replaceAll("\u00A0", " ");
    const said = clauses.map(({ mark, heading, text }) => [mark, heading, spaced(plain(text))]);
    expect(said).toEqual(
      clausesAgreed(terms, "en").map(({ number, heading, text }) => [String(number), heading, spaced(text)]),
    );
  });

  test("carries number, version and fingerprint on every page", () => {
    for (const page of layOut(document, fixedWidth)) {
      expect(linesOf(page)[0]).toBe("Loan agreement L 2026-031 Version 2");
      expect(linesOf(page).at(-1)).toMatch(
        new RegExp(`^SHA-256 of the terms: ${hashOf(terms)} ?Page ${page.number} of \\d+$`),
      );
    }
  });

  test("names no donor", () => {
    expect(textOfBlocks(document.blocks)).not.toContain("D-7QX4M");
  });
});

describe("the signatures", () => {
  const terms = someTerms(1);

  test("stand with name, role, time and fingerprint, below version and fingerprint of the terms", () => {
    const text = textOfBlocks(documentOf(terms).blocks);
    for (const fact of [
      `SHA-256 of the terms\n${hashOf(terms)}`,
      "Version\n2",
      "For the lender\nLending office for anatomical specimens\nČeněk Łuczak",
      "Role Registrar of the faculty",
      "Time 27 November 2026, 14:02 UTC",
      `SHA-256 ${hashOf(terms)}`,
    ])
      expect(text).toContain(fact);
  });

  test("are blanks as long as nobody has signed", () => {
    const block = flat(documentOf(terms, []).blocks).find(({ kind }) => kind === "signatures");
    const places = block?.kind === "signatures" ? block.places : [];
    expect(places.map(({ signedBy }) => signedBy)).toEqual([null, null]);
    expect(places.flatMap(({ facts }) => facts.map(({ value }) => value))).toEqual(Array(6).fill(null));
  });

  test("stand on one page with the fingerprint and the last clause", () => {
    for (const count of [1, 2, 3, 4, 5, 6, 7, 12]) {
      const many = someTerms(count);
      const lastClause = `${many.clauses.at(-1)?.texts.en?.heading}`;
      const signed = layOut(documentOf(many), fixedWidth)
        .map((page) => linesOf(bodyOf(page)))
        .filter((lines) => lines.some((line) => line.includes("For the lender")));
      expect(signed.length).toBe(1);
      const lines = signed[0] ?? [];
      for (const fact of [lastClause, hashOf(many), "Signatures"])
        expect(lines.some((line) => line.includes(fact))).toBe(true);
    }
  });
});

test.each([1, 12, 60])(
  "with %i specimens nothing leaves its column and nothing stands on anything else",
  (count) => {
    const pages = layOut(documentOf(someTerms(count)), fixedWidth);
    expect(strays(pages)).toEqual([]);
    expect(pages.flatMap(collisions)).toEqual([]);
    const printed = pages.flatMap(linesOf).join("\n");
    for (const { accessionNumber } of someTerms(count).schedule) expect(printed).toContain(accessionNumber);
  },
);

test.each([
  ["the longest words", "x".repeat(160)],
  ["many lines", "a\n".repeat(80)],
  ["control characters and half letters", "\u0000\u202E\uD800\u0007"],
  ["nothing at all", ""],
])("%s in every field leave no column and hide nothing", (_name, said) => {
  const terms = someTerms(3);
  const party = { name: said, address: said, city: said, email: said, phone: said };
  const pages = layOut(
    agreementDocument(
      {
        sha256: "0".repeat(64),
        signatures: [],
        terms: {
          ...terms,
          loan: { ...terms.loan, title: said },
          lender: { ...terms.lender, ...party },
          borrower: {
            ...terms.borrower,
            ...party,
            contactName: said,
            contactEmail: said,
            contactPhone: said,
          },
          venue: { ...terms.venue, name: said, address: said },
          schedule: terms.schedule.map((row) => ({
            ...row,
            title: said,
            latinTitle: said,
            components: Array.from({ length: 60 }, () => ({ name: said, count: 3 })),
            hazards: [{ substance: said, percent: 4 }],
            restrictions: [
              { code: "restriction.not-in", parameters: { countries: Array(60).fill("DE") } },
              { code: "restriction.no-pictures-for", parameters: { pictures: [said] } },
            ],
          })),
          stages: terms.stages.map((stage) => ({ ...stage, carrier: said, through: Array(30).fill("SE") })),
          conditions: [{ office: said, decidedOn: "2026-11-25", conditions: said, reference: said }],
        },
      },
      words,
    ),
    fixedWidth,
  );
  expect(strays(pages)).toEqual([]);
  expect(pages.flatMap(collisions)).toEqual([]);
});
