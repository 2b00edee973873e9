/**
 * How two plates of one kind come to differ without a die being thrown: a seed
 * text (an accession number) is hashed, and the hash gives a fixed row of numbers.
 * The same seed always gives the same row, so a specimen's drawing never changes.
 */
import type { Point } from "#lib/specimens/drawing/pen.ts";

export type Variation = {
  /** The next number of the row, 0 up to but not including 1. */
  share(): number;
  within(low: number, high: number): number;
  whole(low: number, high: number): number;
  chance(odds: number): boolean;
  pick<Item>(items: readonly [Item, ...Item[]]): Item;
  /** Points moved a little, each by at most `by`. */
  loosen(points: readonly Point[], by: number): Point[];
};

/** FNV-1a over UTF-16 units: small, even, and the same on every machine. */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}

export function variation(seed: string): Variation {
  let state = hashText(seed);
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const within = (low: number, high: number): number => low + (high - low) * share();
  return {
    share,
    within,
    whole: (low, high) => Math.min(high, Math.floor(within(low, high + 1))),
    chance: (odds) => share() < odds,
    pick: (items) => items[Math.floor(share() * items.length)] ?? items[0],
    loosen: (points, by) =>
      points.map((point) => [point[0] + within(-by, by), point[1] + within(-by, by)] as const),
  };
}
