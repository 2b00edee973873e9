/**
 * The demo scenario before anything is loaded: that it names only what there is,
 * that no specimen is a copy of another, and that it holds every kind of case
 * that the screens and the rules are there for.
 */
import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { groupOf, groupsFor } from "#lib/condition/terms.ts";
import { preparationCodeOf } from "#lib/environment/specimen-limits.ts";
import { AccountInput, CentreSettings, InstitutionInput, VenueInput } from "#lib/people/schema.ts";
import { borrowerRoles, houseRoles, type Role } from "#lib/people/viewer.ts";
import { followsPattern } from "#lib/specimens/accession-number.ts";
import {
  PreparationStepInput,
  preparations,
  type Shown,
  Shown as ShownSchema,
  SpecimenInput,
  specimenKinds,
} from "#lib/specimens/schema.ts";
import { showsTeeth } from "#lib/specimens/teeth.ts";
import { accounts, demoPassword } from "#seed/scenario/accounts.ts";
import { borrowers } from "#seed/scenario/borrowers.ts";
import { borrowersAbroad } from "#seed/scenario/borrowers-abroad.ts";
import { centre, places } from "#seed/scenario/centre.ts";
import { collection, histories } from "#seed/scenario/collection.ts";
import type { ScenarioDonor } from "#seed/scenario/consent-forms.ts";
import { donors } from "#seed/scenario/donors.ts";
import {
  checksOfSheet,
  rackOfSheet,
  seriesOfSheets,
  sheetName,
  sheetNumbers,
  shownOnSheet,
} from "#seed/scenario/series.ts";
import type { ScenarioInstitution } from "#seed/scenario/venue-words.ts";

const vocabularyFolder = path.resolve(import.meta.dirname, "../../seed/vocabulary");

/** Whether each structure of the vocabulary is paired. */
const isPaired = new Map<string, boolean>(
  fs
    .readdirSync(vocabularyFolder)
    .filter((name) => name.endsWith(".tsv"))
    .flatMap((name) => {
      const [header = "", ...lines] = fs
        .readFileSync(path.join(vocabularyFolder, name), "utf8")
        .trim()
        .split("\n");
      const columns = header.split("\t");
      const [id, paired] = [columns.indexOf("id"), columns.indexOf("paired")];
      // A file of names alone says nothing of sides.
      if (paired < 0) return [];
      return lines.map((line): [string, boolean] => {
        const cells = line.split("\t");
        return [cells[id] ?? "", cells[paired] === "yes"];
      });
    }),
);

function repeated(texts: readonly string[]): string[] {
  return texts.filter((text, index) => texts.indexOf(text) !== index);
}

/** The side that a structure's own name says, as "left lung" does. */
const sideInName = (structureId: string) =>
  structureId.split("-").find((word) => word === "left" || word === "right");

function isOnWrongSide({ structureId, side }: Shown, paired: boolean): boolean {
  if (paired) return side === "median" || side === "not applicable";
  const named = sideInName(structureId);
  return side === "both" || side === "unknown" || (named !== undefined && side !== named);
}

/** Unknown structures, structures on the wrong kind of side, and rows stated twice. */
function faultsOf(shows: readonly Shown[]): string[] {
  return [
    ...shows.flatMap((shown) => {
      const paired = isPaired.get(shown.structureId);
      if (paired === undefined) return [`${shown.structureId} is not in the vocabulary`];
      return isOnWrongSide(shown, paired) ? [`${shown.structureId} cannot be ${shown.side}`] : [];
    }),
    ...repeated(shows.map(({ structureId, side }) => `${structureId} ${side} twice`)),
  ];
}

describe("the specimens", () => {
  test("there are at least 60, of all kinds and preparations", () => {
    expect(collection.length).toBeGreaterThanOrEqual(60);
    expect(new Set(collection.map(({ record }) => record.kind))).toEqual(new Set(specimenKinds));
    expect(new Set(collection.map(({ record }) => record.preparation))).toEqual(new Set(preparations));
  });

  test("six and more are animals, at least one with a paper of the species office and one without any", () => {
    const animals = collection.filter(({ record }) => !record.human);
    expect(animals.length).toBeGreaterThanOrEqual(6);
    const papers = animals.map(({ permits }) => permits.map((permit) => permit.kind));
    expect(papers.some((kinds) => kinds.includes("species protection (CITES)"))).toBe(true);
    expect(papers.some((kinds) => kinds.length === 0)).toBe(true);
  });

  test.each(collection.map((one) => [one.record.accessionNumber, one] as const))(
    "%s is a record of the catalogue that shows structures of the vocabulary",
    (number, { record, cost, shows, steps, place, donors: keys }) => {
      expect(followsPattern(number, centre.accessionPattern)).toBe(true);
      const replacementCost = cost && {
        minor: cost.euros * 100,
        currency: "EUR",
        basis: cost.basis,
        statedOn: "2026-01-01",
        statedBy: "Somebody",
      };
      expect(SpecimenInput.safeParse({ ...record, replacementCost, wholeId: null }).error).toBeUndefined();
      for (const step of steps) expect(PreparationStepInput.safeParse(step).error).toBeUndefined();
      for (const shown of shows) expect(ShownSchema.safeParse(shown).error).toBeUndefined();
      expect(shows.length).toBeGreaterThanOrEqual(5);
      expect(shows.length).toBeLessThanOrEqual(45);
      expect(faultsOf(shows)).toEqual([]);
      expect(places.map(({ code }) => code)).toContain(place);
      for (const key of keys) expect(Object.keys(donors)).toContain(key);
      expect(record.human || keys.length === 0).toBe(true);
      const dates = steps
        .flatMap(({ startedOn, endedOn }) => [startedOn, endedOn])
        .filter((date) => date !== null);
      expect(steps.every(({ startedOn, endedOn }) => !startedOn || !endedOn || startedOn <= endedOn)).toBe(
        true,
      );
      if (record.preparedOn !== null && record.acquiredOn !== null)
        expect(record.preparedOn <= record.acquiredOn).toBe(true);
      if (record.preparedOn !== null) for (const date of dates) expect(date <= record.preparedOn).toBe(true);
      expect(record.size).not.toBeNull();
    },
  );

  test("no two share a number, a title, a note or the same structures", () => {
    for (const textOf of [
      (one: (typeof collection)[number]) => one.record.accessionNumber,
      (one: (typeof collection)[number]) => one.record.title,
      (one: (typeof collection)[number]) => one.record.latinTitle,
      (one: (typeof collection)[number]) => one.record.note,
      (one: (typeof collection)[number]) => JSON.stringify(one.shows),
      (one: (typeof collection)[number]) => JSON.stringify([one.record.size, one.record.massKg]),
    ])
      expect(repeated(collection.map(textOf).filter((text) => text !== ""))).toEqual([]);
  });

  test("what is filled with mercury, latex, gelatine or resin was injected, and only what is a cast was cast", () => {
    const steps = collection.flatMap(({ record, steps: made }) => made.map((one) => ({ record, ...one })));
    for (const { record, step, note } of steps) {
      const isFilling = /mercury|latex|gelatine|resin in the/i.test(note);
      expect([record.accessionNumber, step === "injection"]).toEqual([record.accessionNumber, isFilling]);
      if (step === "casting") expect(["cast", "sheet"]).toContain(record.kind);
    }
  });

  test("unpaired organs off the median plane are not said to be median", () => {
    const shown = [
      ...collection.flatMap(({ shows }) => shows),
      ...Object.values(seriesOfSheets).flatMap((one) =>
        sheetNumbers(one).flatMap((number) => shownOnSheet(one, number)),
      ),
    ];
    const off =
      /lung|main-bronchus|spleen|gallbladder|hepatic-(artery|duct|vein)|coronary-artery|caecum|appendix|colon$|liver$|^stomach|^heart|^pancreas|vena-cava/;
    const found = shown.filter(({ structureId }) => off.test(structureId));
    expect(new Set(found.map(({ structureId }) => structureId)).size).toBeGreaterThan(20);
    expect(found.filter(({ side }) => side === "median").map(({ structureId }) => structureId)).toEqual([]);
    const sideOf = (id: string) =>
      new Set(shown.filter((one) => one.structureId === id).map(({ side }) => side));
    expect(sideOf("spleen")).toEqual(new Set(["left"]));
    expect(sideOf("gallbladder")).toEqual(new Set(["right"]));
    expect(sideOf("left-lung")).toEqual(new Set(["left"]));
    expect(sideOf("liver")).toEqual(new Set(["not applicable"]));
    expect(sideOf("larynx")).toEqual(new Set(["median"]));
  });

  test("the sexes of genital structures agree with the record", () => {
    const of = (pattern: RegExp) =>
      collection
        .filter(
          ({ record, shows }) => record.human && shows.some(({ structureId }) => pattern.test(structureId)),
        )
        .map(({ record }) => record.sex);
    expect(of(/prostat|testi|penis|spermatic|ductus-deferens|seminal/)).not.toContain("female");
    expect(of(/uter|ovar|vagin/)).not.toContain("male");
  });
});

describe("the checks", () => {
  test.each(collection.map((one) => [one.record.accessionNumber, one] as const))(
    "%s has three and more, on days of their own, in words that fit its preparation",
    (number, { record, shows }) => {
      const history = histories[number];
      expect(history).toBeDefined();
      if (!history) return;
      const days = history.checks.map(({ day }) => day);
      expect(days.length).toBeGreaterThanOrEqual(3);
      expect(days).toEqual([...new Set(days)].sort((a, b) => a - b));
      expect(Math.max(...days)).toBeLessThan(0);
      const groups = groupsFor(preparationCodeOf({ ...record, hasTeeth: showsTeeth(shows) }));
      for (const { term } of Object.values(history.marks)) expect(groups).toContain(groupOf(term));
      const read = history.checks.flatMap(({ readings }) => Object.keys(readings));
      expect(new Set(read)).toEqual(new Set(Object.keys(history.marks)));
    },
  );

  test("no grounds and no marks are copied from one specimen to another", () => {
    const all = Object.values(histories);
    expect(repeated(all.flatMap(({ checks }) => checks.map(({ grounds }) => grounds)))).toEqual([]);
    expect(repeated(all.map(({ marks }) => JSON.stringify(marks)))).toEqual([]);
    expect(repeated(all.map(({ checks }) => checks.map(({ day }) => day).join()))).toEqual([]);
  });

  test("every specimen that has checks is in the collection", () => {
    expect(Object.keys(histories).sort()).toEqual(
      collection.map(({ record }) => record.accessionNumber).sort(),
    );
  });
});

describe("the series", () => {
  test("the trunk has more than 100 sheets with some missing, the head about two dozen", () => {
    expect(sheetNumbers(seriesOfSheets["SR 03"]).length).toBeGreaterThan(100);
    expect(seriesOfSheets["SR 03"].missing.length).toBeGreaterThan(1);
    expect(sheetNumbers(seriesOfSheets["SR 07"]).length).toBeGreaterThan(20);
  });

  test("each sheet shows structures of the vocabulary, by its level", () => {
    for (const series of Object.values(seriesOfSheets))
      for (const number of sheetNumbers(series)) {
        const shows = shownOnSheet(series, number);
        expect(faultsOf(shows)).toEqual([]);
        expect(shows.length).toBeGreaterThanOrEqual(4);
        expect(followsPattern(sheetName(series, number), centre.accessionPattern)).toBe(true);
        expect(places.map(({ code }) => code)).toContain(rackOfSheet(series, number));
      }
  });

  test("the heart lies between the fifth and the tenth thoracic vertebra", () => {
    const series = seriesOfSheets["SR 03"];
    const at = (level: string) => series.series.landmarks.find((one) => one.level === level)?.number ?? 0;
    const shows = (number: number) => shownOnSheet(series, number).map(({ structureId }) => structureId);
    expect(shows(at("T4"))).not.toContain("left-ventricle");
    expect(shows(at("T8"))).toContain("left-ventricle");
    expect(shows(at("T11"))).not.toContain("left-ventricle");
  });

  test("spans begin before they end and stay within the series", () => {
    for (const { spans, series } of Object.values(seriesOfSheets))
      for (const { from, to } of spans) {
        expect(from).toBeLessThanOrEqual(to);
        expect(from).toBeGreaterThanOrEqual(series.firstNumber);
        expect(to).toBeLessThan(series.firstNumber + series.sheetCount);
      }
  });

  test("each sheet has two looks, with words of the sheet", () => {
    for (const series of Object.values(seriesOfSheets))
      for (const number of sheetNumbers(series)) {
        const { checks, marks } = checksOfSheet(series, number);
        expect(checks.map(({ day }) => day)).toHaveLength(2);
        for (const check of checks)
          for (const key of Object.keys(check.readings)) expect(Object.keys(marks)).toContain(key);
      }
  });
});

describe("the people", () => {
  const institutions: [string, ScenarioInstitution][] = Object.entries(borrowers);

  test("eleven institutions in eight countries, each with a venue", () => {
    expect(institutions).toHaveLength(11);
    expect(new Set(institutions.map(([, { countryCode }]) => countryCode)).size).toBe(8);
    for (const [, { verified: _verified, venues, ...facts }] of institutions) {
      expect(InstitutionInput.safeParse({ ...facts, id: null, verifiedOn: null }).error).toBeUndefined();
      expect(Object.keys(venues).length).toBeGreaterThanOrEqual(1);
      for (const { reported: _reported, licences, ...venue } of Object.values(venues)) {
        const input = {
          ...venue,
          id: null,
          institutionId: "0198c1f0-0000-7000-8000-000000000000",
          countryCode: facts.countryCode,
          reportedOn: null,
          licences: licences.map(({ from: _from, until: _until, ...licence }) => ({
            ...licence,
            validFrom: null,
            validUntil: null,
          })),
        };
        expect(VenueInput.safeParse(input).error).toBeUndefined();
      }
    }
  });

  test("each role of the house has an account, and each borrower that signs in a lecturer", () => {
    const list = Object.values(accounts);
    const roles: Role[] = list.map(({ role }) => role);
    expect(new Set(roles)).toEqual(new Set([...houseRoles, ...borrowerRoles]));
    for (const [key] of institutions.filter(([one]) => !(one in borrowersAbroad)))
      expect(list.some(({ role, borrower }) => role === "lecturer" && borrower === key)).toBe(true);
    expect(repeated(list.map(({ email }) => email))).toEqual([]);
    for (const { name, email, role, borrower } of list) {
      const institutionId = borrower === null ? null : "0198c1f0-0000-7000-8000-000000000000";
      const input = { id: null, email, name, roles: [role], institutionId, active: true };
      expect(AccountInput.safeParse(input).error).toBeUndefined();
    }
  });

  test("the list of sign-ins is that of the accounts", () => {
    const file = path.resolve(import.meta.dirname, "../../seed/sign-ins.json");
    expect(JSON.parse(fs.readFileSync(file, "utf8"))).toEqual(
      Object.values(accounts).map(({ email, role, name }) => ({ email, password: demoPassword, role, name })),
    );
  });

  test("the settings of the centre are whole", () => {
    expect(CentreSettings.safeParse(centre).error).toBeUndefined();
    expect(followsPattern(centre.accessionExample, centre.accessionPattern)).toBe(true);
  });
});

describe("the donors", () => {
  const list: ScenarioDonor[] = Object.values(donors);
  const consents = list.flatMap(({ consent }) => (consent === null ? [] : [consent]));

  test("consents differ in every way that a rule asks for", () => {
    const some = (is: (consent: (typeof consents)[number]) => boolean) => consents.some(is);
    expect(some(({ answers }) => answers["handling by learners"] === "refused")).toBe(true);
    expect(some(({ answers }) => answers["public display, paid"] === "refused")).toBe(true);
    expect(some(({ answers }) => answers.export === "unknown")).toBe(true);
    expect(some(({ answers }) => answers["lending to others"] === "not asked")).toBe(true);
    expect(some(({ territoriesAllowed }) => territoriesAllowed.length > 0)).toBe(true);
    expect(some(({ territoriesRefused }) => territoriesRefused.length > 0)).toBe(true);
    expect(some(({ validUntil }) => validUntil !== null && validUntil > 0 && validUntil < 200)).toBe(true);
    expect(some(({ withdrawn }) => withdrawn !== null)).toBe(true);
    expect(some(({ dispositionDue }) => dispositionDue !== null)).toBe(true);
    expect(some(({ basis }) => basis === "order of an authority")).toBe(true);
    expect(list.some(({ consent }) => consent === null)).toBe(true);
  });

  test("sealed records and consents agree with the time of death", () => {
    for (const { died, consent, sealed, ageBand } of list) {
      if (consent?.signedOn && died !== "") expect(consent.signedOn.slice(0, 7) <= died).toBe(true);
      if (sealed === null) continue;
      expect(sealed.diedOn.slice(0, 7)).toBe(died);
      const years = (Date.parse(sealed.diedOn) - Date.parse(sealed.bornOn)) / 31_557_600_000;
      expect(`${Math.floor(years / 10) * 10}–${Math.floor(years / 10) * 10 + 9}`).toBe(ageBand);
    }
    expect(repeated(list.flatMap(({ sealed }) => sealed?.fullName ?? []))).toEqual([]);
  });

  test("what a donor was agrees with every specimen, and nothing was begun before the death", () => {
    for (const { record, donors: keys, steps } of collection) {
      const [only, another] = keys.map((key) => donors[key]);
      if (!only || another) continue;
      expect([record.accessionNumber, record.sex, record.ageBand]).toEqual([
        record.accessionNumber,
        only.sex,
        only.ageBand,
      ]);
      const begun = steps.flatMap(({ startedOn, endedOn }) => startedOn ?? endedOn ?? []).sort()[0];
      if (begun !== undefined) expect(begun >= only.died).toBe(true);
    }
    for (const { donor, sex, ageBand } of Object.values(seriesOfSheets))
      expect([sex, ageBand]).toEqual([donors[donor]?.sex, donors[donor]?.ageBand]);
  });

  test("no donor gave one structure twice", () => {
    const given = collection.flatMap(({ donors: keys, shows, record }) =>
      keys.length === 1 && record.kind !== "histological slide"
        ? shows
            .filter(({ state }) => state === "shown")
            .map(({ structureId, side }) => `${keys[0]} ${structureId} ${side}`)
        : [],
    );
    const whole = /heart|brain|liver|kidney|femur|humerus|stomach/;
    expect(repeated(given).filter((text) => whole.test(text))).toEqual([]);
  });

  test("two specimens are composites of two donors, and every donor is behind something", () => {
    expect(collection.filter(({ donors: keys }) => keys.length === 2)).toHaveLength(2);
    const used = new Set([
      ...collection.flatMap(({ donors: keys }) => keys),
      ...Object.values(seriesOfSheets).map(({ donor }) => donor),
    ]);
    expect(Object.keys(donors).filter((key) => !used.has(key))).toEqual([]);
  });
});
