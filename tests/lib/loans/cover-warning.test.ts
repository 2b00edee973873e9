import { expect, test } from "vitest";
import { coverWarningOf } from "#lib/loans/cover-warning.ts";

test.each([
  [61, null],
  [60, 60],
  [31, 60],
  [30, 30],
  [8, 30],
  [7, 7],
  [0, 7],
  [-1, 7],
])("%i days ahead it is %j", (days, warning) => expect(coverWarningOf(days)).toBe(warning));
