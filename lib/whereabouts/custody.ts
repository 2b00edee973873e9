/**
 * Custody from the chain of hand-overs: who has a specimen is the last receiver,
 * and the next hand-over begins where the last one ended. A chain is numbered
 * from 1 without gaps, starts from nobody, and never goes back in time; the
 * database refuses what would break it.
 */
import type { Handover } from "#lib/whereabouts/schema.ts";

type Link = Pick<Handover, "sequence" | "fromParty" | "toParty" | "handedOverAt">;

/** Who has it, or null while no chain has begun. */
export function holderOf(chain: readonly Pick<Handover, "sequence" | "toParty">[]): string | null {
  let last: Pick<Handover, "sequence" | "toParty"> | undefined;
  for (const link of chain) if (last === undefined || link.sequence > last.sequence) last = link;
  return last?.toParty ?? null;
}

/** Who had it at a moment, or null before the first hand-over. */
export function holderAt(chain: readonly Link[], moment: Date): string | null {
  return holderOf(chain.filter((link) => link.handedOverAt.getTime() <= moment.getTime()));
}

/** The numbers of the hand-overs that do not begin where the one before ended. */
export function brokenLinks(chain: readonly Link[]): number[] {
  const ordered = [...chain].sort((first, second) => first.sequence - second.sequence);
  return ordered.flatMap((link, index) => {
    const before = ordered[index - 1];
    const holds = before
      ? link.sequence === before.sequence + 1 &&
        link.fromParty === before.toParty &&
        link.handedOverAt.getTime() >= before.handedOverAt.getTime()
      : link.sequence === 1 && link.fromParty === null;
    return holds ? [] : [link.sequence];
  });
}

/** The house by the name it has and by those it had; custody is written by name and never changed. */
export type House = { name: string; formerNames: readonly string[] };

/** Whether a specimen is in the house: handed to it, under whichever of its names, or never handed to anybody. */
export function isInHouse(holder: string | null, house: House): boolean {
  return holder === null || holder === house.name || house.formerNames.includes(holder);
}

/**
 * The links that a hand-over to a party adds: none when the party has it already.
 * A chain that has not begun first states in whose house it begins.
 */
export function handoverLinks(
  last: { sequence: number; toParty: string } | null,
  toParty: string,
  houseNow: House,
): { sequence: number; fromParty: string | null; toParty: string; opens: boolean }[] {
  const house = houseNow.name;
  if (last) {
    const staysInHouse = toParty === house && isInHouse(last.toParty, houseNow);
    if (last.toParty === toParty || staysInHouse) return [];
    return [{ sequence: last.sequence + 1, fromParty: last.toParty, toParty, opens: false }];
  }
  const opening = { sequence: 1, fromParty: null, toParty: house, opens: true };
  if (toParty === house) return [{ ...opening, opens: false }];
  return [opening, { sequence: 2, fromParty: house, toParty, opens: false }];
}
