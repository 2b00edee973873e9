/**
 * Keeping what is known of donors, consents, papers and title. A consent is never
 * overwritten: a later form takes the place of the earlier one, which stays. Who a
 * donor was goes into the sealed record and comes out of it only together with a
 * look that the database writes; neither the audit nor a receipt holds it.
 */
import { randomInt } from "node:crypto";
import { z } from "zod";
import { command, commands, type Work } from "#lib/people/command.ts";
import { type DateText, toDate, toDateOrNull, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { withdrawnFrom } from "#lib/provenance/consent-status.ts";
import { donorCode } from "#lib/provenance/donor-code.ts";
import {
  ConsentInput,
  DonorLinkInput,
  PermitWithdrawalInput,
  SealedLookInput,
  SealedRecordInput,
  SpecimenPermitInput,
  SpecimenTitleInput,
  WithdrawalInput,
} from "#lib/provenance/schema.ts";
import { toPermit } from "#lib/provenance/stored.ts";

const drawsBeforeGivingUp = 20;

/** @returns the new donor's code */
export const registerDonor = command("registerDonor", z.object({}), async ({ transaction, now }) => {
  for (let draws = 0; draws < drawsBeforeGivingUp; draws += 1) {
    const code = donorCode(randomInt);
    const made = await transaction.donor.createMany({
      data: [{ code, recordedAt: now }],
      skipDuplicates: true,
    });
    if (made.count === 1) return code;
  }
  throw new Refusal("conflict", "donor.no-code-left");
});

/** One change to a donor's papers at a time. */
async function lockDonor({ transaction }: Work, code: string): Promise<void> {
  const rows = await transaction.$queryRaw<
    unknown[]
  >`SELECT 1 FROM donor WHERE code = ${code} FOR NO KEY UPDATE`;
  if (rows.length === 0) throw notFound("donor");
}

async function findCurrentConsent({ transaction }: Work, code: string) {
  const row = await transaction.consent.findFirst({ where: { donorCode: code, supersededById: null } });
  if (!row) return null;
  return {
    id: row.id,
    signedOn: toDateTextOrNull(row.signedOn),
    validUntil: toDateTextOrNull(row.validUntil),
    reviewDueOn: toDateTextOrNull(row.reviewDueOn),
    withdrawalReceivedOn: toDateTextOrNull(row.withdrawalReceivedOn),
    withdrawalEffectiveOn: toDateTextOrNull(row.withdrawalEffectiveOn),
  };
}

/**
 * Records one form. It takes the place of the current one, unless it was signed
 * earlier: then it joins the history. A withdrawal is not undone by a form that
 * is not known to be signed after it.
 */
export const recordConsent = command("recordConsent", ConsentInput, async (work, input): Promise<Id> => {
  const {
    donorCode: code,
    answers,
    signedOn,
    validUntil,
    reviewDueOn,
    dispositionDueOn,
    verifiedOn,
    ...facts
  } = input;
  for (const [path, day] of [
    ["signedOn", signedOn],
    ["verifiedOn", verifiedOn],
  ] as const) {
    if (day !== null && day > work.today)
      throw new Refusal("invalid", "input.invalid", {}, [{ path, message: "consent.date-to-come" }]);
  }
  await lockDonor(work, code);
  const current = await findCurrentConsent(work, code);
  const isEarlier =
    current !== null && signedOn !== null && current.signedOn !== null && signedOn < current.signedOn;
  if (current && !isEarlier) refuseWashingAway(signedOn, current.withdrawalReceivedOn);

  const id = newId();
  // Of one donor's forms one is current at any moment, the database holds us to it.
  if (current && !isEarlier) {
    await work.transaction.consent.update({ where: { id: current.id }, data: { supersededById: id } });
  }
  await work.transaction.consent.create({
    data: {
      id,
      donorCode: code,
      ...facts,
      signedOn: toDateOrNull(signedOn),
      validUntil: toDateOrNull(validUntil),
      reviewDueOn: toDateOrNull(reviewDueOn),
      dispositionDueOn: toDateOrNull(dispositionDueOn),
      verifiedOn: toDateOrNull(verifiedOn),
      supersededById: current && isEarlier ? current.id : null,
      recordedAt: work.now,
      answers: { create: Object.entries(answers).map(([scope, answer]) => ({ scope, answer })) },
    },
  });
  return id;
});

function refuseWashingAway(signedOn: DateText | null, withdrawnOn: DateText | null): void {
  if (withdrawnOn === null || (signedOn !== null && signedOn >= withdrawnOn)) return;
  throw new Refusal("conflict", "consent.withdrawn-since", { withdrawnOn });
}

export const withdrawConsent = command("withdrawConsent", WithdrawalInput, async (work, input) => {
  if (input.receivedOn > work.today)
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "receivedOn", message: "consent.date-to-come" },
    ]);
  await lockDonor(work, input.donorCode);
  const current = await findCurrentConsent(work, input.donorCode);
  if (!current) throw new Refusal("conflict", "consent.none-to-withdraw");
  const withdrawnOn = withdrawnFrom(current);
  if (withdrawnOn !== null) throw new Refusal("conflict", "consent.already-withdrawn", { withdrawnOn });
  await work.transaction.consent.update({
    where: { id: current.id },
    data: {
      withdrawalReceivedOn: toDate(input.receivedOn),
      withdrawalEffectiveOn: toDate(input.effectiveOn),
    },
  });
});

/** States all donors of a specimen; several make it a composite, which follows the strictest. */
export const linkDonor = command("linkDonor", DonorLinkInput, async ({ transaction }, input) => {
  const codes = [...new Set(input.donorCodes)];
  const specimen = await transaction.specimen.findUnique({
    where: { id: input.specimenId },
    select: { human: true, accessionNumber: true },
  });
  if (!specimen) throw notFound("specimen");
  if (!specimen.human && codes.length > 0)
    throw new Refusal("conflict", "donor.not-of-an-animal", { accessionNumber: specimen.accessionNumber });
  const known = await transaction.donor.findMany({ where: { code: { in: codes } }, select: { code: true } });
  if (known.length < codes.length) throw notFound("donor");
  const { specimenId } = input;
  await transaction.specimenDonor.deleteMany({ where: { specimenId, donorCode: { notIn: codes } } });
  await transaction.specimenDonor.createMany({
    data: codes.map((code) => ({ specimenId, donorCode: code })),
    skipDuplicates: true,
  });
});

async function requireSpecimen({ transaction }: Work, id: string): Promise<void> {
  const found = await transaction.specimen.findUnique({ where: { id }, select: { id: true } });
  if (!found) throw notFound("specimen");
}

/**
 * The same kind and number stated again correct what was stated before. What is
 * stated is the paper as it is in force now: a withdrawal of before is lifted, so
 * that the permit counts again, and the audit keeps the withdrawal and its end.
 * @returns the permit's id
 */
export const recordPermit = command("recordPermit", SpecimenPermitInput, async (work, input): Promise<Id> => {
  await requireSpecimen(work, input.specimenId);
  const { specimenId, kind, number, authority, territories, validFrom, validUntil } = input;
  const facts = {
    authority,
    territories,
    validFrom: toDateOrNull(validFrom),
    validUntil: toDateOrNull(validUntil),
  };
  const permit = await work.transaction.permit.upsert({
    where: { specimenId_kind_number: { specimenId, kind, number } },
    create: { id: newId(), specimenId, kind, number, ...facts },
    update: { ...facts, withdrawnOn: null, withdrawnBecause: "" },
  });
  return permit.id;
});

/**
 * Takes a permit back from a day on, past or to come. It stays on record with the
 * reason. Only a permit that still counts on that day can be taken back, and only
 * once: what was stated wrongly is put right by recording the permit again.
 */
export const withdrawPermit = command(
  "withdrawPermit",
  PermitWithdrawalInput,
  async ({ transaction }, { permitId, withdrawnOn, because }) => {
    const row = await transaction.permit.findUnique({ where: { id: permitId } });
    if (!row) throw notFound("permit");
    const permit = toPermit(row);
    if (permit.withdrawnOn !== null)
      throw new Refusal("conflict", "permit.withdrawn-already", { withdrawnOn: permit.withdrawnOn });
    if (permit.validUntil !== null && permit.validUntil < withdrawnOn)
      throw new Refusal("conflict", "permit.ended-before", { validUntil: permit.validUntil });
    const taken = await transaction.permit.updateMany({
      where: { id: permitId, withdrawnOn: null },
      data: { withdrawnOn: toDate(withdrawnOn), withdrawnBecause: because },
    });
    if (taken.count === 0) throw new Refusal("conflict", "permit.changed-meanwhile");
  },
);

export const recordTitle = command("recordTitle", SpecimenTitleInput, async (work, input) => {
  await requireSpecimen(work, input.specimenId);
  const { specimenId, recordedOn, ...rest } = input;
  const facts = { ...rest, recordedOn: toDate(recordedOn) };
  await work.transaction.title.upsert({
    where: { specimenId },
    create: { specimenId, ...facts },
    update: facts,
  });
});

export const keepSealedRecord = command("keepSealedRecord", SealedRecordInput, async (work, input) => {
  await lockDonor(work, input.donorCode);
  const { donorCode: code, fullName, bornOn, diedOn, kin, documentPlace } = input;
  await work.transaction
    .$executeRaw`SELECT sealed.keep_record(${code}, ${fullName}, ${bornOn}::date, ${diedOn}::date, ${kin}, ${documentPlace})`;
});

/** Who a donor was, as the sealed record says it. */
export type SealedRecord = SealedRecordInput;

type SealedRow = {
  donor_code: string;
  full_name: string;
  born_on: Date | null;
  died_on: Date | null;
  kin: string;
  document_place: string;
};

const lookIntoSealedRecord = command(
  "openSealedRecord",
  SealedLookInput,
  async ({ transaction }, input): Promise<SealedRecord> => {
    const donor = await transaction.donor.findUnique({ where: { code: input.donorCode } });
    if (!donor) throw notFound("donor");
    const [row] = await transaction.$queryRaw<SealedRow[]>`
      SELECT * FROM sealed.open_record(${input.donorCode}, ${input.reason})`;
    if (!row) throw notFound("sealed record");
    return {
      donorCode: row.donor_code,
      fullName: row.full_name,
      bornOn: row.born_on && toDateText(row.born_on),
      diedOn: row.died_on && toDateText(row.died_on),
      kin: row.kin,
      documentPlace: row.document_place,
    };
  },
);

/**
 * Opens a sealed record. An idempotency key is not taken: its receipt would keep
 * the answer outside the seal, and give it again without a look.
 */
export const openSealedRecord: typeof lookIntoSealedRecord = Object.assign(
  (...[viewer, input]: Parameters<typeof lookIntoSealedRecord>) => lookIntoSealedRecord(viewer, input),
  { act: lookIntoSealedRecord.act, input: lookIntoSealedRecord.input, within: lookIntoSealedRecord.within },
);
commands.set(openSealedRecord.act, openSealedRecord as never);
