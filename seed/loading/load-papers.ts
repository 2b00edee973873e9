/** The papers of a loan as they were issued on its way: on the crates, for the driver, at each arrival. */
import { issuePaper } from "#lib/papers/commands/issue-paper.ts";
import { partsOfSubject } from "#lib/papers/paper-case.ts";
import { kindsOfPaper, type PaperKind } from "#lib/papers/paper-kinds.ts";
import { paperCaseOf } from "#lib/papers/queries/paper-case.ts";
import { database } from "#lib/platform/database.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";

/** Issues these kinds of the loan itself, as far as they can be issued. */
export async function issuePapersOfLoan(tale: LoanTale, kinds: readonly PaperKind[]): Promise<void> {
  const paperCase = await paperCaseOf(database(), tale.id);
  for (const kind of kinds) {
    const subjects = kindsOfPaper[kind].subjects(paperCase);
    if (subjects.length > 0) await issuePaper(tale.as("registrar"), { loanId: tale.id, kind, subjects });
  }
}

/** Issues these kinds for everything on one way that they can be issued for. */
export async function issuePapersOf(
  tale: LoanTale,
  direction: Direction,
  kinds: readonly PaperKind[],
): Promise<void> {
  const paperCase = await paperCaseOf(database(), tale.id);
  const stage = paperCase.stages.find((one) => one.direction === direction);
  if (stage === undefined) return;
  for (const kind of kinds) {
    const subjects = kindsOfPaper[kind]
      .subjects(paperCase)
      .filter((subject) => partsOfSubject(subject).stageId === stage.id);
    if (subjects.length > 0) await issuePaper(tale.as("registrar"), { loanId: tale.id, kind, subjects });
  }
}
