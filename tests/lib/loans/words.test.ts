/** Every code that lending gives out has its sentence, and every sentence finds its parameters. */
import fs from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { english } from "#app/_words/en.ts";
import { hasSentence } from "#app/_words/sentences.ts";
import { severities } from "#lib/condition/schema.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import { gapReasons } from "#lib/suitability/cover-gaps.ts";
import { ruleEntry } from "#lib/suitability/rules/book.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import {
  audiences,
  displayStyles,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";
import { anyConsent } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const root = path.resolve(import.meta.dirname, "../../..");
const sources = ["lib/loans", "lib/suitability", "lib/agreements", "lib/shipments", "lib/condition"]
  .flatMap((folder) =>
    fs
      .readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
      .map((entry) => fs.readFileSync(path.join(entry.parentPath, entry.name), "utf8")),
  )
  .join("\n");

/** Codes as they stand in the source between quotes. */
const codesOf = (groups: string) => [
  ...new Set(
    [...sources.matchAll(new RegExp(`"((?:${groups})\\.[a-z-]+)"`, "g"))].map((match) => match[1] ?? ""),
  ),
];

/** The condition room's names of its own rules are no facts. */
const rulesOfCondition = ["condition.activity", "condition.recency", "condition.verdict"];

test.each([
  ["gates", "gate"],
  ["next steps", "next"],
  ["ways out", "way"],
  ["what is kept back", "reason"],
  ["facts", "consent|title|permits|law|free|condition|use|climate|light|way-in|cover"],
  ["refusals", "loan|decision|agreement|check-in|check|crate|stage|carrier"],
])("%s have their sentences", (_what, groups) => {
  const codes = codesOf(groups).filter((code) => !rulesOfCondition.includes(code));
  expect(codes.length).toBeGreaterThan(2);
  expect(codes.filter((code) => !hasSentence(code))).toEqual([]);
});

test("every reason of a gap in cover has its sentence", () => {
  for (const reason of gapReasons) expect(hasSentence(`gate.cover-${reason}`), reason).toBe(true);
});

const anyVenue = fc
  .record({
    countryCode: fc.constantFrom("NO", "FR", "DE", "GB", "IE", "US"),
    floorLoadKgPerM2: fc.constantFrom(null, 30, 5_000),
    temperatureHighC: fc.constantFrom(null, 21, 27, 33),
    humidityLow: fc.constantFrom(null, 0.45, 0.33, 0.2),
    illuminanceLx: fc.constantFrom(null, 40, 400),
    uvMicrowattPerLumen: fc.constantFrom(null, 5, 40, 100),
    supervisedRoom: fc.option(fc.boolean()),
    restrictedView: fc.option(fc.boolean()),
    spillProvision: fc.option(fc.boolean()),
    reportedOn: fc.constantFrom(null, "2020-01-01", "2026-10-01"),
    passages: fc.constantFrom([], aVenueFact().passages),
  })
  .map((said) => aVenueFact(said));

const anyRequest: fc.Arbitrary<RequestFacts> = fc
  .record({
    purpose: fc.constantFrom(...purposes),
    teachingUse: fc.constantFrom(...teachingUses),
    audience: fc.constantFrom(...audiences),
    paidAdmission: fc.boolean(),
    displayStyle: fc.constantFrom(...displayStyles),
    pictures: fc.uniqueArray(fc.constantFrom(...plannedPictures)),
    activities: fc.uniqueArray(fc.constantFrom(...plannedActivities)),
    through: fc.uniqueArray(fc.constantFrom("DE", "PL", "CZ")),
    conservator: fc.constantFrom(null, { decidedOn: "2026-11-20", conditions: "" }),
    venue: anyVenue,
    statedCover: fc.constantFrom(null, { minor: 100, currency: "EUR" }, { minor: 100, currency: "NOK" }),
  })
  .map((said) => aRequestFact(said));

const anyPermission: fc.Arbitrary<PermitInput> = fc.record({
  kind: fc.constantFrom(...plannedActivities),
  number: fc.constant("W 4"),
  authority: fc.constant("The centre"),
  territories: fc.constantFrom([], ["NO"], ["SE"]),
  validFrom: fc.constantFrom(null, "2026-01-01"),
  validUntil: fc.constantFrom(null, "2027-01-01", "2027-12-31"),
});

const anyCheck: fc.Arbitrary<SpecimenCase["latestCheck"]> = fc
  .constantFrom(...severities)
  .map((severity) => ({
    findings: [
      {
        markId: "01920000-0000-4000-8000-000000000201",
        term: "structure.crack" as const,
        place: "upper third",
        severity,
        activity: "stable" as const,
        note: "",
      },
    ],
    verdict: { fitToShow: true, fitToHandle: true, fitToTravel: true },
    checkedOn: "2026-10-01",
  }));

test("whatever is found can be said, with nothing left open but what is not known", () => {
  fc.assert(
    fc.property(
      anyRequest,
      fc.array(anyConsent, { maxLength: 2 }),
      fc.boolean(),
      fc.array(anyPermission, { maxLength: 2 }),
      anyCheck,
      (request, consents, human, permits, latestCheck) => {
        const subject = aSpecimenCase({
          specimen: human
            ? {}
            : {
                human,
                scientificName: "Equus caballus",
                preparation: "fluid-preserved",
                fluidName: "ethanol",
              },
          provenance: { ...aSpecimenCase().provenance, consents: human ? consents : [], permits },
          latestCheck,
        });
        for (const { rule, outcome, fact, wayOut, parameters } of judgeSuitability(request, [subject])) {
          expect(ruleEntry(rule).outcomes, `${rule} ${fact}`).toContain(outcome);
          expect(hasSentence(fact), fact).toBe(true);
          if (wayOut !== "") expect(hasSentence(wayOut), wayOut).toBe(true);
          for (const [, name] of (english[fact] ?? "").matchAll(/\{(\w+)\}/g))
            expect(Object.keys(parameters), `${fact} {${name}}`).toContain(name);
        }
      },
    ),
    { numRuns: 200 },
  );
});

test("no sentence calls something lawful, and the words are the trade's", () => {
  for (const [code, sentence] of Object.entries(english).filter(([key]) =>
    /^(consent|title|permits|way|gate|next|loan)\./.test(key),
  )) {
    expect(sentence, code).not.toMatch(/\b(lawful|legal|allowed by law|piece|object|leg)\b/i);
  }
});
