/**
 * What is due about money: a quotation that waits for its answer, or that nobody has
 * answered in time, and a replacement cost that is older than twelve months while its
 * specimen is on a loan or asked for. The twelve months are the same as in the rule
 * of cover: V2.
 */
import { servesUntil } from "#lib/condition/grade.ts";
import type { DueItem } from "#lib/desk/due.ts";
import type { DateText } from "#lib/platform/dates.ts";

export type OpenQuotation = {
  loanId: string;
  loan: string;
  borrower: string;
  version: number;
  validUntil: DateText;
};

/** A quotation without an answer: due on its last day, and overdue after it. */
export function dueFromQuotations(quotations: readonly OpenQuotation[], today: DateText): DueItem[] {
  return quotations.map(({ loanId, loan, borrower, version, validUntil }) => ({
    key: `${loanId} quotation ${version}`,
    outcome: "attend",
    dueOn: validUntil,
    code: validUntil < today ? "due.quotation-expired" : "due.quotation-open",
    parameters: { loan, borrower, version, date: validUntil },
    about: { kind: "loan", id: loanId },
  }));
}

export type LentCost = { specimenId: string; specimen: string; statedOn: DateText; loan: string };

/** A specimen on several loans is named once, with the loan that ends first in the list. */
export function dueFromOldCosts(costs: readonly LentCost[], today: DateText): DueItem[] {
  const seen = new Set<string>();
  return costs.flatMap(({ specimenId, specimen, statedOn, loan }): DueItem[] => {
    const until = servesUntil(statedOn, "approval");
    if (until >= today || seen.has(specimenId)) return [];
    seen.add(specimenId);
    return [
      {
        key: `cost ${specimenId}`,
        outcome: "attend",
        dueOn: until,
        code: "due.cost-old",
        parameters: { specimen, loan, date: statedOn },
        about: { kind: "specimen", id: specimenId },
      },
    ];
  });
}
