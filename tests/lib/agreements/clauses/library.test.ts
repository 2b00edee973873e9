import fs from "node:fs";
import { describe, expect, test } from "vitest";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import {
  type ClauseFacts,
  type ClauseId,
  clauseIds,
  clauseLibrary,
  clauseRule,
  clausesThatApply,
} from "#lib/agreements/clauses/library.ts";
import { clauseParameters } from "#lib/agreements/clauses/parameters.ts";
import { writeClause } from "#lib/agreements/clauses/written-clause.ts";
import { sampleBefore } from "#tests/support/clause-samples.ts";

const plain: ClauseFacts = {
  hasHuman: false,
  hasAnimal: true,
  hasJars: false,
  isExport: false,
  isTeaching: false,
  isShown: false,
  hasDisposition: false,
};

test("there are fifty-two clauses, numbered without a gap", () => {
  expect(clauseIds.map((id) => clauseLibrary[id].number)).toEqual(
    Array.from({ length: 52 }, (_, index) => index + 1),
  );
});

test("clauses of human material stand only where there is some", () => {
  const humanOnly: ClauseId[] = [
    "human-material",
    "consent",
    "withdrawal",
    "anonymity",
    "licences",
    "total-loss",
    "promotion",
    "objections",
  ];
  expect(clausesThatApply(plain).filter((id) => humanOnly.includes(id))).toEqual([]);
  expect(clausesThatApply({ ...plain, hasHuman: true }).filter((id) => humanOnly.includes(id))).toEqual(
    humanOnly,
  );
});

test("nothing is sampled without leave, of a person or of an animal", () => {
  expect(clausesThatApply(plain)).toContain("sampling");
  expect(clauseRule("sampling").isParticular).toBe(true);
});

test.each([
  ["jars", { hasJars: true }, {}],
  ["border", { isExport: true }, {}],
  ["immunity", { isExport: true }, {}],
  ["teaching", { isTeaching: true }, {}],
  ["display", { isShown: true }, {}],
  ["disposition", { hasDisposition: true }, {}],
  ["animals", {}, { hasAnimal: false }],
] as const)("the clause of %s stands where it applies and nowhere else", (id, applies, not) => {
  expect(clausesThatApply({ ...plain, ...applies })).toContain(id);
  expect(clausesThatApply({ ...plain, ...not })).not.toContain(id);
});

const placesIn = (text: string) =>
  [...text.matchAll(/\{(\w+)(?:\|[^}]+)?\}/g)].map((match) => match[1] ?? "");

describe.each(clauseLanguages)("in %s", (code) => {
  const language = clausesIn[code];

  test.each(clauseIds)("clause %s holds each of its parameters and no other", (id) => {
    const { text } = language.clauses[id];
    expect([...new Set(placesIn(text))].sort()).toEqual([...clauseRule(id).parameters].sort());
    expect(text).not.toMatch(/\{\w+\|[^|}]*\}/);
  });

  test("every clause says what follows otherwise or what holds, in more than one sentence", () => {
    for (const id of clauseIds)
      expect(language.clauses[id].text.split(/[.:;] /).length, id).toBeGreaterThan(2);
  });

  test("texts of law end with the local authority, and nothing is called lawful", () => {
    const ending = {
      en: "check with the local authority.",
      de: "bei der örtlichen Behörde erfragen.",
      fr: "à vérifier auprès de l’autorité locale.",
    }[code];
    const ofLaw = clauseIds.filter((id) => language.clauses[id].text.endsWith(ending));
    expect(ofLaw).toEqual([
      "consent",
      "licences",
      "sampling",
      "border",
      "immunity",
      "confidentiality",
      "law",
      "signature",
      "disposition",
      "animals",
    ]);
    for (const id of clauseIds)
      expect(language.clauses[id].text).not.toMatch(
        /\b(lawful|legally|rechtmäßig|zulässig|licite|légalement)\b/i,
      );
  });
});

/** How a clause says who, by when, and what follows otherwise. */
const saysOf = {
  who: /\b(lender|borrower|part(y|ies)|carriers?|couriers?|both|whoever)\b/i,
  when: /\b(days?|hours?|months?|before|after|at once|until|within|while|during|each|every|at any time|where|when|whoever|by \d)\b/i,
  otherwise:
    /\b(otherwise|if not|if they|or else|fails|without|breach|ends?|pays?|bears?|owes?|charges?|refuses?|recalls?|stops|instead|until then|at the borrower's cost|counts as|answers? for|binds neither|accepts it|decides|never|only when|is not needed|no copy|withdraw|holds? only|lender's consent|not before|stays closed|taken down|at the risk)\b/i,
};

test.each(clauseIds)("clause %s says who, by when, and what follows otherwise", (id) => {
  const { text } = writeClause(id, sampleBefore, clausesIn.en);
  for (const [what, said] of Object.entries(saysOf)) expect(text, what).toMatch(said);
});

test("the English words are the trade's, in clauses, labels and choices", () => {
  const { clauses, labels, choices } = clausesIn.en;
  const said = [
    ...Object.values(clauses).flatMap(({ heading, text }) => [heading, text]),
    ...Object.values(labels),
    ...Object.values(choices).flatMap((words) => Object.values(words)),
  ];
  for (const text of said) expect(text).not.toMatch(/\b(piece|object|value|leg)s?\b/i);
});

test("German and French use the words of the trade", () => {
  const german = Object.values(clausesIn.de.clauses)
    .map(({ text }) => text)
    .join(" ");
  const french = Object.values(clausesIn.fr.clauses)
    .map(({ text }) => text)
    .join(" ");
  for (const word of ["Präparat", "Körperspenderinnen und Körperspender", "Verleiher", "Entleiher"])
    expect(german).toContain(word);
  for (const word of ["spécimen", "donneur", "prêteur", "emprunteur"]) expect(french).toContain(word);
  expect(french).not.toMatch(/ [:;»]/);
});

test("German clauses and papers have one word for a seal and one for the replacement cost", () => {
  const sources = ["lib/agreements/clauses", "lib/papers"].flatMap((folder) =>
    fs
      .readdirSync(folder)
      .filter((name) => name.startsWith("german"))
      .map((name) => fs.readFileSync(`${folder}/${name}`, "utf8")),
  );
  const said = sources.join("\n");
  expect(said).toContain("Siegel");
  expect(said).toContain("Ersatzkosten");
  expect(said).not.toMatch(/Plombe|plombiert|Wiederbeschaffung|Ersatzwert|Versicherungswert/);
});

test("every parameter stands in a clause", () => {
  const used = new Set(clauseIds.flatMap((id) => clauseRule(id).parameters));
  expect(
    Object.keys(clauseParameters).filter((name) => !used.has(name as keyof typeof clauseParameters)),
  ).toEqual([]);
});
