/** The audit as it is read, on a database: by record, by person, by page, and never more than the record shows. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import {
  happenedTo,
  happenedToInstitution,
  happenedToSpecimen,
  listAuditEntries,
} from "#lib/desk/queries/happened.ts";
import { keepAccount, keepInstitution } from "#lib/people/commands.ts";
import type { InstitutionInput } from "#lib/people/schema.ts";
import { programViewer, type Role, type Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import {
  keepSealedRecord,
  linkDonor,
  openSealedRecord,
  recordConsent,
  recordPermit,
  registerDonor,
} from "#lib/provenance/commands.ts";
import { aBorrower, aSpecimen, aVenue, aViewer, inWork } from "#tests/support/builders.ts";
import { aConsentForm } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";

const officer = aViewer("donor officer");
const administrator = aViewer("administrator");
const inspector = aViewer("inspector");
const curator = aViewer("curator");
let registrar: Viewer;

const anInstitution: InstitutionInput = {
  id: null,
  name: "Reading Room of the Coast",
  kind: "museum",
  countryCode: "NO",
  city: "Northmere",
  address: "3 Quiet Street",
  languages: ["en"],
  email: "coast@example.org",
  phone: "+47 000 000",
  standing: "good",
  verifiedOn: null,
  note: "",
};

const aDoor = {
  kind: "door",
  name: "Dock",
  widthMm: 900,
  heightMm: 2000,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
} as const;

beforeAll(async () => {
  await testDatabase();
  const accountId = await keepAccount(programViewer, {
    account: {
      id: null,
      email: "rowan.tidemark@example.org",
      name: "Rowan Tidemark",
      roles: ["registrar"],
      institutionId: null,
      active: true,
    },
    password: "long enough for a test",
  });
  registrar = { ...aViewer("registrar"), accountId };
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

describe("one record", () => {
  test("tells who changed what, by name, the newest first, with only what changed", async () => {
    const id = await keepInstitution(registrar, anInstitution);
    await keepInstitution(registrar, { ...anInstitution, id, standing: "on hold" });
    const entries = await happenedTo(registrar, [{ table: "institution", key: id }]);
    expect(entries.map(({ by, act, operation }) => [by, act, operation])).toEqual([
      ["Rowan Tidemark", "keepInstitution", "update"],
      ["Rowan Tidemark", "keepInstitution", "insert"],
    ]);
    expect(entries[0]?.changes).toEqual([
      { field: "standing", before: "good", after: "on hold", withheld: false },
    ]);
    expect(entries[0]).toMatchObject({ label: anInstitution.name, recordName: anInstitution.name });
  });

  test("takes in what lies below its key when asked to", async () => {
    const code = await registerDonor(officer, {});
    const specimen = await aSpecimen();
    await linkDonor(officer, { specimenId: specimen.id, donorCodes: [code] });
    const row = { table: "specimen_donor", key: specimen.id } as const;
    expect(await happenedTo(curator, [row])).toEqual([]);
    const [entry] = await happenedTo(curator, [{ ...row, andBelow: true }]);
    expect(entry).toMatchObject({ act: "linkDonor", recordName: specimen.accessionNumber });
    expect(entry?.changes).toContainEqual(
      expect.objectContaining({ field: "specimen_id", after: specimen.accessionNumber }),
    );
    expect(await happenedTo(registrar, [{ ...row, andBelow: true }])).toEqual([]);
  });

  test("of an institution takes in its venues and their ways in", async () => {
    const institutionId = await keepInstitution(registrar, { ...anInstitution, name: "House by the Ferry" });
    await aVenue({ institutionId, passages: [aDoor] });
    const tables = (await happenedToInstitution(registrar, institutionId)).map(({ tableName }) => tableName);
    expect(tables).toEqual(["passage", "venue", "institution"]);
    expect(
      (await happenedToInstitution(administrator, institutionId)).map(({ tableName }) => tableName),
    ).toEqual(["institution"]);
  });

  test("is not looked for under what is no id", async () => {
    for (const id of ["nothing", "' OR 1=1 --", ""]) {
      await expect(happenedToSpecimen(curator, id)).rejects.toMatchObject({ kind: "not-found" });
      await expect(happenedToInstitution(curator, id)).rejects.toMatchObject({ kind: "not-found" });
    }
  });

  test("is not told to borrowers", async () => {
    const lecturer = aViewer("lecturer", await aBorrower());
    await expect(happenedTo(lecturer, [{ table: "institution", key: "x" }])).rejects.toMatchObject({
      kind: "forbidden",
    });
    await expect(listAuditEntries(lecturer)).rejects.toMatchObject({ kind: "forbidden" });
  });
});

describe("the sealed record", () => {
  test("leaves no value behind, and its looks are read by who may see looks", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, {
      donorCode: code,
      fullName: "Invented Person",
      bornOn: null,
      diedOn: null,
      kin: "",
      documentPlace: "Cabinet 2",
    });
    await openSealedRecord(curator, { donorCode: code, reason: "A relative wrote to the centre." });
    const { rows } = await listAuditEntries(inspector, { rowKey: code });
    expect(rows.map(({ tableName }) => tableName).sort()).toEqual(["donor", "donor_identity", "donor_look"]);
    const sealed = rows.filter(({ tableName }) => tableName !== "donor");
    expect(sealed.flatMap(({ changes }) => changes)).toEqual([]);
    expect(JSON.stringify(rows)).not.toContain("Invented Person");
    expect((await listAuditEntries(curator, { rowKey: code })).rows.map((row) => row.tableName)).toEqual([
      "donor",
    ]);
  });

  test("nor anything else of a donor is in an administrator's or a registrar's audit", async () => {
    const code = await registerDonor(officer, {});
    await recordConsent(officer, aConsentForm(code));
    for (const viewer of [administrator, registrar]) {
      expect((await listAuditEntries(viewer, { rowKey: code })).rows).toEqual([]);
      expect((await listAuditEntries(viewer, { tableName: "consent" })).rows).toEqual([]);
      const { rows } = await listAuditEntries(viewer, {}, { limit: 200 });
      expect(rows.length).toBeGreaterThan(0);
      expect(JSON.stringify(rows)).not.toContain(code);
    }
    expect((await listAuditEntries(officer, { tableName: "consent" })).rows.length).toBeGreaterThan(0);
  });
});

describe("accounts", () => {
  const person = {
    email: "wren.saltmarsh@example.org",
    name: "Wren Saltmarsh",
    institutionId: null,
    active: true,
  };
  const keep = (id: string | null, roles: Role[]) =>
    keepAccount(administrator, {
      account: { ...person, id, roles },
      password: id === null ? "long enough for a test" : null,
    });

  test("tell an inspector who was given which role, when and by whom, and no address", async () => {
    const id = await keep(null, ["conservator"]);
    setClock(() => new Date("2027-02-01T09:00:00Z"));
    await keep(id, ["conservator", "curator"]);
    const { rows, tables } = await listAuditEntries(inspector, { tableName: "account", rowKey: id });
    expect(tables).toContain("account");
    expect(rows.map(({ label, by, operation }) => [label, by, operation])).toEqual([
      [person.name, administrator.accountId, "update"],
      [person.name, administrator.accountId, "insert"],
    ]);
    expect(rows[0]?.changes).toEqual([
      { field: "roles", before: ["conservator"], after: ["conservator", "curator"], withheld: false },
    ]);
    expect(rows[0]?.at.getTime()).toBeGreaterThanOrEqual(rows[1]?.at.getTime() ?? Number.NaN);
    expect(JSON.stringify(rows)).not.toContain(person.email);
    expect(rows[1]?.changes).toContainEqual({ field: "email", before: null, after: null, withheld: true });
    expect(rows.map(({ recordName, recordOpens }) => [recordName, recordOpens])).toEqual([
      [person.name, false],
      [person.name, false],
    ]);
    const own = await listAuditEntries(administrator, { tableName: "account", rowKey: id });
    expect(own.rows[0]).toMatchObject({ record: { kind: "account", key: id }, recordOpens: true });
    expect(JSON.stringify(own.rows)).toContain(person.email);
  });

  test("are nobody else's to read about", async () => {
    const row = { table: "account", key: registrar.accountId } as const;
    expect(await happenedTo(inspector, [row])).toHaveLength(1);
    for (const viewer of [registrar, curator, officer]) {
      const { rows, tables } = await listAuditEntries(viewer, { tableName: "account" });
      expect(rows).toEqual([]);
      expect(tables).not.toContain("account");
      expect(await happenedTo(viewer, [row])).toEqual([]);
    }
  });
});

describe("the whole audit", () => {
  test("is paged by key without a gap or a repetition", async () => {
    const specimen = await aSpecimen();
    for (let number = 1; number <= 7; number += 1)
      await recordPermit(registrar, {
        specimenId: specimen.id,
        kind: "veterinary",
        number: `V ${number}`,
        authority: "Authority",
        territories: [],
        validFrom: null,
        validUntil: null,
      });
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const page = await listAuditEntries(
        registrar,
        { tableName: "permit", actor: "tidemark" },
        { after, limit: 3 },
      );
      seen.push(...page.rows.map(({ label }) => label ?? ""));
      after = page.next;
    } while (after);
    expect(seen).toEqual(["V 7", "V 6", "V 5", "V 4", "V 3", "V 2", "V 1"]);
  });

  test("does not part what one act wrote", async () => {
    const institutionId = await aBorrower();
    for (const name of ["Room A", "Room B"])
      await aVenue({ institutionId, name, passages: [aDoor, { ...aDoor, name: "Hall" }] });
    const page = await listAuditEntries(curator, {}, { limit: 4 });
    expect(page.rows.map(({ tableName }) => tableName)).toEqual(["passage", "passage", "venue"]);
    const { rows } = await listAuditEntries(curator, {}, { after: page.next, limit: 3 });
    expect(rows.map(({ tableName }) => tableName)).toEqual(["passage", "passage", "venue"]);
    expect(new Set(rows.map(({ transaction }) => transaction)).size).toBe(1);
  });

  test("finds a record by what people call it", async () => {
    const specimen = await aSpecimen({ accessionNumber: "AN 2031.0007" });
    await recordPermit(registrar, {
      specimenId: specimen.id,
      kind: "veterinary",
      number: "V 1",
      authority: "Authority",
      territories: [],
      validFrom: null,
      validUntil: null,
    });
    const { rows } = await listAuditEntries(curator, { rowKey: "an 2031.0007" });
    expect(rows.map(({ tableName }) => tableName)).toEqual(["permit", "specimen"]);
    expect((await listAuditEntries(curator, { rowKey: specimen.id })).rows).toEqual(rows);
    expect(await happenedToSpecimen(curator, specimen.id)).toEqual(rows);
  });

  test("finds entries of the program itself, and of nobody for a name that nobody has", async () => {
    await inWork(({ transaction }) =>
      transaction.setting.create({ data: { key: "test", value: { on: true } } }),
    );
    const { rows } = await listAuditEntries(curator, { actor: "program", tableName: "setting" });
    expect(rows[0]).toMatchObject({ by: "Program", label: null });
    expect((await listAuditEntries(curator, { actor: "nobody has this name" })).rows).toEqual([]);
  });

  test("answers a wrong page key with a refusal", async () => {
    await expect(listAuditEntries(curator, {}, { after: "x" })).rejects.toMatchObject({ kind: "invalid" });
  });
});
