/** Donors, consents, papers and the sealed record, on a database and as the application's own role. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database, databasePool } from "#lib/platform/database.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import {
  keepSealedRecord,
  linkDonor,
  openSealedRecord,
  recordConsent,
  recordPermit,
  recordTitle,
  registerDonor,
  withdrawConsent,
} from "#lib/provenance/commands.ts";
import { DonorCode } from "#lib/provenance/schema.ts";
import { aSpecimen, aViewer } from "#tests/support/builders.ts";
import { aConsentForm, allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";

const officer = aViewer("donor officer");
const curator = aViewer("curator");
const registrar = aViewer("registrar");

beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

const refusalOf = async (attempt: Promise<unknown>) => {
  const error = await attempt.then(
    () => {
      throw new Error("It was not refused.");
    },
    (thrown: Refusal) => thrown,
  );
  return { kind: error.kind, reason: error.reason, parameters: error.parameters, issues: error.issues };
};
const consentsOf = (donorCode: string) =>
  database().consent.findMany({ where: { donorCode }, orderBy: [{ recordedAt: "asc" }, { id: "asc" }] });

describe("a donor", () => {
  test("gets a code that nobody else has", async () => {
    const codes = await Promise.all(Array.from({ length: 30 }, () => registerDonor(officer, {})));
    expect(new Set(codes).size).toBe(30);
    for (const code of codes) expect(DonorCode.safeParse(code).success).toBe(true);
  });

  test("is registered by the donor officer only", async () => {
    expect(await refusalOf(registerDonor(registrar, {}))).toMatchObject({ kind: "forbidden" });
  });
});

describe("a consent", () => {
  test("is superseded by a later form, and nothing of it is overwritten", async () => {
    const code = await registerDonor(officer, {});
    const earlier = await recordConsent(
      officer,
      aConsentForm(code, { signedOn: "2015-01-01", answers: allScopes("unknown") }),
    );
    const before = await database().consent.findUniqueOrThrow({
      where: { id: earlier },
      include: { answers: true },
    });
    const later = await recordConsent(officer, aConsentForm(code, { signedOn: "2020-01-01" }));
    const after = await database().consent.findUniqueOrThrow({
      where: { id: earlier },
      include: { answers: true },
    });
    expect(after).toEqual({ ...before, supersededById: later });
    expect(
      (await consentsOf(code)).filter((row) => row.supersededById === null).map((row) => row.id),
    ).toEqual([later]);
  });

  test("that turns out to be older than the current one joins the history", async () => {
    const code = await registerDonor(officer, {});
    const current = await recordConsent(officer, aConsentForm(code, { signedOn: "2020-01-01" }));
    const found = await recordConsent(officer, aConsentForm(code, { signedOn: "1999-01-01" }));
    expect((await consentsOf(code)).map((row) => [row.id, row.supersededById])).toEqual(
      expect.arrayContaining([
        [current, null],
        [found, current],
      ]),
    );
  });

  test("stays one current consent when two officers record at once", async () => {
    const code = await registerDonor(officer, {});
    await Promise.all(
      Array.from({ length: 8 }, (_, at) =>
        recordConsent(officer, aConsentForm(code, { signedOn: `2020-01-0${at + 1}` })),
      ),
    );
    expect((await consentsOf(code)).filter((row) => row.supersededById === null)).toHaveLength(1);
  });

  test("is withdrawn with both days, once", async () => {
    const code = await registerDonor(officer, {});
    const id = await recordConsent(officer, aConsentForm(code));
    const withdrawal = { donorCode: code, receivedOn: "2027-01-10", effectiveOn: "2027-02-01" };
    await withdrawConsent(officer, withdrawal);
    expect(await database().consent.findUniqueOrThrow({ where: { id } })).toMatchObject({
      withdrawalReceivedOn: new Date("2027-01-10"),
      withdrawalEffectiveOn: new Date("2027-02-01"),
    });
    expect(await refusalOf(withdrawConsent(officer, withdrawal))).toMatchObject({
      reason: "consent.already-withdrawn",
      parameters: { withdrawnOn: "2027-02-01" },
    });
  });

  test("cannot be withdrawn where there is none, or on a day to come", async () => {
    const code = await registerDonor(officer, {});
    const withdrawal = { donorCode: code, receivedOn: "2027-01-10", effectiveOn: "2027-01-10" };
    expect(await refusalOf(withdrawConsent(officer, withdrawal))).toMatchObject({
      reason: "consent.none-to-withdraw",
    });
    await recordConsent(officer, aConsentForm(code));
    expect(
      await refusalOf(
        withdrawConsent(officer, { ...withdrawal, receivedOn: "2027-01-16", effectiveOn: "2027-01-16" }),
      ),
    ).toMatchObject({ issues: [{ path: "receivedOn", message: "consent.date-to-come" }] });
  });

  test("once withdrawn comes back only by a form that was signed afterwards", async () => {
    const code = await registerDonor(officer, {});
    await recordConsent(officer, aConsentForm(code, { signedOn: "2019-05-02" }));
    await withdrawConsent(officer, { donorCode: code, receivedOn: "2027-01-10", effectiveOn: "2027-01-10" });
    for (const signedOn of ["2026-12-31", null])
      expect(await refusalOf(recordConsent(officer, aConsentForm(code, { signedOn })))).toMatchObject({
        reason: "consent.withdrawn-since",
        parameters: { withdrawnOn: "2027-01-10" },
      });
    await recordConsent(officer, aConsentForm(code, { signedOn: "2027-01-12" }));
    expect((await consentsOf(code)).at(-1)).toMatchObject({
      supersededById: null,
      withdrawalReceivedOn: null,
    });
  });

  test("is not signed on a day to come, nor recorded for a donor who is not there", async () => {
    const code = await registerDonor(officer, {});
    expect(
      await refusalOf(recordConsent(officer, aConsentForm(code, { signedOn: "2027-01-16" }))),
    ).toMatchObject({
      issues: [{ path: "signedOn", message: "consent.date-to-come" }],
    });
    expect(await refusalOf(recordConsent(officer, aConsentForm("D-22222")))).toMatchObject({
      kind: "not-found",
    });
    expect(await consentsOf(code)).toEqual([]);
  });
});

describe("the donors of a specimen", () => {
  test("are those that were last stated, all of them", async () => {
    const specimen = await aSpecimen();
    const [first, second, third] = (await Promise.all([1, 2, 3].map(() => registerDonor(officer, {})))) as [
      string,
      string,
      string,
    ];
    await linkDonor(curator, { specimenId: specimen.id, donorCodes: [first, second, first] });
    await linkDonor(curator, { specimenId: specimen.id, donorCodes: [second, third] });
    const linked = await database().specimenDonor.findMany({ where: { specimenId: specimen.id } });
    expect(linked.map((row) => row.donorCode).sort()).toEqual([second, third].sort());
  });

  test("cannot be unknown to the register", async () => {
    const specimen = await aSpecimen();
    const code = await registerDonor(officer, {});
    expect(
      await refusalOf(linkDonor(curator, { specimenId: specimen.id, donorCodes: [code, "D-22222"] })),
    ).toMatchObject({ kind: "not-found" });
    expect(await database().specimenDonor.count({ where: { specimenId: specimen.id } })).toBe(0);
  });

  test("are none for an animal", async () => {
    const animal = await aSpecimen({ human: false, scientificName: "Equus caballus" });
    const code = await registerDonor(officer, {});
    expect(await refusalOf(linkDonor(curator, { specimenId: animal.id, donorCodes: [code] }))).toMatchObject({
      reason: "donor.not-of-an-animal",
    });
  });
});

describe("papers and title", () => {
  test("a permit of the same kind and number is corrected, another is added", async () => {
    const { id: specimenId } = await aSpecimen();
    const permit = {
      specimenId,
      kind: "import",
      number: "77/26",
      authority: "Veterinary office",
      territories: ["NO"],
      validFrom: "2026-01-01",
      validUntil: "2026-12-31",
    } as const;
    const id = await recordPermit(registrar, { ...permit, territories: ["NO"] });
    expect(await recordPermit(registrar, { ...permit, territories: [], validUntil: "2027-12-31" })).toBe(id);
    expect(await recordPermit(registrar, { ...permit, territories: [], number: "78/26" })).not.toBe(id);
    const rows = await database().permit.findMany({ where: { specimenId }, orderBy: { number: "asc" } });
    expect(rows.map((row) => [row.number, row.validUntil?.toISOString().slice(0, 10)])).toEqual([
      ["77/26", "2027-12-31"],
      ["78/26", "2026-12-31"],
    ]);
  });

  test("the title says whose it is, and the last statement holds", async () => {
    const { id: specimenId } = await aSpecimen();
    const title = {
      specimenId,
      ownerName: "",
      leaveToLend: false,
      leaveReference: "",
      recordedOn: "2026-02-01",
    };
    await recordTitle(registrar, { ...title, status: "unknown" });
    await recordTitle(registrar, { ...title, status: "deposit", ownerName: "A museum" });
    expect(await database().title.findUnique({ where: { specimenId } })).toMatchObject({
      status: "deposit",
      ownerName: "A museum",
    });
  });

  test("belong to a specimen that is there", async () => {
    const specimenId = "01920000-0000-7000-8000-0000000000ff";
    expect(
      await refusalOf(
        recordTitle(registrar, {
          specimenId,
          status: "owned",
          ownerName: "",
          leaveToLend: false,
          leaveReference: "",
          recordedOn: "2026-02-01",
        }),
      ),
    ).toMatchObject({ kind: "not-found" });
  });
});

describe("the sealed record", () => {
  const person = {
    fullName: "Ada Invented",
    bornOn: "1931-04-05",
    diedOn: "2019-06-07",
    kin: "A niece, known to the office",
    documentPlace: "Safe, drawer 2",
  };
  const reason = "A relative asks about the memorial service.";

  test("gives back who the donor was, and keeps the look", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    expect(await openSealedRecord(curator, { donorCode: code, reason })).toEqual({
      donorCode: code,
      ...person,
    });
    const looks = await database().donorLook.findMany({ where: { donorCode: code } });
    expect(looks).toMatchObject([{ accountId: curator.accountId, reason }]);
    const [entry] = await database().auditEntry.findMany({
      where: { tableName: "donor_look", rowKey: code },
    });
    expect(entry).toMatchObject({
      actor: curator.accountId,
      act: "openSealedRecord",
      before: null,
      after: null,
    });
  });

  test("can be corrected, days left open included", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    await keepSealedRecord(officer, { donorCode: code, ...person, bornOn: null, kin: "" });
    expect(await openSealedRecord(officer, { donorCode: code, reason })).toMatchObject({
      bornOn: null,
      kin: "",
    });
  });

  test("is read by nobody directly, not even with a statement of one's own", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    for (const statement of [
      "SELECT * FROM sealed.donor_identity",
      "SELECT count(*) FROM sealed.donor_identity",
      "UPDATE sealed.donor_identity SET kin = ''",
      "DELETE FROM sealed.donor_identity",
      "INSERT INTO sealed.donor_look (donor_code, account_id, reason) VALUES ('x', 'y', 'z')",
      "DELETE FROM sealed.donor_look",
    ])
      await expect(databasePool().query(statement)).rejects.toThrow(/permission denied/);
  });

  test("does not open without a reason, for a donor who is not there, or where nothing was kept", async () => {
    const code = await registerDonor(officer, {});
    expect(await refusalOf(openSealedRecord(officer, { donorCode: code, reason: "because" }))).toMatchObject({
      issues: [{ path: "reason", message: "donor.reason-missing" }],
    });
    expect(await refusalOf(openSealedRecord(officer, { donorCode: "D-22222", reason }))).toMatchObject({
      kind: "not-found",
    });
    expect(await refusalOf(openSealedRecord(officer, { donorCode: code, reason }))).toMatchObject({
      kind: "not-found",
    });
    expect(await database().donorLook.count({ where: { donorCode: code } })).toBe(0);
  });

  test("does not open for a registrar, a lecturer or the administrator", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    for (const role of ["registrar", "lecturer", "administrator"] as const)
      expect(await refusalOf(openSealedRecord(aViewer(role), { donorCode: code, reason }))).toMatchObject({
        kind: "forbidden",
      });
    expect(await database().donorLook.count({ where: { donorCode: code } })).toBe(0);
  });

  test("each opening leaves its own look, and no receipt answers in its place", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    const again = openSealedRecord as (...all: unknown[]) => Promise<unknown>;
    for (let opening = 0; opening < 2; opening += 1)
      await again(officer, { donorCode: code, reason }, { idempotencyKey: "same" });
    expect(await database().donorLook.count({ where: { donorCode: code } })).toBe(2);
    expect(await database().commandReceipt.count({ where: { act: "openSealedRecord" } })).toBe(0);
  });

  test("leaves no word of who the donor was in the audit or anywhere else in the open", async () => {
    const code = await registerDonor(officer, {});
    await keepSealedRecord(officer, { donorCode: code, ...person });
    await openSealedRecord(officer, { donorCode: code, reason });
    const tables = await database().$queryRaw<{ name: string }[]>`
      SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public' AND table_type = 'BASE TABLE'`;
    expect(tables.length).toBeGreaterThan(30);
    for (const { name } of tables) {
      const { rows } = await databasePool().query(
        `SELECT count(*)::int AS hits FROM "${name}" AS t WHERE t::text ~ 'Ada Invented|1931-04-05|2019-06-07|niece|drawer 2'`,
      );
      expect([name, rows[0].hits]).toEqual([name, 0]);
    }
  });
});
