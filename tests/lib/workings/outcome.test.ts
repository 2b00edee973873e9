/** The strictest answer rules, in whatever order the answers come. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { outcomes, strictestOutcome } from "#lib/workings/outcome.ts";

test("nothing asked is nothing against it", () => {
  expect(strictestOutcome([])).toBe("clear");
});

test("the strictest of any answers is the last of them in the order clear, attend, bar", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...outcomes), { minLength: 1 }), (answers) => {
      const last = Math.max(...answers.map((answer) => outcomes.indexOf(answer)));
      expect(strictestOutcome(answers)).toBe(outcomes[last]);
    }),
  );
});
