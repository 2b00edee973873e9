/** What is due about money: quotations without an answer, and old replacement costs of what is lent or asked for. */
import type { DueItem } from "#lib/desk/due.ts";
import {
  dueFromOldCosts,
  dueFromQuotations,
  type LentCost,
  type OpenQuotation,
} from "#lib/desk/due-money.ts";
import { endedStates } from "#lib/loans/transitions.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDate, toDateText } from "#lib/platform/dates.ts";

const most = 500;

/** Quotations that nobody has answered: the newest of each loan that goes on. */
async function openQuotations(viewer: Viewer): Promise<OpenQuotation[]> {
  if (!maySee(viewer, "costings", { institutionId: viewer.institutionId })) return [];
  const rows = await database().costing.findMany({
    where: {
      kind: "quotation",
      loan: {
        closedAt: null,
        ...(isBorrower(viewer) ? { borrower: { accounts: { some: { id: viewer.accountId } } } } : {}),
      },
    },
    select: {
      version: true,
      validUntil: true,
      answer: { select: { outcome: true } },
      loan: { select: { id: true, number: true, borrower: { select: { name: true } } } },
    },
    orderBy: [{ loanId: "asc" }, { version: "desc" }],
    distinct: ["loanId"],
    take: most,
  });
  return rows.flatMap(({ version, validUntil, answer, loan }) =>
    answer !== null || validUntil === null
      ? []
      : [
          {
            loanId: loan.id,
            loan: loan.number,
            borrower: loan.borrower.name,
            version,
            validUntil: toDateText(validUntil),
          },
        ],
  );
}

/** Replacement costs of what is on a loan, or asked for; for who may value anew or knows who may. */
async function lentCosts(viewer: Viewer, day: DateText): Promise<LentCost[]> {
  if (isBorrower(viewer) || !maySee(viewer, "replacementCost")) return [];
  const rows = await database().loanLine.findMany({
    where: {
      state: { notIn: ["noted", ...endedStates] },
      // a year at least: the exact day is counted by the rule
      specimen: { replacementCostOn: { lt: toDate(addDays(day, -364)) } },
    },
    select: {
      specimen: { select: { id: true, accessionNumber: true, replacementCostOn: true } },
      loan: { select: { number: true } },
    },
    orderBy: [{ specimen: { replacementCostOn: "asc" } }, { loan: { endsOn: "asc" } }],
    take: most,
  });
  return rows.flatMap(({ specimen, loan }) =>
    specimen.replacementCostOn === null
      ? []
      : [
          {
            specimenId: specimen.id,
            specimen: specimen.accessionNumber,
            statedOn: toDateText(specimen.replacementCostOn),
            loan: loan.number,
          },
        ],
  );
}

export async function dueMoney(viewer: Viewer, day: DateText): Promise<DueItem[]> {
  return [
    ...dueFromQuotations(await openQuotations(viewer), day),
    ...dueFromOldCosts(await lentCosts(viewer, day), day),
  ];
}
