/**
 * The one table of moves a loan line may make. The database holds the same table
 * and refuses every other move; a test compares the two.
 *
 *   noted ──submit──▸ requested ──decide──▸ accepted ──seal──▸ packed ──dispatch──▸ travelling out
 *     │                  │  └─decide──▸ declined  ▲  └─withdraw     │unpack            │ receive
 *     └──────────withdraw┴──▸ withdrawn ◂─────────┴─────────────────┘                  ▼
 *                                                                             resting at venue
 *   closed ◂─close── checked in ◂─check in── resting at home ◂─receive── travelling home ◂─┐  │ open
 *                                                                             ▲             │  ▼
 *   missing: from every state away from home; found again, it travels home    └──send home── at venue
 */
import { type LineState, lineStates } from "#lib/loans/schema.ts";

export const lineMoves: Record<LineState, readonly LineState[]> = {
  noted: ["requested", "withdrawn"],
  requested: ["accepted", "declined", "withdrawn"],
  accepted: ["packed", "withdrawn"],
  packed: ["travelling out", "accepted"],
  "travelling out": ["resting at venue", "travelling home", "missing"],
  "resting at venue": ["at venue", "travelling home", "missing"],
  "at venue": ["travelling home", "missing"],
  "travelling home": ["resting at home", "missing"],
  "resting at home": ["checked in", "missing"],
  "checked in": ["closed"],
  closed: [],
  declined: [],
  withdrawn: [],
  missing: ["travelling home", "resting at home"],
};

/** The table as rows, as the database holds it. */
export const lineMoveRows = lineStates.flatMap((fromState) =>
  lineMoves[fromState].map((toState) => ({ fromState, toState })),
);

export function mayMove(from: LineState, to: LineState): boolean {
  return lineMoves[from].includes(to);
}

/** Away, and not on the way home. */
export const outStates: readonly LineState[] = ["travelling out", "resting at venue", "at venue"];

/** States in which a specimen is out of the house. */
export const awayStates: readonly LineState[] = [...outStates, "travelling home", "missing"];

/** Back in the house. */
export const homeStates: readonly LineState[] = ["resting at home", "checked in", "closed"];

/** States that end a line's claim on the calendar. */
export const endedStates: readonly LineState[] = ["closed", "declined", "withdrawn"];
