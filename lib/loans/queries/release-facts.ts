/** What the gates of release ask, loaded beside a loan's case. For whoever has authorised. */

import { scheduledNumbers } from "#lib/agreements/frozen-terms.ts";
import { checksOfLoan } from "#lib/condition/queries.ts";
import { agreedPayment } from "#lib/costing/payments.ts";
import type { ReleaseFacts } from "#lib/loans/gates.ts";
import { bookedDaysOf } from "#lib/loans/queries/booked-days.ts";
import type { LoanCase } from "#lib/loans/queries/loan-case.ts";
import { paymentStanding } from "#lib/loans/queries/payments.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { nailToNailStretches } from "#lib/suitability/cover-gaps.ts";
import { sumOfCosts } from "#lib/suitability/rules/cover.ts";
import type { Finding } from "#lib/suitability/schema.ts";

type Reader = Database | Transaction;

async function newestAgreement(reader: Reader, loanId: string): Promise<ReleaseFacts["agreement"]> {
  const newest = await reader.agreement.findFirst({
    where: { loanId },
    orderBy: { version: "desc" },
    include: { signatures: true },
  });
  if (!newest) return null;
  const hasSigned = (party: string) => newest.signatures.some((signature) => signature.party === party);
  return {
    version: newest.version,
    signedByLender: hasSigned("lender"),
    signedByBorrower: hasSigned("borrower"),
    schedule: scheduledNumbers(newest.terms),
  };
}

/** @param leavesOn the day on which it leaves; the planned one when it has not been decided yet */
export async function releaseFactsOf(
  reader: Reader,
  loanCase: LoanCase,
  findings: readonly Finding[],
  leavesOn: DateText | null = null,
): Promise<ReleaseFacts> {
  const { row, lines, request, subjects } = loanCase;
  const going = lines.filter((line) => line.state === "accepted" || line.state === "packed");
  const crates = await cratesOf(reader, row.id);
  const stages = await stagesOf(reader, row.id);
  const out = stages.find((stage) => stage.direction === "out") ?? null;
  const home = stages.find((stage) => stage.direction === "home") ?? null;
  const ofLoan = await checksOfLoan(reader, row.id);
  const checks: ReleaseFacts["checks"] = new Map(
    subjects.flatMap(({ specimen, latestSheet }) => {
      const forOut = ofLoan.get(specimen.id)?.findLast((check) => check.occasion === "out");
      if (!latestSheet) return [];
      // The check for going out gives the day; what was seen since then counts as well.
      const checkedOn = forOut?.checkedOn ?? latestSheet.checkedOn;
      const fitToTravel = latestSheet.verdict.fitToTravel && forOut?.verdict.fitToTravel !== false;
      return [
        [
          specimen.id,
          { checkedOn, grade: latestSheet.grade, fitToTravel, isForThisLoanOut: forOut !== undefined },
        ],
      ];
    }),
  );
  return {
    today: request.today,
    lines: going.map(({ specimenId, accessionNumber, state }) => ({
      specimenId,
      accessionNumber,
      isPacked: state === "packed",
    })),
    agreement: await newestAgreement(reader, row.id),
    covers: request.covers,
    stretches: nailToNailStretches({
      ...request,
      venueCountry: request.venue.countryCode,
      out: out && { departsOn: leavesOn ?? out.departsOn, arrivesOn: out.arrivesOn },
      home: home && { departsOn: home.departsOn, arrivesOn: home.arrivesOn },
    }),
    costs: sumOfCosts(subjects),
    findings,
    payment: agreedPayment(await paymentStanding(reader, row.id), request.today),
    checks,
    isSignedOff: request.conservator !== null,
    crates: crates
      .filter((crate) => crate.contents.length > 0)
      .map(({ code, state, contents }) => ({
        code,
        state,
        specimenIds: contents.map((one) => one.specimenId),
      })),
    stageOut: out && { carrier: out.carrier, departsOn: out.departsOn, arrivesOn: out.arrivesOn },
    booked: await bookedDaysOf(reader, row.id),
  };
}
