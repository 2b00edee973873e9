/**
 * Everything of the trade that reaches a paper as a code has a word in every language,
 * and a word of its own: what is the same as in English is named here, one by one.
 */
import { describe, expect, test } from "vitest";
import { bandQuantities } from "#lib/agreements/frozen-terms.ts";
import { annexMarks } from "#lib/agreements/terms-annexes.ts";
import { grades } from "#lib/condition/grade.ts";
import { activities, occasions, severities } from "#lib/condition/schema.ts";
import { findingTerms } from "#lib/condition/terms.ts";
import { costingKinds, costUnits, lineCodes, roundingRules } from "#lib/costing/schema.ts";
import { checkInVerdicts } from "#lib/loans/inputs.ts";
import { formAnswers } from "#lib/papers/condition-words.ts";
import { customsKinds } from "#lib/papers/customs-paper/content.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperName } from "#lib/papers/paper-names.ts";
import { handlingMarks } from "#lib/papers/pictograms.ts";
import type { PaperWords } from "#lib/papers/words.ts";
import { facilityQuestions, facilitySections } from "#lib/people/facility-questions.ts";
import { licenceKinds, passageKinds } from "#lib/people/schema.ts";
import { dispositions, permitKinds, titleStatuses } from "#lib/provenance/schema.ts";
import { directions } from "#lib/shipments/schema.ts";
import {
  costBases,
  fluids,
  hazardSubstances,
  preparations,
  specimenKinds,
  uses,
} from "#lib/specimens/schema.ts";
import {
  audiences,
  displayStyles,
  offices,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import { handlingModes } from "#lib/transport/handling.ts";
import { crateKinds, crateOrientations } from "#lib/transport/schema.ts";

type Words = Readonly<Record<string, unknown>>;

type Asked = { kind: string; of?: readonly string[] };
const facilityChoices = Object.values(facilityQuestions)
  .flatMap((section): Asked[] => Object.values(section))
  .flatMap(({ of = [] }) => of);

/** Closed sets whose codes a paper prints, each with the words that it prints for them. */
const sets: readonly [name: string, codes: readonly string[], pick: (words: PaperWords) => Words][] = [
  ["kinds of specimen", specimenKinds, ({ schedule }) => schedule.kinds],
  ["preparations", preparations, ({ schedule }) => schedule.preparations],
  ["fluids", fluids, ({ schedule }) => schedule.fluids],
  ["hazards", hazardSubstances, ({ schedule }) => schedule.hazardSubstances],
  ["uses", uses, ({ annexes }) => annexes.handling.uses],
  ["bases of a cost", costBases, ({ schedule }) => schedule.costBases],
  ["grades", grades, ({ schedule }) => schedule.grades],
  ["purposes", purposes, ({ loan }) => loan.purposes],
  ["uses in teaching", teachingUses, ({ loan }) => loan.teachingUses],
  ["audiences", audiences, ({ loan }) => loan.audiences],
  ["manners of showing", displayStyles, ({ loan }) => loan.displayStyles],
  ["pictures", plannedPictures, ({ loan }) => loan.plannedPictures],
  ["activities", plannedActivities, ({ loan }) => loan.plannedActivities],
  ["offices", offices, ({ loan }) => loan.offices],
  ["quantities of a band", bandQuantities, ({ limits }) => limits.conflicts],
  ["dispositions", dispositions, ({ consent }) => consent.dispositions],
  ["titles", titleStatuses, ({ annexes }) => annexes.evidence.titles],
  ["permits", permitKinds, ({ annexes }) => annexes.evidence.kinds],
  ["licences", licenceKinds, ({ annexes }) => annexes.evidence.kinds],
  ["annexes", annexMarks, ({ annexes }) => annexes.titles],
  ["occasions of a check", occasions, ({ annexes }) => annexes.checks.occasions],
  ["kinds of crate", crateKinds, ({ transport }) => transport.crateKinds],
  ["orientations", crateOrientations, ({ transport }) => transport.orientations],
  ["ways to lift", handlingModes, ({ transport }) => transport.handlingModes],
  ["ways", directions, ({ transport }) => transport.directions],
  ["ways of a stage", directions, ({ travel }) => travel.way.directions],
  ["captions of marks", handlingMarks, ({ travel }) => travel.label.marks],
  ["lines of a costing", lineCodes, ({ trade }) => trade.cost.codes],
  ["units of a costing", [...costUnits, "transit"], ({ trade }) => trade.cost.units],
  ["kinds of a costing", costingKinds, ({ trade }) => trade.cost.about],
  ["rules of rounding", roundingRules, ({ trade }) => trade.cost.roundingText],
  ["findings", findingTerms, ({ condition }) => condition.terms],
  ["severities", severities, ({ condition }) => condition.severities],
  ["whether it goes on", activities, ({ condition }) => condition.activities],
  ["occasions of a form", occasions, ({ condition }) => condition.occasions],
  ["answers of a form", formAnswers, ({ condition }) => condition.answers],
  ["verdicts", checkInVerdicts, ({ closure }) => closure.verdicts],
  ["sections of a facility report", facilitySections, ({ facility }) => facility.sections],
  ["choices of a facility report", facilityChoices, ({ facility }) => facility.choices],
  ["kinds of passage", passageKinds, ({ facility }) => facility.passageKinds],
  ["papers for customs", customsKinds, ({ customs }) => customs.about],
];

/** What is written alike in English and in the other language, and rightly so. */
const alike: Readonly<Record<"de" | "fr", readonly string[]>> = {
  de: ["Name", "Organ", "h", "km", "lx", "m³", "°C", "µW/lm"],
  fr: [
    ...["Clause", "Fragile", "Net kg", "Signature", "Signatures", "Version", "Version {version}"],
    ...[
      "abrasion",
      "arsenic",
      "contact",
      "efflorescence",
      "fluorescence",
      "isopropanol",
      "polyester",
      "trace",
    ],
    ...["h", "km", "lx", "m³", "°C", "µW/lm"],
  ],
};

const english = paperWordsIn("en");
const others = paperLanguages.filter((language) => language !== "en");

/** Every word of a catalogue by its path. */
function leavesOf(entry: unknown, path = ""): [path: string, text: string][] {
  if (typeof entry === "string") return [[path, entry]];
  if (typeof entry !== "object" || entry === null) return [];
  return Object.entries(entry).flatMap(([key, inner]) =>
    leavesOf(inner, path === "" ? key : `${path} › ${key}`),
  );
}
const catalogue = ({ write: _write, ...words }: PaperWords) => new Map(leavesOf(words));
const namesIn = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();

describe.each(paperLanguages)("in %s", (language) => {
  const words = paperWordsIn(language);
  test.each(sets)("every code has a word: %s", (_name, codes, pick) => {
    const said = pick(words);
    for (const code of codes) {
      expect(Object.hasOwn(said, code), code).toBe(true);
      for (const [, text] of leavesOf(said[code])) expect(text.trim(), code).not.toBe("");
    }
  });

  test("every kind of paper has a name, and no two have one", () => {
    const names = paperKinds.map((kind) => paperName(kind, words));
    expect(new Set(names).size).toBe(paperKinds.length);
  });
});

describe.each(others)("in %s", (language) => {
  const words = catalogue(paperWordsIn(language));
  const model = catalogue(english);

  test("there is a word wherever English has one, and nothing besides", () => {
    expect([...words.keys()].sort()).toEqual([...model.keys()].sort());
  });

  test("each sentence is filled with the same names as in English", () => {
    const wrong = [...model].flatMap(([path, text]) =>
      namesIn(text).join() === namesIn(words.get(path) ?? "").join() ? [] : [path],
    );
    expect(wrong).toEqual([]);
  });

  test("no word is the English one, but for those that are the same in both", () => {
    const same = [...model].flatMap(([path, text]) =>
      words.get(path) === text && /\p{L}/u.test(text.replace(/\{\w+\}/g, "")) ? [text] : [],
    );
    expect([...new Set(same)].sort()).toEqual([...alike[language]].sort());
  });
});
