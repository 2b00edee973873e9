/**
 * Numbers for a large collection: an even spread that looks like chance and is
 * always the same, ids that sort in the order of making, accession numbers of the
 * centre's pattern.
 */

/** A whole number from 0 up to, not including, `below`, by a number and a salt. */
export function spread(index: number, salt: number, below: number): number {
  let hash = Math.imul(index + 0x9e37_79b9, 0x85eb_ca6b) ^ Math.imul(salt + 1, 0xc2b2_ae35);
  hash = Math.imul(hash ^ (hash >>> 16), 0x7feb_352d);
  hash = Math.imul(hash ^ (hash >>> 15), 0x846c_a68b);
  return ((hash ^ (hash >>> 16)) >>> 0) % below;
}

const hex = (value: number, digits: number) => value.toString(16).padStart(digits, "0");

/** Ids of one kind of row in one run: UUIDs of version 7 in rising order. */
export function idMaker(beganAtMs: number, kind: number): (index: number) => string {
  return (index) => {
    const time = hex(beganAtMs + Math.floor(index / 4096), 12);
    const low = hex(spread(index, kind, 0x1_0000_0000 - 1), 8);
    return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(index % 4096, 3)}-8${hex(kind, 3)}-${low}${hex(spread(index, kind + 50, 65_536), 4)}`;
  };
}

export const firstYear = 1_900;
export const lastYear = 2_024;
const numbersOfYear = 10_000;

/** "AN 1987.0042" and so on, year by year, without those that are taken. */
export function accessionNumbers(count: number, taken: ReadonlySet<string>): string[] {
  const years = lastYear - firstYear + 1;
  if (!(count >= 0 && count <= years * numbersOfYear - taken.size))
    throw new RangeError(
      `The pattern of accession numbers has room for ${years * numbersOfYear - taken.size} more.`,
    );
  const ofEachYear = Math.ceil(count / years);
  const numbers: string[] = [];
  for (let year = firstYear; year <= lastYear && numbers.length < count; year += 1) {
    let made = 0;
    for (let number = 0; number < numbersOfYear && made < ofEachYear && numbers.length < count; number += 1) {
      const text = `AN ${year}.${String(number).padStart(4, "0")}`;
      if (taken.has(text)) continue;
      numbers.push(text);
      made += 1;
    }
  }
  // Years that were full already leave some over; the later ones have room.
  for (let year = lastYear; numbers.length < count; year -= 1)
    for (
      let number = numbersOfYear - 1;
      number >= ofEachYear + taken.size && numbers.length < count;
      number -= 1
    ) {
      const text = `AN ${year}.${String(number).padStart(4, "0")}`;
      if (!taken.has(text)) numbers.push(text);
    }
  return numbers;
}
