/** What is read of provenance, and by whom. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import {
  keepSealedRecord,
  linkDonor,
  openSealedRecord,
  recordConsent,
  recordPermit,
  recordTitle,
  registerDonor,
  withdrawConsent,
  withdrawPermit,
} from "#lib/provenance/commands.ts";
import {
  getDonor,
  getProvenance,
  listConsentsToReview,
  listDonors,
  provenanceFactsOf,
} from "#lib/provenance/queries.ts";
import type { ConsentInput } from "#lib/provenance/schema.ts";
import { aSpecimen, aViewer, type Made } from "#tests/support/builders.ts";
import { aConsentForm, allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";

const officer = aViewer("donor officer");
const curator = aViewer("curator");
const registrar = aViewer("registrar");
const inspector = aViewer("inspector");
const lecturer = aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa");
const administrator = aViewer("administrator");

beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

async function aDonor(said: Partial<ConsentInput> | null = {}): Promise<string> {
  const code = await registerDonor(officer, {});
  if (said) await recordConsent(officer, aConsentForm(code, said));
  return code;
}
const link = (specimen: Made, ...donorCodes: string[]) =>
  linkDonor(curator, { specimenId: specimen.id, donorCodes });
const factsOf = async (specimen: Made) => {
  const facts = (await provenanceFactsOf(database(), [specimen.id])).get(specimen.id);
  if (!facts) throw new Error("No facts.");
  return facts;
};
const permit = {
  kind: "import",
  authority: "Veterinary office",
  territories: [] as string[],
  validFrom: null,
} as const;

describe("the facts for rules", () => {
  test("are there for every specimen asked about, known or not", async () => {
    const [bare, known] = [await aSpecimen(), await aSpecimen()];
    const code = await aDonor({
      answers: allScopes("granted", { export: "refused" }),
      validUntil: "2040-01-01",
    });
    await link(known, code);
    await recordTitle(registrar, {
      specimenId: known.id,
      status: "owned",
      ownerName: "",
      leaveToLend: false,
      leaveReference: "",
      recordedOn: "2026-02-01",
    });
    await recordPermit(registrar, {
      ...permit,
      territories: ["NO"],
      specimenId: known.id,
      number: "1",
      validUntil: null,
    });
    const facts = await provenanceFactsOf(database(), [bare.id, known.id, known.id]);
    expect(facts.get(bare.id)).toEqual({ consents: [], donorsWithoutConsent: 0, permits: [], title: null });
    expect(facts.get(known.id)).toMatchObject({
      consents: [{ donorCode: code, validUntil: "2040-01-01", withdrawalReceivedOn: null }],
      donorsWithoutConsent: 0,
      permits: [{ number: "1", territories: ["NO"] }],
      title: { status: "owned", recordedOn: "2026-02-01" },
    });
    expect(facts.get(known.id)?.consents[0]?.answers.export).toBe("refused");
  });

  test("hold the current form only, and count donors without one", async () => {
    const specimen = await aSpecimen();
    const [twice, without] = [await aDonor({ signedOn: "2010-01-01", basis: "will" }), await aDonor(null)];
    await recordConsent(officer, aConsentForm(twice, { signedOn: "2020-01-01", basis: "donor in life" }));
    await link(specimen, twice, without);
    const facts = await factsOf(specimen);
    expect(facts.consents.map((consent) => consent.basis)).toEqual(["donor in life"]);
    expect(facts.donorsWithoutConsent).toBe(1);
  });

  test("of a whole include the donors of its parts; a part has its own, or else its whole's", async () => {
    const whole = await aSpecimen({ kind: "skeleton or bone" });
    const arm = await aSpecimen({ wholeId: whole.id });
    const hand = await aSpecimen({ wholeId: arm.id });
    const other = await aSpecimen({ wholeId: whole.id });
    const [ofWhole, ofOther] = [await aDonor(), await aDonor()];
    await link(whole, ofWhole);
    await link(other, ofOther);
    const codes = async (specimen: Made) =>
      (await factsOf(specimen)).consents.map((consent) => consent.donorCode).sort();
    expect(await codes(whole)).toEqual([ofWhole, ofOther].sort());
    expect(await codes(other)).toEqual([ofOther]);
    expect(await codes(arm)).toEqual([ofWhole]);
    expect(await codes(hand)).toEqual([ofWhole]);
    await link(arm, ofOther);
    expect(await codes(hand)).toEqual([ofOther]);
  });

  test("take as many statements for two hundred specimens as for one", async () => {
    const specimens = await Promise.all(Array.from({ length: 200 }, () => aSpecimen()));
    const code = await aDonor();
    for (const specimen of specimens.slice(0, 20)) await link(specimen, code);
    let statements = 0;
    const counting = database().$extends({
      query: {
        $allOperations: ({ args, query }) => {
          statements += 1;
          return query(args);
        },
      },
    }) as unknown as ReturnType<typeof database>;
    await provenanceFactsOf(counting, [(specimens[0] as Made).id]);
    const forOne = statements;
    statements = 0;
    const facts = await provenanceFactsOf(
      counting,
      specimens.map(({ id }) => id),
    );
    expect([forOne, statements]).toEqual([4, 4]);
    expect([...facts.values()].filter(({ consents }) => consents.length === 1)).toHaveLength(20);
  });

  test("of nothing are nothing", async () => {
    expect((await provenanceFactsOf(database(), [])).size).toBe(0);
  });
});

describe("the sheet of a specimen", () => {
  const scene = async () => {
    const specimen = await aSpecimen();
    const code = await aDonor({ audience: "enrolled students" });
    const second = await aDonor({ audience: "professionals only" });
    await link(specimen, code, second);
    await keepSealedRecord(officer, {
      donorCode: code,
      fullName: "Ada Invented",
      bornOn: null,
      diedOn: null,
      kin: "",
      documentPlace: "",
    });
    await openSealedRecord(officer, { donorCode: code, reason: "Yearly check of the records." });
    return { specimen, code, second };
  };

  test("shows a curator scopes, limits and the pseudonym, but not who opened the record", async () => {
    const { specimen, code, second } = await scene();
    const sheet = await getProvenance(curator, specimen.id);
    expect(sheet.donorCodes).toEqual([code, second].sort());
    expect(sheet.consents?.map((consent) => consent.donor)).toEqual([code, second].sort());
    expect(sheet.strictest?.audience).toEqual({
      limit: "professionals only",
      donorCode: second,
      unknown: false,
    });
    expect(sheet.looks).toBeNull();
  });

  test("shows a registrar the scopes without anything that ties two specimens to one person", async () => {
    const { specimen, code, second } = await scene();
    const sheet = await getProvenance(registrar, specimen.id);
    expect(sheet.donorCodes).toBeNull();
    expect(sheet.consents?.map((consent) => consent.donor)).toEqual(["donor 1", "donor 2"]);
    expect(sheet.strictest?.audience.limit).toBe("professionals only");
    const rows = await database().consent.findMany({ where: { donorCode: { in: [code, second] } } });
    const shown = JSON.stringify(sheet);
    for (const secret of [code, second, ...rows.map((row) => row.id)]) expect(shown).not.toContain(secret);
  });

  test("shows the inspector each look at the sealed record, with who and why", async () => {
    const { specimen, code } = await scene();
    const sheet = await getProvenance(inspector, specimen.id);
    expect(sheet.looks).toMatchObject([
      { donorCode: code, by: officer.accountId, reason: "Yearly check of the records." },
    ]);
  });

  test("shows lecturers and the administrator nothing of the donors", async () => {
    const { specimen } = await scene();
    for (const viewer of [lecturer, administrator])
      expect(await getProvenance(viewer, specimen.id)).toMatchObject({
        donorCount: null,
        consents: null,
        strictest: null,
        donorCodes: null,
        linkedDonorCodes: null,
        looks: null,
      });
  });

  test("tells what papers count, and every paper with its withdrawal", async () => {
    const specimen = await aSpecimen();
    const record = (number: string) =>
      recordPermit(registrar, {
        ...permit,
        territories: [],
        specimenId: specimen.id,
        number,
        validUntil: null,
      });
    const [gone, going] = [await record("1"), await record("2")];
    await record("3");
    const because = "Revoked by the office.";
    await withdrawPermit(registrar, { permitId: gone, withdrawnOn: "2027-01-15", because });
    await withdrawPermit(registrar, { permitId: going, withdrawnOn: "2027-02-01", because });
    const sheet = await getProvenance(lecturer, specimen.id);
    expect(sheet.permits.map(({ number, validUntil }) => [number, validUntil])).toEqual([
      ["2", "2027-01-31"],
      ["3", null],
    ]);
    expect(sheet.permitRecords).toMatchObject([
      { id: gone, number: "1", validUntil: null, withdrawnOn: "2027-01-15", withdrawnBecause: because },
      { id: going, number: "2", validUntil: null, withdrawnOn: "2027-02-01", withdrawnBecause: because },
      { number: "3", withdrawnOn: null, withdrawnBecause: "" },
    ]);
  });

  test("is not there for an id that is unknown or no id at all", async () => {
    for (const id of ["01920000-0000-7000-8000-0000000000ff", "'; DROP TABLE donor; --", ""])
      await expect(getProvenance(curator, id)).rejects.toMatchObject({ kind: "not-found" });
  });
});

describe("the sheet of a donor", () => {
  test("lists specimens and forms, the current form first", async () => {
    const code = await aDonor({ signedOn: "2010-01-01" });
    await recordConsent(officer, aConsentForm(code, { signedOn: "2020-01-01" }));
    await recordConsent(officer, aConsentForm(code, { signedOn: "1999-01-01" }));
    const specimen = await aSpecimen({ title: "Hand" });
    await link(specimen, code);
    const sheet = await getDonor(officer, code);
    expect(sheet.specimens).toEqual([{ ...specimen, title: "Hand" }]);
    expect(sheet.consents.map((consent) => [consent.signedOn, consent.superseded])).toEqual([
      ["2020-01-01", false],
      ["1999-01-01", true],
      ["2010-01-01", true],
    ]);
    expect(sheet.consents[0]?.status.state).toBe("in force");
    expect(sheet.sealedRecordKept).toBe(false);
  });

  test("says that a sealed record is kept, and nothing of what is in it", async () => {
    const code = await aDonor();
    await keepSealedRecord(officer, {
      donorCode: code,
      fullName: "Ada Invented",
      bornOn: null,
      diedOn: null,
      kin: "",
      documentPlace: "Safe",
    });
    const sheet = await getDonor(officer, code);
    expect(sheet.sealedRecordKept).toBe(true);
    expect(JSON.stringify(sheet)).not.toContain("Ada");
    expect(sheet.looks).toEqual([]);
  });

  test("is closed to who may not know the pseudonym, and absent for a code that is none", async () => {
    const code = await aDonor();
    for (const viewer of [registrar, lecturer, administrator])
      await expect(getDonor(viewer, code)).rejects.toMatchObject({ kind: "forbidden" });
    for (const wrong of ["D-22222", "nonsense", "%"])
      await expect(getDonor(officer, wrong)).rejects.toMatchObject({ kind: "not-found" });
  });
});

describe("lists", () => {
  test("of donors come in pages that lose nobody and repeat nobody", async () => {
    for (let count = 0; count < 5; count += 1) await aDonor(count % 2 ? null : {});
    const whole = await listDonors(officer, { limit: 200 });
    expect(whole.next).toBeNull();
    const paged: string[] = [];
    for (let after: string | null = null; ; ) {
      const { rows, next }: Awaited<ReturnType<typeof listDonors>> = await listDonors(officer, {
        after,
        limit: 3,
      });
      expect(rows.length).toBeLessThanOrEqual(3);
      paged.push(...rows.map((row) => row.code));
      if (next === null) break;
      after = next;
    }
    expect(paged).toEqual(whole.rows.map((row) => row.code));
    expect(new Set(paged).size).toBe(paged.length);
    for (const after of ["'; --", "\u0000", "2027-13-45/x"]) {
      expect((await listDonors(officer, { after, limit: 200 })).rows).toEqual(whole.rows);
    }
    await expect(listDonors(registrar)).rejects.toMatchObject({ kind: "forbidden" });
  });

  test("of consents to look at hold the withdrawn, those due and those that end, and no other", async () => {
    const withdrawn = await aDonor();
    await withdrawConsent(officer, {
      donorCode: withdrawn,
      receivedOn: "2027-01-10",
      effectiveOn: "2027-03-01",
    });
    const due = await aDonor({ reviewDueOn: "2027-01-31" });
    const ending = await aDonor({ validUntil: "2027-01-31" });
    const later = await aDonor({ reviewDueOn: "2027-02-01", validUntil: "2030-01-01" });
    const { rows } = await listConsentsToReview(officer, { before: "2027-02-01" }, { limit: 200 });
    const codes = rows.map((row) => row.donorCode);
    expect(codes).toEqual(expect.arrayContaining([withdrawn, due, ending]));
    expect(codes).not.toContain(later);
    expect(rows.find((row) => row.donorCode === withdrawn)?.status.state).toBe("withdrawal received");
  });
});
