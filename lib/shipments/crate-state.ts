/**
 * Where a crate stands, derived from its events and never stored: the last event
 * that is known decides. Events are append-only, so a crate that was opened and
 * packed again for the way home has two rounds, and the later one counts.
 */
import { Refusal } from "#lib/platform/refusal.ts";
import type { CrateEventKind, CrateState } from "#lib/shipments/schema.ts";

type Happened = { kind: CrateEventKind; notBefore: string | null };

const stateAfter: Record<CrateEventKind, CrateState> = {
  packed: "packed",
  sealed: "sealed",
  "handed over": "with the carrier",
  arrived: "resting closed",
  opened: "opened",
  emptied: "empty",
};

/** @param events in the order in which they happened */
export function crateState(events: readonly Pick<Happened, "kind">[]): CrateState {
  const last = events.at(-1);
  return last ? stateAfter[last.kind] : "planned";
}

/** The moment before which the crate stays closed; null when it is not resting. */
export function notBeforeOf(events: readonly Happened[]): string | null {
  const last = events.at(-1);
  return last?.kind === "arrived" ? last.notBefore : null;
}

/** What may follow what; a crate travels only sealed and is unpacked only after it arrived. Packed anew, it wants a new seal. */
const follows: Record<CrateState, readonly CrateEventKind[]> = {
  planned: ["packed"],
  packed: ["packed", "sealed"],
  sealed: ["handed over", "packed"],
  "with the carrier": ["handed over", "arrived"],
  "resting closed": ["arrived", "opened", "handed over"],
  opened: ["emptied", "packed"],
  empty: ["packed"],
};

export function mayHappen(state: CrateState, kind: CrateEventKind): boolean {
  return follows[state].includes(kind);
}

/** @throws {Refusal} "crate.not-now" when the crate's state does not let it happen */
export function requireMayHappen(crate: { code: string; state: CrateState }, kind: CrateEventKind): void {
  if (!mayHappen(crate.state, kind))
    throw new Refusal("conflict", "crate.not-now", { crate: crate.code, state: crate.state, kind });
}

/** Whether a crate that is to travel on is open, so that it is packed and sealed anew; on its way or at rest it is closed. */
export function needsNewSeal(state: CrateState): boolean {
  return state !== "with the carrier" && state !== "resting closed";
}

/** A seal is intact on the way only if every arrival since it was set says so; null when nobody looked. */
export function sealHolds(
  events: readonly { kind: CrateEventKind; sealIntact: boolean | null }[],
): boolean | null {
  const sealedAt = events.map((event) => event.kind).lastIndexOf("sealed");
  const looks = events
    .slice(sealedAt + 1)
    .flatMap(({ sealIntact }) => (sealIntact === null ? [] : [sealIntact]));
  if (looks.length === 0) return null;
  return looks.every(Boolean);
}
