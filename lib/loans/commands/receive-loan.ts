/**
 * Arrival at the venue. The borrower looks for every crate, at its seal and its
 * outside, and takes over what came; each crate then rests closed until the
 * moment that the air and its mass give. Opened after that, its specimens are
 * counted: who is there is at the venue, who is not is missing.
 */

import {
  type ArrivedCrate,
  arrivedCrates,
  type CrateUnderWay,
  requireFullCount,
} from "#lib/loans/arrival.ts";
import { type LoanAtHand, linesIn } from "#lib/loans/at-hand.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { OpenCrateInput, ReceiveInput } from "#lib/loans/inputs.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { command, type Work } from "#lib/people/command.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import { requireMayHappen } from "#lib/shipments/crate-state.ts";
import { type CrateSheet, crateOf, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { placeOfVenue, writeHandovers, writeMoves } from "#lib/whereabouts/commands.ts";

/** The crates of a loan that hold a specimen whose line is in the state, with those specimens. */
export async function cratesUnderWay(
  work: Work,
  loan: LoanAtHand,
  state: LineState,
): Promise<CrateUnderWay[]> {
  const travelling = new Set(linesIn(loan, state).map((line) => line.specimenId));
  const fluid = await work.transaction.specimen.findMany({
    where: { id: { in: [...travelling] }, preparation: "fluid-preserved" },
    select: { id: true },
  });
  const jars = new Set(fluid.map(({ id }) => id));
  return (await cratesOf(work.transaction, loan.id)).flatMap((crate) => {
    const specimenIds = crate.contents.map((one) => one.specimenId).filter((id) => travelling.has(id));
    if (specimenIds.length === 0) return [];
    const { id, code, grossMassKg } = crate;
    return [{ id, code, grossMassKg, specimenIds, hasJars: specimenIds.some((one) => jars.has(one)) }];
  });
}

/** Writes the arrival of crates into their chains. */
export async function writeArrivals(
  work: Work,
  loan: LoanAtHand,
  direction: "out" | "home",
  arrived: readonly ArrivedCrate[],
): Promise<void> {
  const stage = (await stagesOf(work.transaction, loan.id)).find((one) => one.direction === direction);
  await writeCrateEvents(
    work,
    arrived.map(({ id, sealIntact, outsideDamage, notBefore }) => ({
      crateId: id,
      kind: "arrived" as const,
      stageId: stage?.id ?? null,
      sealIntact,
      outsideDamage,
      notBefore: new Date(notBefore),
    })),
  );
}

export type Received = { crateId: string; code: string; notBefore: string; hours: number }[];

export const receiveLoan = command("receiveLoan", ReceiveInput, async (work, input): Promise<Received> => {
  const { loanId, crates: looks, ...air } = input;
  const loan = await takeLoan(work, loanId, "receiveLoan");
  const underWay = await cratesUnderWay(work, loan, "travelling out");
  if (underWay.length === 0)
    throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
  const arrived = arrivedCrates(underWay, looks, air, work.now);
  const specimenIds = arrived.flatMap((crate) => crate.specimenIds);
  const borrower = await work.transaction.institution.findUniqueOrThrow({ where: { id: loan.borrowerId } });
  await writeArrivals(work, loan, "out", arrived);
  await writeHandovers(work, {
    specimenIds,
    toParty: borrower.name,
    releasedBy: "carrier",
    receivedBy: work.viewer.name,
    reason: `loan ${loan.number}, received`,
    loanId: loan.id,
  });
  await writeMoves(work, {
    specimenIds,
    placeId: await placeOfVenue(work, loan.venueId),
    reason: `loan ${loan.number}, received`,
  });
  const here = new Set(specimenIds);
  await moveLines(
    work,
    linesIn(loan, "travelling out").filter((line) => here.has(line.specimenId)),
    "resting at venue",
  );
  await writeLetters(work, loan.id, "received", { count: here.size });
  if (arrived.some(({ sealIntact, outsideDamage }) => !sealIntact || outsideDamage !== ""))
    await writeLetters(work, loan.id, "harm");
  return arrived.map(({ id, code, notBefore, hours }) => ({ crateId: id, code, notBefore, hours }));
});

/** @throws {Refusal} "crate.resting" before the moment that its arrival gave */
export async function requireRested(
  work: Work,
  crate: Pick<CrateSheet, "code" | "notBefore">,
): Promise<void> {
  if (crate.notBefore !== null && Date.parse(crate.notBefore) > work.now.getTime())
    throw new Refusal("conflict", "crate.resting", { crate: crate.code, notBefore: crate.notBefore });
}

export type Opened = { missing: { specimenId: string; accessionNumber: string }[] };

/** Opens a crate at the venue and counts what is in it. At home the return is counted instead. */
export const openCrate = command(
  "openCrate",
  OpenCrateInput,
  async (work, { crateId, counts }): Promise<Opened> => {
    const crate = await crateOf(work.transaction, crateId);
    const loan = await takeLoan(work, crate.loanId, "openCrate");
    const resting = linesIn(loan, "resting at venue");
    const expected = resting.filter((line) =>
      crate.contents.some((one) => one.specimenId === line.specimenId),
    );
    if (expected.length === 0)
      throw new Refusal("conflict", "crate.not-at-venue", { crate: crate.code, state: crate.state });
    requireMayHappen(crate, "opened");
    await requireRested(work, crate);
    requireFullCount(expected, counts);
    await writeCrateEvents(work, [{ crateId, kind: "opened", counts }]);
    const present = new Set(counts.filter((count) => count.present).map((count) => count.specimenId));
    const missing = expected.filter((line) => !present.has(line.specimenId));
    await moveLines(
      work,
      expected.filter((line) => present.has(line.specimenId)),
      "at venue",
    );
    await moveLines(work, missing, "missing");
    await writeLetters(work, loan.id, "opened", { count: present.size });
    if (missing.length > 0) await writeLetters(work, loan.id, "harm");
    return { missing: missing.map(({ specimenId, accessionNumber }) => ({ specimenId, accessionNumber })) };
  },
);
