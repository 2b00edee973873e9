import { describe, expect, test } from "vitest";
import { facilityPaperDocument } from "#lib/papers/facility-paper/document.ts";
import { type PaperLanguage, paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { facilityQuestions } from "#lib/people/facility-questions.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { aPaper, emptyPaper, longPaper } from "#tests/lib/papers/facility-paper/facility-cases.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";
import { headingsOf } from "#tests/lib/papers/paper-headings.ts";

const documentOf = (paper = aPaper(), language: PaperLanguage = "en") =>
  facilityPaperDocument(paper, "ab".repeat(32), paperWordsIn(language));
const textOf = (paper = aPaper(), language: PaperLanguage = "en") =>
  textOfBlocks(documentOf(paper, language).blocks);

test("each answer is written as what it is", () => {
  const text = textOf();
  expect(text).toContain("Built in\n1908");
  expect(text).toContain("Construction\nmasonry");
  expect(text).toContain("Load that the floor bears, kg/m²\n1,500".normalize("NFKC"));
  expect(text).toContain("Set point of relative humidity, %\n48.5");
  expect(text).toContain("It runs day and night, every day of the year\nyes");
  expect(text).toContain("Water pipes or wet rooms lie above the room\nno");
  expect(text).toContain("1,400, then 1,200");
});

test("it says which version it is, whose word, and until when it counts", () => {
  expect(textOf()).toContain("Version 2, reported on 4 May 2026 by Bela Registrar; counts until 4 May 2028");
});

describe.each(paperLanguages)("in %s", (language) => {
  const { facility } = paperWordsIn(language);

  test("every question is asked, and what nobody knows is said as such", () => {
    const lines = textOf(emptyPaper, language).split("\n");
    const asked = Object.values(facility.questions).flatMap((section): string[] => Object.values(section));
    expect(asked).toHaveLength(
      Object.values(facilityQuestions).flatMap((section) => Object.keys(section)).length,
    );
    for (const question of asked) expect(lines, question).toContain(question.normalize("NFKC"));
    expect(lines.filter((line) => line === facility.notKnown)).toHaveLength(asked.length);
    expect(lines).toContain(facility.none);
  });

  test.each(paperSizes)("is neither clipped nor orphaned on %s", (size) => {
    for (const paper of [aPaper(), emptyPaper, longPaper])
      expect(faultsOf(documentOf(paper, language), size)).toEqual([]);
  });
});

describe("headings", () => {
  const ofEnglish = headingsOf(documentOf());

  test.each([
    ["de", ["Kontakte und Akkreditierung", "Klima", "Sollwert der relativen Feuchte, %", "Der Weg hinein"]],
    ["fr", ["Contacts et agrément", "Climat", "Consigne d’humidité relative, %", "Le chemin d’accès"]],
  ] as const)("are in %s, and none of them in English", (language, some) => {
    const own = headingsOf(documentOf(aPaper(), language));
    expect(own).toEqual(expect.arrayContaining([...some]));
    expect(own.length).toBeGreaterThan(100);
    // the overline is the name of the institution
    expect(own.filter((heading) => ofEnglish.includes(heading))).toEqual(["Port Selwyn Faculty of Medicine"]);
  });
});
