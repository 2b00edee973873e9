/**
 * Random walks through a loan: each step is some command by somebody in some role, as
 * often as not one that does not fit. What is refused changes nothing, who may not act
 * is refused, and no line ever makes a move outside of the table of moves. The dice are
 * given by a seed, so that a walk can be walked again.
 */
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { type LineState, lineStates } from "#lib/loans/schema.ts";
import { endedStates, lineMoves } from "#lib/loans/transitions.ts";
import { acts } from "#lib/people/permission.ts";
import { type Role, roles, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { aMandate, aViewer, type Made } from "#tests/support/builders.ts";
import { aLendableSpecimen, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { passHours } from "#tests/support/loan-walk.ts";
import { oneOf, type Situation, type Step, steps } from "#tests/support/random-steps.ts";

/** Numbers from 0 to 1 that follow from a seed (mulberry32, from memory). */
export function diceOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export type Cast = { lending: Lending; people: ReadonlyMap<Role, Viewer>; more: readonly Made[] };

/** One person in each role, and specimens beyond those that a loan begins with. */
export async function aCast(lending: Lending): Promise<Cast> {
  const known: Partial<Record<Role, Viewer>> = {
    registrar: lending.registrar,
    curator: lending.curator,
    conservator: lending.conservator,
    "collection manager": lending.manager,
    "donor officer": lending.donorOfficer,
    lecturer: lending.lecturer,
    "borrower registrar": lending.borrowerRegistrar,
  };
  const people = new Map(roles.map((role) => [role, known[role] ?? aViewer(role)] as const));
  await aMandate(lending.conservator);
  return { lending, people, more: [await aLendableSpecimen(lending)] };
}

/** Time goes on with the walk: to the days that are kept for the loan while it is prepared, else by a day or two. */
function passTime({ loan, dice }: Situation): void {
  const daysUntil = (Date.parse(loan.busy.startsOn) - Date.parse(today())) / 86_400_000;
  const isPrepared = loan.state === "agreed" || loan.state === "preparing";
  if (isPrepared && daysUntil > 0) passHours(24 * daysUntil);
  else if (!isPrepared && dice() < 0.4) passHours(48);
}

/** What ends a loan before it has begun is tried now and then only, or no walk would get far. */
const isNoEnd =
  (dice: () => number) =>
  ({ act }: Step): boolean =>
    (act !== "withdrawRequest" && act !== "removeSpecimen") || dice() < 0.15;

const statesOf = async (loanId: string): Promise<Map<string, string>> => {
  const rows = await database().loanLine.findMany({
    where: { loanId },
    select: { specimenId: true, state: true },
  });
  return new Map(rows.map(({ specimenId, state }) => [specimenId, state]));
};

const isState = (state: string | undefined): state is LineState =>
  (lineStates as readonly string[]).includes(state ?? "");

/** Lines that are in another state than before. */
function movesBetween(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): [string, string][] {
  return [...after].flatMap(([specimenId, state]): [string, string][] => {
    const earlier = before.get(specimenId);
    return earlier === undefined || earlier === state ? [] : [[earlier, state]];
  });
}

export type Walked = {
  /** What was wrong, in words with the number of the step. */
  faults: string[];
  moves: Set<string>;
  reached: Set<string>;
  done: number;
  refused: number;
};

/** Steps that are still tried on a loan that has ended, before the next one is opened. */
const STEPS_AFTER_END = 4;

/** @param most so many steps, over as many loans as come to their end */
export async function walkAtRandom(
  { lending, people, more }: Cast,
  seed: number,
  most: number,
): Promise<Walked> {
  const dice = diceOf(seed);
  const walked: Walked = { faults: [], moves: new Set(), reached: new Set(), done: 0, refused: 0 };
  const open = async () => {
    const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending, { title: "Foot" })];
    const { id: loanId } = await openLoan(lending.lecturer, {
      borrowerId: null,
      request: aRequestDraft(lending),
      specimenIds: specimens.map((specimen) => specimen.id),
    });
    return loanId;
  };
  let id = await open();
  const loans = [id];
  let stepsAfterEnd = 0;
  const everybody = [...people, ["lecturer", lending.stranger] as const];

  for (let number = 1; number <= most; number += 1) {
    if (stepsAfterEnd > STEPS_AFTER_END) {
      id = await open();
      loans.push(id);
      stepsAfterEnd = 0;
    }
    const loan = await getLoan(lending.registrar, id);
    const situation = { loan, lending, more, dice };
    const fitting = steps.filter(({ fits }) => fits(situation));
    const step = oneOf(dice() < 0.85 && fitting.length > 0 ? fitting : steps.filter(isNoEnd(dice)), dice);
    if (step === undefined) continue;
    const able = everybody.filter(
      ([role, who]) => who !== lending.stranger && (acts[step.act] as readonly Role[]).includes(role),
    );
    const [role, viewer] = oneOf(dice() < 0.85 ? able : everybody, dice) ?? ["registrar", lending.registrar];
    const mayAct = (acts[step.act] as readonly Role[]).includes(role) && viewer !== lending.stranger;
    const name = `seed ${seed}, step ${number}: ${step.act} as ${viewer === lending.stranger ? "stranger" : role}`;

    const before = await statesOf(id);
    let answer = "done";
    try {
      await step.run(viewer, situation);
    } catch (error) {
      if (!(error instanceof Refusal)) throw new Error(`${name} is no refusal`, { cause: error });
      answer = error.kind;
    }
    const after = await statesOf(id);
    const moves = movesBetween(before, after);
    if (answer === "done") walked.done += 1;
    else walked.refused += 1;
    if (answer !== "done" && (moves.length > 0 || before.size !== after.size))
      walked.faults.push(`${name} was refused and changed ${JSON.stringify(moves)}`);
    if (answer === "done" && !mayAct) walked.faults.push(`${name} was done`);
    for (const state of after.values()) {
      walked.reached.add(state);
      if (!isState(state)) walked.faults.push(`${name} led to ${state}`);
    }
    if ([...after.values()].every((state) => isState(state) && endedStates.includes(state)))
      stepsAfterEnd += 1;
    passTime(situation);
  }
  for (const loanId of loans) await holdMovesAgainstTable(loanId, seed, walked);
  return walked;
}

/** Every single move of the loan's lines, as the audit wrote it down. */
async function holdMovesAgainstTable(loanId: string, seed: number, walked: Walked): Promise<void> {
  const entries = await database().auditEntry.findMany({
    where: { tableName: "loan_line", operation: "update", after: { path: ["loan_id"], equals: loanId } },
    select: { act: true, before: true, after: true },
  });
  const stateIn = (row: unknown) => (row as { state?: string } | null)?.state;
  for (const { act, before, after } of entries) {
    const [from, to] = [stateIn(before), stateIn(after)];
    if (from === to) continue;
    walked.moves.add(`${from} > ${to}`);
    if (!isState(from) || !isState(to) || !lineMoves[from].includes(to))
      walked.faults.push(`seed ${seed}: ${act} moved ${from} to ${to}`);
  }
}
