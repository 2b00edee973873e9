/** What a draft of a request still lacks before it can be submitted. */
import { expect, test } from "vitest";
import { missingFieldsOf, RequestDraft } from "#lib/loans/inputs.ts";
import { aRequestDraft, type Lending } from "#tests/support/lending.ts";

const lending = { venueId: "01920000-0000-7000-8000-000000000301" } as Lending;
const whole = { ...aRequestDraft(lending), factsConfirmed: true };

test("a request that is stated whole lacks nothing", () => {
  expect(missingFieldsOf(RequestDraft.parse(whole))).toEqual([]);
});

test("each field that is missing is named once", () => {
  const draft = RequestDraft.parse({ ...whole, purpose: "", contactName: "", factsConfirmed: false });
  expect(missingFieldsOf(draft).sort()).toEqual(["contactName", "factsConfirmed", "purpose"]);
});
