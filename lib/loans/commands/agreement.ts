/**
 * Drawing up the agreement and signing it. Each version freezes its terms as
 * canonical text with a hash; a change is a new version, and with it the
 * signatures under the one before count no more. The rules run at both moments,
 * and a bar stops both. Who signs for the lender never signs for the borrower.
 */
import { liveLines, refuseBars, requireState } from "#lib/loans/at-hand.ts";
import { keepRun, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { type AgreementTerms, readTerms, saysTheSame, type TermsCrate } from "#lib/loans/frozen-terms.ts";
import { LoanOnly, SignInput } from "#lib/loans/inputs.ts";
import { type LoanCase, loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { judgeSuitability } from "#lib/loans/suitability.ts";
import { agreementTerms } from "#lib/loans/terms.ts";
import { command, type Work } from "#lib/people/command.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { type CrateSheet, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { CratePlan } from "#lib/transport/crate-plan.ts";

/** A version may be drawn up from the decision until the specimens leave. */
const beforeRelease = ["accepted", "agreed", "preparing"] as const;

function toTermsCrate(crate: CrateSheet): TermsCrate {
  const { plan } = crate.plan as { plan: unknown };
  const { handling, orientation } = CratePlan.pick({ handling: true, orientation: true }).parse(plan);
  return {
    code: crate.code,
    kind: crate.kind,
    outerLengthMm: crate.outerLengthMm,
    outerWidthMm: crate.outerWidthMm,
    outerHeightMm: crate.outerHeightMm,
    grossMassKg: Math.round(crate.grossMassKg * 10) / 10,
    handling: handling.mode,
    orientation,
    contents: crate.contents.map((content) => content.accessionNumber),
  };
}

/** The terms as they would be drawn up now. */
async function termsNow(work: Work, loanCase: LoanCase, version: number): Promise<AgreementTerms> {
  const { row, centre, request, subjects } = loanCase;
  const { borrower } = row;
  const crates = await cratesOf(work.transaction, row.id);
  const stages = await stagesOf(work.transaction, row.id);
  const { name, address, city, countryCode, email, phone } = borrower;
  return agreementTerms({
    request,
    loan: { number: row.number, title: row.title, version, drawnUpOn: work.today },
    lender: {
      name: centre.name,
      address: centre.address,
      city: centre.city,
      countryCode: centre.countryCode,
      email: centre.email,
      phone: centre.phone,
    },
    borrower: {
      name,
      address,
      city,
      countryCode,
      email,
      phone,
      contactName: row.contactName,
      contactEmail: row.contactEmail,
      contactPhone: row.contactPhone,
    },
    subjects,
    certificates: row.covers.map((cover) => ({
      insurer: cover.insurer,
      policyNumber: cover.policyNumber,
      amount: { minor: Number(cover.amountMinor), currency: cover.currency },
      startsAt: cover.startsAt.toISOString(),
      endsAt: cover.endsAt.toISOString(),
      coversTransit: cover.coversTransit,
      territories: cover.territories,
    })),
    crates: crates.filter((crate) => crate.contents.length > 0).map(toTermsCrate),
    stages: stages.map(({ direction, carrier, through, departsOn, arrivesOn }) => ({
      direction,
      carrier,
      through,
      departsOn,
      arrivesOn,
    })),
    conditions: currentDecisions(row.decisions, row.submittedAt)
      .filter((decision) => decision.outcome === "accept" && decision.conditions !== "")
      .map(({ office, decidedAt, conditions, reference }) => ({
        office,
        decidedOn: toDateText(decidedAt),
        conditions,
        reference,
      })),
  });
}

export type DrawnUp = { id: Id; version: number; sha256: string };

export const drawUpAgreement = command(
  "drawUpAgreement",
  LoanOnly,
  async (work, { loanId }): Promise<DrawnUp> => {
    const loan = await takeLoan(work, loanId, "drawUpAgreement");
    requireState(loan, beforeRelease);
    const loanCase = await loanCaseOf(work.transaction, loan.id, work.today);
    const findings = judgeSuitability(loanCase.request, loanCase.subjects);
    refuseBars(liveLines(loan), findings, "agreement.barred");
    const newest = await work.transaction.agreement.findFirst({
      where: { loanId: loan.id },
      orderBy: { version: "desc" },
    });
    const version = (newest?.version ?? 0) + 1;
    const terms = await termsNow(work, loanCase, version);
    if (newest && saysTheSame(newest.terms, terms))
      throw new Refusal("conflict", "agreement.unchanged", { version: newest.version });
    const text = canonicalText(terms);
    const id = newId();
    const sha256 = sha256Hex(text);
    await work.transaction.agreement.create({
      data: {
        id,
        loanId: loan.id,
        version,
        terms: text,
        sha256,
        drawnUpBy: work.viewer.name,
        drawnUpAt: work.now,
      },
    });
    await keepRun(work, loan.id, "agreement", findings);
    return { id, version, sha256 };
  },
);

export const signAgreement = command(
  "signAgreement",
  SignInput,
  async (work, input): Promise<{ party: "lender" | "borrower" }> => {
    const { transaction, viewer } = work;
    const found = await transaction.agreement.findUnique({
      where: { id: input.agreementId },
      include: { signatures: true },
    });
    if (!found) throw notFound("agreement");
    const loan = await takeLoan(work, found.loanId, "signAgreement");
    requireState(loan, beforeRelease);
    const party = isBorrower(viewer) ? "borrower" : "lender";
    if (found.sha256 !== input.sha256) throw new Refusal("conflict", "agreement.other-terms");
    // nobody signs what can no longer be printed
    readTerms(found.terms);
    const newer = await transaction.agreement.findFirst({
      where: { loanId: loan.id, version: { gt: found.version } },
      orderBy: { version: "desc" },
    });
    if (newer) throw new Refusal("conflict", "agreement.superseded", { version: newer.version });
    if (found.signatures.some((signature) => signature.party === party))
      throw new Refusal("conflict", "agreement.already-signed", { party });
    if (found.signatures.some((signature) => signature.accountId === viewer.accountId))
      throw new Refusal("conflict", "agreement.same-signer");
    const { request, subjects } = await loanCaseOf(transaction, loan.id, work.today);
    const findings = judgeSuitability(request, subjects);
    refuseBars(liveLines(loan), findings, "agreement.barred");
    await transaction.signature.create({
      data: {
        id: newId(),
        agreementId: found.id,
        party,
        signerName: viewer.name,
        signerRole: input.signerRole,
        accountId: viewer.accountId,
        signedAt: work.now,
        sha256: found.sha256,
      },
    });
    await keepRun(work, loan.id, "signature", findings);
    return { party };
  },
);
