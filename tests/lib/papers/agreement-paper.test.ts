import { extractText, getDocumentProxy } from "unpdf";
import { beforeAll, describe, expect, test } from "vitest";
import { clausesAgreed, type Restriction } from "#lib/agreements/frozen-terms.ts";
import { restrictionText } from "#lib/papers/agreement-consent.ts";
import { type AgreementPaper, paintAgreement } from "#lib/papers/agreement-paper.ts";
import { englishPaper } from "#lib/papers/english.ts";
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
  const { text } = await extractText(await getDocumentProxy(bytes));
  return text.map((page) => page.normalize("NFKC").replace(/\s+/g, " "));
}

describe("an agreement of twelve specimens", () => {
  const terms = someTerms(12, { title: manyLetters, place: "Ulička µ 7, Łódź" });
  let pages: string[] = [];
  let text = "";
  beforeAll(async () => {
    pages = await readPages(await paintAgreement(paperOf(terms)));
    text = pages.join(" ");
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
