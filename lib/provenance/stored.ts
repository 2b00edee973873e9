/**
 * Provenance as the database keeps it, read into the trade's own words. A scope
 * that a form never answered is unknown; what does not fit the schema is a fault
 * of whoever wrote it, and is not read past.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import {
  type Answer,
  type ConsentFacts,
  ConsentInput,
  PermitInput,
  type PermitRecord,
  type Scope,
  scopes,
  TitleInput,
} from "#lib/provenance/schema.ts";

export type ConsentRow = Prisma.ConsentGetPayload<{ include: { answers: true } }>;

/** Scopes that a form never answered are unknown. */
function toAnswers(rows: readonly { scope: string; answer: string }[]): Record<Scope, Answer> {
  const found = new Map(rows.map(({ scope, answer }) => [scope, answer]));
  return Object.fromEntries(scopes.map((scope) => [scope, found.get(scope) ?? "unknown"])) as Record<
    Scope,
    Answer
  >;
}

export function toConsent(row: ConsentRow): ConsentInput {
  return ConsentInput.parse({
    ...row,
    answers: toAnswers(row.answers),
    signedOn: toDateTextOrNull(row.signedOn),
    validUntil: toDateTextOrNull(row.validUntil),
    reviewDueOn: toDateTextOrNull(row.reviewDueOn),
    dispositionDueOn: toDateTextOrNull(row.dispositionDueOn),
    verifiedOn: toDateTextOrNull(row.verifiedOn),
  });
}

export function toConsentFacts(row: ConsentRow): ConsentFacts {
  const { formVersion, evidencePlace, verifiedBy, ...facts } = toConsent(row);
  return {
    ...facts,
    consentId: row.id,
    withdrawalReceivedOn: toDateTextOrNull(row.withdrawalReceivedOn),
    withdrawalEffectiveOn: toDateTextOrNull(row.withdrawalEffectiveOn),
  };
}

export function toPermit(row: Prisma.PermitGetPayload<object>): PermitRecord {
  const permit = PermitInput.parse({
    ...row,
    validFrom: toDateTextOrNull(row.validFrom),
    validUntil: toDateTextOrNull(row.validUntil),
  });
  return {
    ...permit,
    id: row.id,
    withdrawnOn: toDateTextOrNull(row.withdrawnOn),
    withdrawnBecause: row.withdrawnBecause,
  };
}

export function toTitle(row: Prisma.TitleGetPayload<object>): TitleInput {
  return TitleInput.parse({ ...row, recordedOn: toDateText(row.recordedOn) });
}
