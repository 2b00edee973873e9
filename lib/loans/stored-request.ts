/**
 * Between a loan as people state it and its row. The two ways are inverse: what
 * was stated comes back as it was stated.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";
import { toDate, toDateOrNull, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import type { CoverFacts, RequestFacts } from "#lib/suitability/rules/case.ts";
import type { offices } from "#lib/suitability/schema.ts";

export type StoredLoan = Prisma.LoanGetPayload<object>;
type StoredCover = Prisma.CoverGetPayload<object>;
type StoredDecision = Prisma.DecisionGetPayload<object>;

/** @param confirmedAt when the facts were confirmed, where they were: as they stood before, or now */
export function toColumns(
  { cover, startsOn, endsOn, opensOn, factsConfirmed, ...stated }: RequestDraft,
  confirmedAt: Date,
) {
  return {
    ...stated,
    startsOn: toDate(startsOn),
    endsOn: toDate(endsOn),
    opensOn: toDateOrNull(opensOn),
    factsConfirmedAt: factsConfirmed === true ? confirmedAt : null,
    coverMinor: cover === null ? null : BigInt(cover.minor),
    coverCurrency: cover?.currency ?? null,
  };
}

type StatedColumns = Pick<StoredLoan, keyof ReturnType<typeof toColumns>>;

/** The request as it was stated, whole or half done. */
export function toRequest(row: StatedColumns): RequestDraft {
  const { coverMinor, coverCurrency } = row;
  return {
    venueId: row.venueId,
    title: row.title,
    purpose: row.purpose as RequestDraft["purpose"],
    teachingUse: row.teachingUse as RequestDraft["teachingUse"],
    audience: row.audience as RequestDraft["audience"],
    paidAdmission: row.paidAdmission,
    displayStyle: row.displayStyle as RequestDraft["displayStyle"],
    pictures: row.pictures as RequestDraft["pictures"],
    activities: row.activities as RequestDraft["activities"],
    startsOn: toDateText(row.startsOn),
    endsOn: toDateText(row.endsOn),
    opensOn: toDateTextOrNull(row.opensOn),
    factsConfirmed: row.factsConfirmedAt !== null,
    contactName: row.contactName,
    contactEmail: row.contactEmail,
    contactPhone: row.contactPhone,
    cover:
      coverMinor === null || coverCurrency === null
        ? null
        : { minor: Number(coverMinor), currency: coverCurrency },
    note: row.note,
  };
}

export function toCoverFacts(row: StoredCover): CoverFacts {
  return {
    amount: { minor: Number(row.amountMinor), currency: row.currency },
    startsAt: row.startsAt.toISOString(),
    endsAt: row.endsAt.toISOString(),
    coversTransit: row.coversTransit,
    coversStay: row.coversStay,
    territories: row.territories,
  };
}

/** Decisions that count: those on the request as it was last submitted. */
export function currentDecisions<Row extends Pick<StoredDecision, "decidedAt">>(
  decisions: readonly Row[],
  submittedAt: Date | null,
): Row[] {
  return submittedAt === null ? [] : decisions.filter((decision) => decision.decidedAt >= submittedAt);
}

/** An office's last word on the request as it stands, where it accepts. */
function acceptanceOf(
  office: (typeof offices)[number],
  decisions: readonly StoredDecision[],
  submittedAt: Date | null,
): StoredDecision | null {
  const word = currentDecisions(decisions, submittedAt).findLast(
    (one) => one.office === office && one.outcome !== "recuse",
  );
  return word?.outcome === "accept" ? word : null;
}

/** The oversight body's last word on the request as it stands, where it accepts. */
export function oversightWord(
  decisions: readonly StoredDecision[],
  submittedAt: Date | null,
): RequestFacts["oversight"] {
  const word = acceptanceOf("oversight body", decisions, submittedAt);
  return word && { reference: word.reference, decidedOn: toDateText(word.decidedAt) };
}

/** The conservator's last word on the request as it stands, where it signs a poor condition off. */
export function conservatorWord(
  decisions: readonly StoredDecision[],
  submittedAt: Date | null,
): RequestFacts["conservator"] {
  const word = acceptanceOf("conservator", decisions, submittedAt);
  return word && { decidedOn: toDateText(word.decidedAt), conditions: word.conditions };
}
