/** A walk by the dice through some loans, in all roles: no line makes a move outside of the table. */
import { beforeAll, expect, test } from "vitest";
import { testDatabase } from "#tests/support/database.ts";
import { aLending } from "#tests/support/lending.ts";
import { startClock } from "#tests/support/loan-walk.ts";
import { aCast, type Cast, diceOf, walkAtRandom } from "#tests/support/random-walk.ts";

let cast: Cast;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  cast = await aCast(await aLending());
});

test("whoever does what in whatever order, states stay in their table", async () => {
  const walked = await walkAtRandom(cast, 3, 90);
  console.log(walked);
  expect(walked.faults).toEqual([]);
  expect(walked.done).toBeGreaterThan(15);
  expect(walked.refused).toBeGreaterThan(15);
  expect(walked.moves.size).toBeGreaterThan(5);
}, 120_000);

test("the dice fall the same again from the same seed, and stay between 0 and 1", () => {
  const [first, second, other] = [diceOf(7), diceOf(7), diceOf(8)];
  const falls = Array.from({ length: 200 }, () => first());
  expect(falls).toEqual(Array.from({ length: 200 }, () => second()));
  expect(falls).not.toEqual(Array.from({ length: 200 }, () => other()));
  expect(falls.every((fall) => fall >= 0 && fall < 1)).toBe(true);
});
