/**
 * Sending specimens home. Nothing bars it: no gate, no cover, no consent, no
 * licence. From wherever they are they are packed into their crates and handed to
 * the carrier that is planned or named; where none is, the borrower brings them
 * and keeps them until they are received. A crate that stayed closed goes as it
 * came; one that was opened is closed with a new seal.
 */
import { linesIn } from "#lib/loans/at-hand.ts";
import { keepDays } from "#lib/loans/commands/keep-days.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { SendHomeInput } from "#lib/loans/inputs.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { command } from "#lib/people/command.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { type CrateEventNote, writeCrateEvents } from "#lib/shipments/commands.ts";
import { needsNewSeal } from "#lib/shipments/crate-state.ts";
import { type CrateSheet, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { placeOnTheWay, writeHandovers, writeMoves } from "#lib/whereabouts/commands.ts";

type Seals = readonly { crateId: string; sealNumber: string }[];

/** @throws {Refusal} at the seal of the first crate that was opened and has none */
function requireSeals(crates: readonly CrateSheet[], seals: Seals): void {
  const bare = crates.find(
    ({ id, state }) =>
      needsNewSeal(state) && !seals.some((seal) => seal.crateId === id && seal.sealNumber !== ""),
  );
  if (!bare) return;
  const index = seals.findIndex((seal) => seal.crateId === bare.id);
  const path = index < 0 ? "seals" : `seals.${index}.sealNumber`;
  throw new Refusal("invalid", "crate.seal-missing", { crate: bare.code }, [
    { path, message: "crate.seal-of-opened" },
  ]);
}

export const sendHome = command("sendHome", SendHomeInput, async (work, input) => {
  const { loanId, specimenIds: chosen, seals, carrier: named } = input;
  const loan = await takeLoan(work, loanId, "sendHome");
  const away = linesIn(loan, ...outStates);
  const known = new Set(away.map((line) => line.specimenId));
  if (chosen?.length === 0)
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "specimenIds", message: "loan.tick-what-goes" },
    ]);
  if (chosen?.some((id) => !known.has(id))) throw notFound("specimen");
  const lines = chosen === null ? away : away.filter((line) => chosen.includes(line.specimenId));
  if (lines.length === 0)
    throw new Refusal("conflict", "loan.nothing-to-send-home", { loan: loan.number, state: loan.state });
  const specimenIds = lines.map((line) => line.specimenId);
  const stage = (await stagesOf(work.transaction, loan.id)).find(({ direction }) => direction === "home");
  const carrier = stage?.carrier ?? named;
  const sealOf = new Map(seals.map((seal) => [seal.crateId, seal.sealNumber]));
  const crates = (await cratesOf(work.transaction, loan.id)).filter((crate) =>
    crate.contents.some((one) => specimenIds.includes(one.specimenId)),
  );
  requireSeals(crates, seals);
  const events = crates.flatMap(({ id: crateId, state }) => {
    const sealed: ({ crateId: string } & CrateEventNote)[] = needsNewSeal(state)
      ? [
          { crateId, kind: "packed" },
          { crateId, kind: "sealed", sealNumber: sealOf.get(crateId) ?? null },
        ]
      : [];
    return [...sealed, { crateId, kind: "handed over" as const, stageId: stage?.id ?? null }];
  });
  await writeCrateEvents(work, events);
  const reason = `loan ${loan.number}, going home`;
  if (carrier !== "")
    await writeHandovers(work, {
      specimenIds,
      toParty: carrier,
      releasedBy: work.viewer.name,
      receivedBy: carrier,
      reason,
      loanId: loan.id,
    });
  await writeMoves(work, { specimenIds, placeId: await placeOnTheWay(work), reason });
  await moveLines(work, lines, "travelling home");
  await keepDays(work, loan);
  await writeLetters(work, loan.id, "sent-home", { count: lines.length });
});
