/** Each paper in each language: its own title, nothing headed in English, and no word clipped. */
import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, test } from "vitest";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperName } from "#lib/papers/paper-names.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { bothSigned, conflictingTerms, hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { goldenIn } from "#tests/lib/papers/golden-in-languages.ts";
import { documentIn, paintIn } from "#tests/lib/papers/issued-papers.ts";
import { longTitle, someCase, someHandovers } from "#tests/lib/papers/paper-cases.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";
import { headingsOf } from "#tests/lib/papers/paper-headings.ts";

const foreign = ["de", "fr"] as const satisfies PaperLanguage[];

async function readText(bytes: Uint8Array): Promise<string> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)));
  return text.join(" ").normalize("NFKC").replace(/\s+/g, " ");
}

const plain = someCase({ specimens: 7, crates: 2 });
const paperCase = { ...plain, handovers: someHandovers(plain) };
const few = someCase({ specimens: 1, crates: 1 });
const long = someCase({ specimens: 24, crates: 12, long: true });

/** Headings that are the same in both languages, names of the case, and marks of units. */
const sameHeadings: Readonly<Record<(typeof foreign)[number], readonly string[]>> = {
  de: ["Name", "SHA-256", "Winter course", "Winter course in regional anatomy", "°C", "lx", "μW/lm"],
  fr: [
    ...["Fragile", "Net kg", "Signature", "Signatures", "SHA-256", "Version"],
    ...["Winter course", "Winter course in regional anatomy", "°C", "lx", "μW/lm"],
  ],
};

/** What stands at the head of a thing in the foreign document and in the English one. */
function englishHeadings(
  language: (typeof foreign)[number],
  ofForeign: readonly string[],
  ofEnglish: readonly string[],
): string[] {
  const own = new Set(ofForeign);
  return ofEnglish.filter((text) => own.has(text) && !sameHeadings[language].includes(text));
}

/** Terms that were drawn up in English with their words under another language. */
const inLanguage = (terms: CurrentTerms, language: PaperLanguage): CurrentTerms => ({
  ...terms,
  languages: [language],
  clauses: terms.clauses.map((clause) => ({
    ...clause,
    texts: Object.fromEntries(Object.values(clause.texts).map((text) => [language, text])),
  })),
});

describe.each(foreign)("in %s", (language) => {
  const words = paperWordsIn(language);

  test.each(paperKinds)(
    "%s reads back with its own title and lines, and no English heading",
    async (kind) => {
      const text = await readText(await paintIn(language, kind, paperCase));
      const name = paperName(kind, words).normalize("NFKC");
      expect(text).toContain(name);
      expect(text).toContain(words.check.sentence.normalize("NFKC"));
      for (const line of goldenIn[language][kind]) expect(text).toContain(line.normalize("NFKC"));
      const own = headingsOf(documentIn(language, kind, paperCase));
      const english = headingsOf(documentIn("en", kind, paperCase));
      expect(own.length).toBeGreaterThan(5);
      expect(englishHeadings(language, own, english)).toEqual([]);
      for (const heading of english.filter((one) => one.includes(" ") && !own.includes(one)))
        expect(text, heading).not.toContain(heading);
    },
  );

  test.each(paperKinds)("%s clips no word, however long", (kind) => {
    for (const size of paperSizes)
      for (const one of [few, long]) expect(faultsOf(documentIn(language, kind, one), size)).toEqual([]);
  });

  test("a label is one page on either sheet, however long the names", () => {
    for (const size of paperSizes)
      for (const one of [few, long])
        expect(layOut(documentIn(language, "crate label", one), measureText, size)).toHaveLength(1);
  });

  test("an agreement reads back with its own title, clauses and annexes, and no English heading", async () => {
    const terms = someTerms(12, { languages: [language] });
    const facts = { terms, sha256: hashOf(terms), signatures: bothSigned(terms) };
    const text = await readText(
      await paintAgreement({ ...facts, version: terms.loan.version, drawnUpAt: "2026-11-25T10:00:00Z" }),
    );
    // once in the foot of each page, whatever the length of the words before it
    const pages = layOut(agreementDocument(facts, words), measureText).length;
    expect(text.split(`${words.agreement.termsHash.normalize("NFKC")}${facts.sha256}`)).toHaveLength(
      pages + 1,
    );
    const own = headingsOf(agreementDocument(facts, words));
    const english = headingsOf(agreementDocument(facts, paperWordsIn("en")));
    const clauses = terms.clauses.flatMap(({ texts }) => texts[language]?.heading ?? []);
    expect(clauses.length).toBeGreaterThan(30);
    expect(text).toContain(`${words.agreement.name} L 2026-031`.normalize("NFKC"));
    expect(text).toContain(words.annexes.titles.A);
    // names of clauses and of their parameters come with the terms, whatever the words around them
    const { labels } = clausesIn[language];
    const ofTerms = new Set([...clauses, ...Object.values(labels)].map((one) => one.normalize("NFKC")));
    expect(englishHeadings(language, own, english).filter((one) => !ofTerms.has(one))).toEqual([]);
  });

  test("an agreement clips no word in either language or in both", () => {
    for (const terms of [
      someTerms(24, { title: longTitle, languages: [language] }),
      someTerms(12, { title: longTitle, languages: [language, "en"] }),
      inLanguage(conflictingTerms(), language),
    ]) {
      const facts = { terms, sha256: hashOf(terms), signatures: [] };
      const second = terms.languages.length === 2 ? paperWordsIn("en") : null;
      for (const size of paperSizes)
        expect(faultsOf(agreementDocument(facts, words, second), size)).toEqual([]);
    }
  });
});

describe("an agreement in two languages", () => {
  const terms = someTerms(3, { languages: ["de", "fr"] });
  const document = agreementDocument(
    { terms, sha256: hashOf(terms), signatures: [] },
    paperWordsIn("de"),
    paperWordsIn("fr"),
  );
  const headings = headingsOf(document);

  test("has its headings in both, the one that rules first", () => {
    for (const heading of [
      "Leihvertrag / Contrat de prêt L 2026-031",
      "Klauseln / Les clauses",
      "Anlage A: Verzeichnis der Präparate / Annexe A : liste des spécimens",
    ])
      expect(headings).toContain(heading);
  });

  test("heads the columns of its schedule in both", () => {
    expect(headings).toEqual(
      expect.arrayContaining(["Nr.\nN°", "Präparat\nSpécimen", "Länge mm\nLongueur mm", "Masse kg"]),
    );
  });

  test("has its clauses side by side in its file", async () => {
    const text = await readText(
      await paintAgreement({
        terms,
        sha256: hashOf(terms),
        signatures: [],
        version: terms.loan.version,
        drawnUpAt: "2026-11-25T10:00:00Z",
      }),
    );
    expect(text).toContain("Deutsch (dieser Text ist maßgeblich)");
    expect(text).toContain("Klauseln / Les clauses");
    for (const { texts } of terms.clauses)
      for (const code of ["de", "fr"])
        expect(text).toContain((texts[code]?.heading ?? "?").normalize("NFKC").split(" ")[0]);
  });
});
