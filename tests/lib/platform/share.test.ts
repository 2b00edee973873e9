/** A share lies between nothing and the whole, and what is wrong with it is said once. */
import { expect, test } from "vitest";
import { Share } from "#lib/platform/share.ts";

test.each([0, 0.45, 1])("%d is a share", (share) => {
  expect(Share.safeParse(share).success).toBe(true);
});

test.each([-0.01, 1.5, 45])("%d is none", (share) => {
  expect(Share.safeParse(share).error?.issues.map(({ message }) => message)).toEqual(["share.range"]);
});
