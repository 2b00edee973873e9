/** Mandates as they are on record: of one person for a signature, and all of them for the page that keeps them. */
import { type Mandate, type MandateAct, mandateActs } from "#lib/people/mandates.ts";
import { requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";

type Row = Awaited<ReturnType<Database["mandate"]["findMany"]>>[number];

function toMandate(row: Row): Mandate {
  const { limitMinor, limitCurrency } = row;
  return {
    id: row.id,
    acts: row.acts.filter((act): act is MandateAct => (mandateActs as readonly string[]).includes(act)),
    limit:
      limitMinor === null || limitCurrency === null
        ? null
        : { minor: Number(limitMinor), currency: limitCurrency },
    validFrom: toDateText(row.validFrom),
    validUntil: toDateTextOrNull(row.validUntil),
    reference: row.reference,
    givenBy: row.givenBy,
    revokedOn: toDateTextOrNull(row.revokedOn),
  };
}

export async function mandatesOf(reader: Database | Transaction, accountId: string): Promise<Mandate[]> {
  const rows = await reader.mandate.findMany({ where: { accountId }, orderBy: { validFrom: "asc" } });
  return rows.map(toMandate);
}

export type MandateRow = Mandate & { accountId: string; name: string; institution: string | null };

/** Who may sign what: the house's and every borrower's; a borrower sees the own institution's. */
export async function listMandates(viewer: Viewer): Promise<MandateRow[]> {
  requireSight(viewer, "mandates");
  const rows = await database().mandate.findMany({
    where: isBorrower(viewer)
      ? { account: { institutionId: viewer.institutionId ?? "00000000-0000-0000-0000-000000000000" } }
      : {},
    include: { account: { include: { institution: { select: { name: true } } } } },
    orderBy: [{ account: { name: "asc" } }, { validFrom: "desc" }],
    take: 1_000,
  });
  return rows.map((row) => ({
    ...toMandate(row),
    accountId: row.accountId,
    name: row.account.name,
    institution: row.account.institution?.name ?? null,
  }));
}

export type Signatory = { id: string; name: string; institution: string | null };

/** Open accounts that may be given a mandate; the giver's own is not among them. */
export async function listSignatories(viewer: Viewer): Promise<Signatory[]> {
  requireSight(viewer, "signatories");
  const rows = await database().account.findMany({
    where: { active: true, id: { not: viewer.accountId } },
    include: { institution: { select: { name: true } } },
    orderBy: { name: "asc" },
    take: 1_000,
  });
  return rows.map(({ id, name, institution }) => ({ id, name, institution: institution?.name ?? null }));
}
