/**
 * Quotations and cost statements of one loan. Nothing is quoted before the curator
 * has accepted the loan; each version is frozen as canonical text with its hash, and
 * a new one puts the one before out of force. The borrower accepts or refuses the
 * newest once, in time. After an acceptance, what it came to is stated beside what
 * was quoted. The database refuses what is out of this order as well.
 */

import { comparedLines } from "#lib/costing/compared.ts";
import { totalsOf } from "#lib/costing/costing.ts";
import { costsTheSame, readCosting } from "#lib/costing/frozen.ts";
import { isOfNothing, linesOfQuotation } from "#lib/costing/lines.ts";
import { feeScaleOn } from "#lib/costing/queries.ts";
import {
  AnswerInput,
  CostingContent,
  type CostingKind,
  CostStatementInput,
  QuotationInput,
} from "#lib/costing/schema.ts";
import { liveLines, requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { requireMandate } from "#lib/people/commands/mandates.ts";
import { type DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { minorDigits } from "#lib/platform/money.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export type DrawnUpCosting = { id: Id; version: number; sha256: string; totalMinor: number };

/** Who lends, who borrows, and what: as it stands when the paper is drawn up. */
function partiesOf({ row, centre, request, subjects }: LoanCase) {
  const { borrower } = row;
  return {
    loan: {
      number: row.number,
      title: row.title,
      purpose: request.purpose,
      startsOn: request.startsOn,
      returnBy: request.endsOn,
      specimens: subjects.length,
      venue: request.venue.name,
    },
    lender: {
      name: centre.name,
      address: centre.address,
      city: centre.city,
      countryCode: centre.countryCode,
      email: centre.email,
      phone: centre.phone,
    },
    borrower: {
      name: borrower.name,
      address: borrower.address,
      city: borrower.city,
      countryCode: borrower.countryCode,
      email: borrower.email,
      phone: borrower.phone,
      contactName: row.contactName,
    },
  };
}

/** Freezes a paper as the next version of its kind. @throws {Refusal} when it says what the one before says */
async function freeze(
  work: Work,
  loanId: string,
  kind: CostingKind,
  said: Omit<CostingContent, "version" | "kind" | "format" | "rounding" | "minorDigits">,
): Promise<DrawnUpCosting> {
  const newest = await work.transaction.costing.findFirst({
    where: { loanId, kind },
    orderBy: { version: "desc" },
  });
  const version = (newest?.version ?? 0) + 1;
  const content = CostingContent.parse({
    ...said,
    format: "costing-1",
    kind,
    version,
    minorDigits: minorDigits(said.currency),
    rounding: "half-up-line-net-tax-on-sum",
  } satisfies CostingContent);
  if (newest && costsTheSame(newest.content, content))
    throw new Refusal("conflict", "costing.unchanged", { version: newest.version });
  const text = canonicalText(content);
  const id = newId();
  const sha256 = sha256Hex(text);
  await work.transaction.costing.create({
    data: {
      id,
      loanId,
      kind,
      version,
      content: text,
      sha256,
      currency: content.currency,
      totalMinor: BigInt(content.totalMinor),
      validUntil: content.validUntil === null ? null : toDate(content.validUntil),
      drawnUpBy: work.viewer.name,
      drawnUpAt: work.now,
    },
  });
  await writeLetters(work, loanId, kind === "quotation" ? "quotation" : "cost-statement", { version });
  return { id, version, sha256, totalMinor: content.totalMinor };
}

/** The curator's last word on the request as it stands. @throws {Refusal} where it is not a yes */
function requireDecision({ row }: LoanCase): void {
  const word = currentDecisions(row.decisions, row.submittedAt).findLast((one) => one.office === "curator");
  if (word?.outcome !== "accept") throw new Refusal("conflict", "costing.not-decided", { loan: row.number });
}

function requireDayToCome(validUntil: DateText, today: DateText): void {
  if (validUntil < today)
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "validUntil", message: "costing.valid-until-past" },
    ]);
}

/** A quotation is drawn up from the decision until the specimens leave. */
const quotable = statesBeforeRelease.filter((state) => state !== "enquiry" && state !== "requested");

export const drawUpQuotation = command(
  "drawUpQuotation",
  QuotationInput,
  async (work, { loanId, lines, exchange, note, validUntil }): Promise<DrawnUpCosting> => {
    const loan = await takeLoan(work, loanId, "drawUpQuotation");
    const loanCase = await loanCaseOf(work.transaction, loan.id, work.today);
    requireDecision(loanCase);
    requireState(loan, quotable);
    requireDayToCome(validUntil, work.today);
    const counting = await feeScaleOn(work.transaction, work.today);
    if (!counting) throw new Refusal("conflict", "costing.no-fee-scale");
    const { currency, cancellation } = counting.scale;
    const totals = totalsOf({ currency, lines: linesOfQuotation(lines), exchange });
    return await freeze(work, loan.id, "quotation", {
      ...partiesOf(loanCase),
      drawnUpOn: work.today,
      validUntil,
      currency,
      costRecovery: loanCase.subjects.some(({ specimen }) => specimen.human),
      feeScaleVersion: counting.version,
      ...totals,
      exchange,
      cancellation,
      against: null,
      note,
    });
  },
);

export const answerQuotation = command(
  "answerQuotation",
  AnswerInput,
  async (work, { costingId, outcome, sha256, remark }): Promise<void> => {
    const { transaction, viewer, today, now } = work;
    const asked = await transaction.costing.findUnique({ where: { id: costingId } });
    if (!asked) throw notFound("costing");
    const loan = await takeLoan(work, asked.loanId, "answerQuotation");
    if (asked.kind !== "quotation") throw new Refusal("conflict", "costing.not-a-quotation");
    requireState(
      loan,
      loanStates.filter((state) => !["closed", "declined", "withdrawn"].includes(state)),
    );
    if (asked.sha256 !== sha256) throw new Refusal("conflict", "costing.other-content");
    // nobody accepts what can no longer be read
    readCosting(asked.content);
    const newer = await transaction.costing.findFirst({
      where: { loanId: loan.id, kind: asked.kind, version: { gt: asked.version } },
      orderBy: { version: "desc" },
    });
    if (newer) throw new Refusal("conflict", "costing.superseded", { version: newer.version });
    if (await transaction.costingAnswer.findUnique({ where: { costingId } }))
      throw new Refusal("conflict", "costing.already-answered");
    if (outcome === "accepted" && asked.validUntil !== null && toDateText(asked.validUntil) < today)
      throw new Refusal("conflict", "costing.expired", { date: toDateText(asked.validUntil) });
    const { totalMinor, currency } = asked;
    if (outcome === "accepted")
      await requireMandate(work, "accept quotations", {
        sums: [{ minor: Number(totalMinor), currency }],
        unknown: 0,
      });
    await transaction.costingAnswer.create({
      data: { costingId, outcome, remark, accountId: viewer.accountId, answeredAt: now },
    });
    await writeLetters(work, loan.id, `quotation-${outcome}`, { version: asked.version });
  },
);

export const drawUpCostStatement = command(
  "drawUpCostStatement",
  CostStatementInput,
  async (work, { loanId, lines, exchange, note }): Promise<DrawnUpCosting> => {
    const loan = await takeLoan(work, loanId, "drawUpCostStatement");
    const accepted = await work.transaction.costing.findFirst({
      where: { loanId: loan.id, kind: "quotation", answer: { outcome: "accepted" } },
      orderBy: { version: "desc" },
    });
    if (!accepted) throw new Refusal("conflict", "costing.not-accepted", { loan: loan.number });
    const quoted = readCosting(accepted.content);
    const loanCase = await loanCaseOf(work.transaction, loan.id, work.today);
    const totals = totalsOf({
      currency: quoted.currency,
      lines: lines.filter((line) => !isOfNothing(line)),
      exchange,
    });
    const parties = partiesOf(loanCase);
    const specimens = liveLines(loan).length || quoted.loan.specimens;
    return await freeze(work, loan.id, "cost statement", {
      ...parties,
      loan: { ...parties.loan, specimens },
      drawnUpOn: work.today,
      validUntil: null,
      currency: quoted.currency,
      costRecovery: quoted.costRecovery,
      feeScaleVersion: quoted.feeScaleVersion,
      ...totals,
      exchange,
      cancellation: quoted.cancellation,
      against: {
        version: quoted.version,
        sha256: accepted.sha256,
        totalMinor: quoted.totalMinor,
        lines: comparedLines(quoted.lines, totals.lines),
        differenceMinor: totals.totalMinor - quoted.totalMinor,
      },
      note,
    });
  },
);
