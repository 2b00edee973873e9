/** Who speaks for which office. */
import { expect, test } from "vitest";
import { officesOf } from "#lib/loans/offices.ts";
import { roles } from "#lib/people/viewer.ts";

test("the registrar speaks for no office", () => {
  expect(officesOf({ roles: ["registrar"] })).toEqual([]);
});

test("the curator decides, the donor officer speaks for donors and writes down the oversight body's word", () => {
  expect(officesOf({ roles: ["curator"] })).toEqual(["curator"]);
  expect(officesOf({ roles: ["donor officer"] })).toEqual(["donor officer", "oversight body"]);
});

test("the conservator speaks for the condition alone", () => {
  expect(officesOf({ roles: ["conservator"] })).toEqual(["conservator"]);
  expect(officesOf({ roles: ["curator", "conservator"] })).toEqual(["curator", "conservator"]);
});

test("who has two roles speaks for the offices of both, each once", () => {
  expect(officesOf({ roles: ["collection manager", "donor officer"] })).toEqual([
    "curator",
    "donor officer",
    "oversight body",
  ]);
});

test("nobody who borrows, inspects or administers speaks for an office", () => {
  const silent = roles.filter((role) => officesOf({ roles: [role] }).length === 0);
  expect(silent).toEqual(["registrar", "inspector", "administrator", "lecturer", "borrower registrar"]);
});
