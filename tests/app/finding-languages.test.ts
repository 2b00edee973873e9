/** The reasons of rules in three languages: the same codes, the same parameters, and every code that a rule can give. */
import fs from "node:fs";
import path from "node:path";
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { lawFindingWords } from "#app/_words/en/law-findings.ts";
import { loanFindingWords } from "#app/_words/en/loan-findings.ts";
import { findingsIn, type OtherLanguage } from "#app/_words/finding-languages.ts";
import { findingSentence, wayOutSentence } from "#app/_words/finding-sentence.ts";
import { ReasonsChoice } from "#app/(signed-in)/loans/[id]/suitability/reasons-choice.tsx";
import { reasonsLanguage } from "#app/(signed-in)/loans/[id]/suitability/reasons-language.ts";
import { answersOf, notesOf } from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import { SuitabilitySection } from "#app/(signed-in)/loans/[id]/suitability/suitability-section.tsx";
import { licenceKinds, passageKinds } from "#lib/people/schema.ts";
import { audienceLimits, bases, dispositions, scopes, titleStatuses } from "#lib/provenance/schema.ts";
import { costBases, fluids, hazardSubstances, madePeriods, preparations } from "#lib/specimens/schema.ts";
import {
  audiences,
  displayStyles,
  type Finding,
  plannedActivities,
  plannedPictures,
  purposes,
  ruleGroups,
} from "#lib/suitability/schema.ts";
import { passageFacts, passageManners } from "#lib/transport/route.ts";

const english: Readonly<Record<string, string>> = {
  ...loanFindingWords.facts,
  ...loanFindingWords.waysOut,
  ...lawFindingWords.facts,
  ...lawFindingWords.waysOut,
};
const others = Object.keys(findingsIn) as OtherLanguage[];

/** What a sentence is filled with, and the numbers that decide between its forms. */
const parametersOf = (sentence: string) => ({
  filled: [...new Set([...sentence.matchAll(/\{(\w+)\}/g)].map((match) => match[1]))].sort(),
  counted: [...new Set([...sentence.matchAll(/\[(\w+):[^|\]]*\|[^\]]*\]/g)].map((match) => match[1]))].sort(),
});

/** Every code that is written in a rule, and those of the climate, which are put together. */
function codesInRules(): string[] {
  const folder = path.resolve(import.meta.dirname, "../../lib/suitability/rules");
  const written = fs.readdirSync(folder).flatMap((file) => {
    const source = fs.readFileSync(path.join(folder, file), "utf8");
    return [
      ...source.matchAll(
        /"((?:consent|title|permits|free|condition|use|climate|light|way-in|cover|law|way)\.[a-z-]+)"/g,
      ),
    ].map((match) => match[1] ?? "");
  });
  // The condition room's own rulings, which no sentence is made of.
  const rulings = ["condition.recency", "condition.verdict", "condition.activity"];
  return [...new Set(written)].filter((code) => !rulings.includes(code)).sort();
}

/** What stands in a parameter as the program knows it. */
const closedSets: Readonly<Record<string, readonly string[]>> = {
  scope: scopes,
  audience: audiences,
  limit: audienceLimits,
  picture: plannedPictures,
  activity: plannedActivities,
  style: displayStyles,
  purpose: purposes,
  basis: [...bases, ...costBases],
  disposition: dispositions,
  status: titleStatuses,
  licence: licenceKinds,
  lacking: ["origin", "consent", "death certificate"],
  substances: hazardSubstances,
  fluid: fluids,
  preparation: preparations,
  since: madePeriods,
  unfitTo: ["show", "handle", "travel"],
  passage: passageKinds,
  check: passageFacts.map((fact) => fact.replaceAll("-", " ")),
  manner: passageManners.map((manner) => manner.replaceAll("-", " ")),
};

describe.each(others)("in %s", (language) => {
  const { sentences, values, endOfLaw } = findingsIn[language];

  test("there is a sentence for every code that English has, and no other", () => {
    expect(Object.keys(sentences).sort()).toEqual(Object.keys(english).sort());
  });

  test("each sentence takes the parameters that the English one takes", () => {
    const own = Object.keys(english).map((code) => [code, parametersOf(sentences[code] ?? "")]);
    expect(own).toEqual(Object.entries(english).map(([code, sentence]) => [code, parametersOf(sentence)]));
  });

  test("each sentence is whole, and what rests on law ends by sending to the local authority", () => {
    const codes = Object.keys({ ...lawFindingWords.facts, ...lawFindingWords.waysOut });
    expect(codes.filter((code) => !sentences[code]?.endsWith(` ${endOfLaw}`))).toEqual([]);
    const broken = Object.values(sentences).filter((said) => !/^[\p{Lu}{[].*\.$/u.test(said));
    expect(broken).toEqual([]);
    const asEnglish = Object.keys(english).filter((code) => sentences[code] === english[code]);
    expect(asEnglish).toEqual([]);
  });

  test("each word of the program that fills a sentence has its own", () => {
    const wanting = Object.entries(closedSets).flatMap(([name, words]) =>
      words.filter((word) => !values[name]?.[word]).map((word) => `${name}: ${word}`),
    );
    expect(wanting).toEqual([]);
  });
});

test("every code that is written in a rule has its sentence in all languages", () => {
  const codes = codesInRules();
  expect(codes.length).toBeGreaterThan(200);
  for (const sentences of [english, ...others.map((language) => findingsIn[language].sentences)])
    expect(codes.filter((code) => !(code in sentences))).toEqual([]);
});

const finding = (said: Partial<Finding>): Finding => ({
  specimenId: "a",
  rule: "B6",
  group: "free",
  outcome: "attend",
  fact: "free.not-rested",
  parameters: { days: 1, needed: 12_000, endedOn: "2026-03-01" },
  source: "Habit",
  wayOut: "way.later-or-substitute",
  ...said,
});

test("days, numbers, money and countries are written as the language writes them", () => {
  expect(findingSentence(finding({}), "de")).toBe(
    "In Ruhe seit dem 1.\u00A0März\u00A02026, nur 1 Tag; nötig sind 12.000.",
  );
  expect(findingSentence(finding({}), "fr")).toBe(
    "Au repos depuis le 1er\u00A0mars\u00A02026, seulement 1 jour\u00A0; il en faut 12\u00A0000.",
  );
  const cover = finding({
    rule: "V3",
    fact: "cover.too-low",
    parameters: { minor: 123_450, currency: "EUR", neededMinor: 9_000_000, neededCurrency: "EUR" },
  });
  expect(findingSentence(cover, "de")).toBe(
    "Die Deckung von 1.234,50\u00A0EUR liegt unter den 90.000,00\u00A0EUR, die benötigt werden.",
  );
  const country = finding({ rule: "G5", fact: "consent.transit-refused", parameters: { country: "CH" } });
  expect(findingSentence(country, "fr")).toContain("Suisse");
  const unfit = finding({
    rule: "C3",
    fact: "condition.unfit",
    parameters: { unfitTo: "show, travel", checkedOn: "2026-11-10" },
  });
  expect(findingSentence(unfit, "de")).toContain("nicht geeignet: zum Zeigen oder zum Reisen.");
});

test("a scope with a comma is one scope, and what is not known is a dash", () => {
  const scope = finding({
    rule: "G1",
    fact: "consent.refused",
    parameters: { scope: "public display, paid" },
  });
  expect(findingSentence(scope, "de")).toBe(
    "Die Einwilligung schließt aus: öffentliches Zeigen gegen Eintrittsgeld.",
  );
  const licence = finding({
    rule: "UK6",
    fact: "law.licence-missing",
    parameters: { venue: "Hall", licence: "anatomy / authority to keep elsewhere" },
  });
  expect(findingSentence(licence, "fr")).toBe(
    "Aucune autorisation pour Hall (anatomie / autorité de garder ailleurs) n’est enregistrée. À vérifier auprès de l’autorité locale.",
  );
  expect(wayOutSentence(finding({ fact: "law.fluid-not-known", wayOut: "" }), "de")).toBe("");
  const spare = finding({ fact: "way-in.passes", parameters: { spareMm: null } });
  expect(findingSentence(spare, "de")).toContain("mit –\u00A0mm Spielraum");
});

test("a rule of law sends to the local authority in the reader's language, whatever its fact", () => {
  const said = findingSentence(finding({ rule: "UK1", fact: "free.at-home", parameters: {} }), "de");
  expect(said).toBe("Es ist nicht anderweitig ausgeliehen. Bei der örtlichen Behörde erfragen.");
});

test("the notes and all answers of the section are told in the language that is asked for", () => {
  const lines = [{ specimenId: "a", accessionNumber: "SR 03.041" }];
  const [note] = notesOf([finding({})], lines, "de");
  expect(note?.fact).toMatch(/^In Ruhe seit dem/);
  expect(note?.wayOut).toBe("Einen späteren Tag wählen oder ein anderes Präparat, das dasselbe zeigt.");
  const [answer] = answersOf([finding({})], lines, "fr");
  expect(answer?.fact).toMatch(/^Au repos depuis le/);
});

test("nobody's choice gives a reader of the borrower its first language, and everybody else English", () => {
  const borrower = { id: "b", languages: ["de-AT", "fr"] };
  const own = { institutionId: "b" };
  expect(reasonsLanguage(undefined, own, borrower)).toBe("de");
  expect(reasonsLanguage("fr", own, borrower)).toBe("fr");
  expect(reasonsLanguage("xx", own, borrower)).toBe("de");
  expect(reasonsLanguage(undefined, { institutionId: null }, borrower)).toBe("en");
  expect(reasonsLanguage("de", { institutionId: null }, borrower)).toBe("de");
  expect(reasonsLanguage(undefined, own, { id: "b", languages: ["nb-NO", "de"] })).toBe("en");
});

test("each language is a link to the section, and the current one says so", () => {
  const drawn = renderToStaticMarkup(createElement(ReasonsChoice, { loanId: "l", current: "de" }));
  const links = [...drawn.matchAll(/<a href="([^"]+)"( aria-current="true")?>(\w+)</g)];
  expect(links.map(([, href, current, name]) => [href, current !== undefined, name])).toEqual([
    ["/loans/l?reasons=en#suitability", false, "English"],
    ["/loans/l?reasons=de#suitability", true, "German"],
    ["/loans/l?reasons=fr#suitability", false, "French"],
  ]);
});

test("the section of the loan's file tells its reasons in German, and marks them as German", () => {
  const drawn = renderToStaticMarkup(
    createElement(SuitabilitySection, {
      viewer: { accountId: "v", name: "", email: "", roles: ["curator"], institutionId: null },
      loan: {
        id: "l",
        state: "requested",
        lines: [{ specimenId: "a", accessionNumber: "SR 03.041" }],
        findings: [finding({})],
        matrix: { a: Object.fromEntries(ruleGroups.map((group) => [group, "attend"])) },
        sight: { reasons: true, costs: true, person: true },
        latestRun: null,
      } as never,
      sheets: new Set<string>(),
      language: "de",
      mayChoose: true,
    }),
  );
  expect(drawn).toMatch(/<span lang="de">In Ruhe seit dem [^<]*<\/span>/);
  expect(drawn).toContain('<span lang="de">Einen späteren Tag wählen oder ein anderes Präparat');
  expect(drawn).not.toContain("At rest for");
});
