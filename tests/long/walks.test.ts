/** Many walks by the dice through loans in all roles, each with other dice: states never leave their table. */
import { beforeAll, expect, test } from "vitest";
import { lineMoveRows } from "#lib/loans/transitions.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLending } from "#tests/support/lending.ts";
import { startClock } from "#tests/support/loan-walk.ts";
import { aCast, type Cast, walkAtRandom } from "#tests/support/random-walk.ts";

let cast: Cast;
const moves = new Set<string>();
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  cast = await aCast(await aLending());
});

const seeds = Array.from({ length: 12 }, (_none, index) => index + 101);

test.each(seeds)("the walk of seed %i", async (seed) => {
  startClock();
  const walked = await walkAtRandom(cast, seed, 150);
  expect(walked.faults).toEqual([]);
  expect(walked.refused).toBeGreaterThan(20);
  for (const move of walked.moves) moves.add(move);
});

test("together they made nearly every move that there is, and none besides", () => {
  const all = lineMoveRows.map(({ fromState, toState }) => `${fromState} > ${toState}`);
  expect([...moves].filter((move) => !all.includes(move))).toEqual([]);
  expect(all.filter((move) => !moves.has(move)).length, [...moves].sort().join("; ")).toBeLessThan(9);
});
