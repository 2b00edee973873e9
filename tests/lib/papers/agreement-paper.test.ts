import { extractText, getDocumentProxy } from "unpdf";
import { beforeAll, describe, expect, test } from "vitest";
import { amendmentOf } from "#lib/agreements/amendment.ts";
import { type CurrentTerms, clausesAgreed, type Restriction } from "#lib/agreements/frozen-terms.ts";
import { restrictionText } from "#lib/papers/agreement-consent.ts";
import { type AgreementPaper, paintAgreement } from "#lib/papers/agreement-paper.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { type PaperLanguage, paperLanguages } from "#lib/papers/languages.ts";
import { paperSizes, sheets } from "#lib/papers/sheet.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { bothSigned, hashOf, manyLetters, someTerms } from "#tests/lib/papers/agreement-cases.ts";

const paperOf = (terms = someTerms(3), said: Partial<AgreementPaper> = {}): AgreementPaper => ({
  terms,
  version: terms.loan.version,
  sha256: hashOf(terms),
  drawnUpAt: "2026-11-25T10:00:00Z",
  signatures: bothSigned(terms),
  ...said,
});

const sentence = (restriction: Restriction) => restrictionText(restriction, englishPaper).normalize("NFKC");

/** The pages as text: composed and compatible letters, single spaces. */
async function readPages(bytes: Uint8Array): Promise<string[]> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)));
  return text.map((page) => page.normalize("NFKC").replace(/\s+/g, " "));
}

/** Width and height of each page, in points. */
async function sizesOf(bytes: Uint8Array): Promise<[number, number][]> {
  const file = await getDocumentProxy(new Uint8Array(bytes));
  const numbers = Array.from({ length: file.numPages }, (_none, index) => index + 1);
  const views = await Promise.all(numbers.map(async (number) => (await file.getPage(number)).view));
  return views.map(([, , widthPt = 0, heightPt = 0]) => [widthPt, heightPt]);
}

describe.each(paperSizes)("an agreement of twelve specimens on %s", (size) => {
  const terms = someTerms(12, { title: manyLetters, place: "Ulička µ 7, Łódź" });
  let bytes: Uint8Array = new Uint8Array();
  let pages: string[] = [];
  let text = "";
  beforeAll(async () => {
    bytes = await paintAgreement(paperOf(terms, { size }));
    pages = await readPages(bytes);
    text = pages.join(" ");
  });

  test("is of one sheet throughout", async () => {
    expect(await sizesOf(bytes)).toEqual(pages.map(() => [sheets[size].widthPt, sheets[size].heightPt]));
  });

  test("is numbered, and every page says to which version it belongs", () => {
    expect(pages.length).toBeGreaterThan(4);
    pages.forEach((page, index) => {
      expect(page).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(page).toMatch(/^Loan agreement L 2026-031 Version 2/);
      expect(page).toContain(`SHA-256 of the terms: ${hashOf(terms)}`);
    });
  });

  test("reads back with letters of many languages", () => {
    for (const words of [manyLetters, "Ulička µ 7, Łódź", "Čeněk Łuczak", "Aoife Ní Bhriain"])
      expect(text).toContain(words.normalize("NFKC"));
  });

  test("holds every specimen, every clause and every restriction", () => {
    for (const { accessionNumber, title, restrictions } of terms.schedule)
      for (const words of [accessionNumber, title, ...restrictions.map(sentence)])
        expect(text).toContain(words);
    // a page may end within a clause, so head and foot are taken out first
    const letters = pages
      .map((page) => page.replace(/^Loan agreement L 2026-031 Version 2/, ""))
      .map((page) => page.replace(/SHA-256 of the terms: \S+ Page \d+ of \d+$/, ""))
      .join("")
      .replace(/\s/g, "");
    for (const { number, heading, text: clause } of clausesAgreed(terms, "en"))
      expect(letters).toContain(`${number}${heading}${clause}`.normalize("NFKC").replace(/\s/g, ""));
  });

  test("prints the fingerprint in full with the signatures", () => {
    const signed = pages.find((page) => page.includes("For the borrower")) ?? "";
    expect(signed.split(hashOf(terms)).length).toBeGreaterThan(2);
    expect(signed).toContain("26 November 2026, 09:15 UTC");
  });

  test("names no donor", () => {
    expect(text).not.toContain("D-7QX4M");
  });
});

describe("an amendment", () => {
  const first = someTerms(1);
  const kept = { version: 2, sha256: hashOf(first), terms: canonicalText(first), signatures: 2 };
  const amended = (language: PaperLanguage): CurrentTerms => {
    const { title, version, number, drawnUpOn } = first.loan;
    const said = {
      loan: { number, title, version: version + 1, drawnUpOn },
      languages: [language],
      parameters: { recallDays: 45 },
      opensOn: "2027-03-22",
    };
    return someTerms(1, { ...said, amends: amendmentOf([kept], someTerms(1, said)) });
  };

  const before = hashOf(first);
  const lines: Readonly<Record<PaperLanguage, string[]>> = {
    en: [
      "Annex M: amendments",
      `This version is amendment 1. It amends version 2 with the SHA-256 ${before}`,
      "Opening day 15 March 2027 22 March 2027 Clause 14, Recall for own need, days 30 45",
      `Version SHA-256 of the terms 2 ${before}`,
    ],
    de: [
      "Anlage M: Nachträge",
      `Diese Fassung ist Nachtrag 1. Sie ändert Fassung 2 mit dem SHA-256 ${before}`,
      "Sprachen Englisch Deutsch Tag der Eröffnung 15. März 2027 22. März 2027",
      "Klausel 14, Rückruf aus eigenem Bedarf, Tage 30 45",
      `Fassung SHA-256 der Bestimmungen 2 ${before}`,
    ],
    fr: [
      "Annexe M : avenants",
      `Cette version est l’avenant 1. Elle modifie la version 2 au SHA-256 ${before}`,
      "Langues anglais français Jour d’ouverture 15 mars 2027 22 mars 2027",
      "Clause 14, Rappel pour besoin propre, jours 30 45",
      `Version SHA-256 des termes 2 ${before}`,
    ],
  };

  test.each(paperLanguages.flatMap((language) => paperSizes.map((size) => [language, size] as const)))(
    "reads back in %s on %s: what it amends, and what differs",
    async (language, size) => {
      const terms = amended(language);
      const bytes = await paintAgreement(paperOf(terms, { size }));
      const pages = await readPages(bytes);
      const text = pages.join(" ");
      for (const line of lines[language]) expect(text).toContain(line.normalize("NFKC"));
      for (const page of pages) expect(page).toContain(hashOf(terms));
      expect(await sizesOf(bytes)).toEqual(pages.map(() => [sheets[size].widthPt, sheets[size].heightPt]));
    },
  );
});

test("the same agreement gives the same bytes, a signature more gives others", async () => {
  const [first, second, unsigned] = await Promise.all([
    paintAgreement(paperOf()),
    paintAgreement(paperOf()),
    paintAgreement(paperOf(undefined, { signatures: [] })),
  ]);
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  expect(Buffer.from(first).equals(Buffer.from(unsigned))).toBe(false);
});

describe("nothing is painted", () => {
  const terms = someTerms(1);
  const signatures = bothSigned(terms);
  test.each<[string, Partial<AgreementPaper>]>([
    ["under a fingerprint of other terms", { sha256: hashOf(someTerms(2)), signatures: [] }],
    ["as another version", { version: 3 }],
    ["with a signature under other terms", { signatures: bothSigned(someTerms(2)) }],
    ["with two signatures of one party", { signatures: [...signatures, ...signatures.slice(0, 1)] }],
  ])("%s", async (_name, said) => {
    await expect(paintAgreement(paperOf(terms, said))).rejects.toThrow(RangeError);
  });
});

test("sixty specimens are a paper of thirty pages at most and small enough to send", async () => {
  const bytes = await paintAgreement(paperOf(someTerms(60)));
  expect((await readPages(bytes)).length).toBeLessThan(31);
  expect(bytes.byteLength).toBeLessThan(400_000);
});
