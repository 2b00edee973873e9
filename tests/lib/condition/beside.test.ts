/** Which earlier check a check is made beside. */
import { expect, test } from "vitest";
import { checkBeside } from "#lib/condition/beside.ts";

const check = (occasion: "out" | "arrival" | "home" | "periodic", loanId: string | null = null) => ({
  occasion,
  loanId,
});

test("the latest, whatever it was for", () => {
  const arrival = check("arrival", "one");
  expect(checkBeside(check("periodic"), [arrival, check("out", "one")])).toBe(arrival);
});

test("home again, the one before it left on this loan", () => {
  const out = check("out", "two");
  const earlier = [check("arrival", "two"), out, check("home", "one"), check("out", "one")];
  expect(checkBeside(check("home", "two"), earlier)).toBe(out);
});

test("home without one before it left, the latest", () => {
  const latest = check("periodic");
  expect(checkBeside(check("home", "two"), [latest, check("out", "one")])).toBe(latest);
});

test("the first check stands beside none", () => expect(checkBeside(check("periodic"), [])).toBeNull());
