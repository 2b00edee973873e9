import { expect, test } from "vitest";
import { tickBox } from "#lib/papers/tick-box.ts";

test("a box is square, says what ticking it means, and lies within its drawing", () => {
  const box = tickBox("same", 12);
  expect(box).toMatchObject({ widthPt: 12, heightPt: 12, alternative: "same" });
  expect(tickBox("worse").heightPt).toBe(9);
});
