import { describe, expect, test } from "vitest";
import type { z } from "zod";
import {
  ConsentInput,
  SealedLookInput,
  SealedRecordInput,
  SpecimenPermitInput,
  SpecimenTitleInput,
  WithdrawalInput,
} from "#lib/provenance/schema.ts";
import { aConsentForm } from "#tests/support/consents.ts";

const specimenId = "01920000-0000-7000-8000-000000000001";
const title = {
  specimenId,
  status: "owned",
  ownerName: "",
  leaveToLend: false,
  leaveReference: "",
  recordedOn: "2026-02-01",
};
const permit = {
  specimenId,
  kind: "import",
  number: "77/26",
  authority: "Authority",
  territories: [],
  validFrom: "2026-01-01",
  validUntil: "2026-12-31",
};
const person = {
  donorCode: "D-4K7QX",
  fullName: "Ada Invented",
  bornOn: null,
  diedOn: null,
  kin: "",
  documentPlace: "",
};

describe("what a form may not say", () => {
  const rows: [what: string, schema: z.ZodType, input: unknown, path: string, code: string][] = [
    [
      "a country both allowed and refused",
      ConsentInput,
      aConsentForm("D-4K7QX", { territoriesAllowed: ["NO", "DE"], territoriesRefused: ["NO"] }),
      "territoriesRefused",
      "consent.country-both-ways",
    ],
    [
      "an end before the signature",
      ConsentInput,
      aConsentForm("D-4K7QX", { signedOn: "2020-01-02", validUntil: "2020-01-01" }),
      "validUntil",
      "consent.ends-before-signed",
    ],
    ["a code that is none", ConsentInput, aConsentForm("D-4k7"), "donorCode", "donor.code-pattern"],
    [
      "a country in words",
      ConsentInput,
      aConsentForm("D-4K7QX", { territoriesAllowed: ["Norway"] }),
      "territoriesAllowed.0",
      "country.two-letters",
    ],
    [
      "a withdrawal in effect before it came in",
      WithdrawalInput,
      { donorCode: "D-4K7QX", receivedOn: "2026-03-02", effectiveOn: "2026-03-01" },
      "effectiveOn",
      "consent.effective-too-early",
    ],
    [
      "a permit that ends before it begins",
      SpecimenPermitInput,
      { ...permit, validUntil: "2025-12-31" },
      "validUntil",
      "permit.period-reversed",
    ],
    [
      "a deposit of nobody",
      SpecimenTitleInput,
      { ...title, status: "deposit" },
      "ownerName",
      "title.owner-missing",
    ],
    [
      "leave to lend without its paper",
      SpecimenTitleInput,
      { ...title, status: "loan-in", ownerName: "A museum", leaveToLend: true },
      "leaveReference",
      "title.leave-unproven",
    ],
    [
      "a death before the birth",
      SealedRecordInput,
      { ...person, bornOn: "1950-01-02", diedOn: "1950-01-01" },
      "diedOn",
      "donor.dates-reversed",
    ],
    [
      "a look without a reason",
      SealedLookInput,
      { donorCode: "D-4K7QX", reason: "   because   " },
      "reason",
      "donor.reason-missing",
    ],
  ];
  test.each(rows)("%s", (_what, schema, input, path, code) => {
    const result = schema.safeParse(input);
    expect(result.error?.issues.map((issue) => [issue.path.join("."), issue.message])).toEqual([
      [path, code],
    ]);
  });

  test("an answer missing for one scope", () => {
    const form = aConsentForm("D-4K7QX");
    const { export: _, ...others } = form.answers;
    expect(ConsentInput.safeParse({ ...form, answers: others }).success).toBe(false);
  });
});

test("parsing a parsed value changes nothing", () => {
  for (const [schema, input] of [
    [ConsentInput, aConsentForm("D-4K7QX", { evidencePlace: "  archive  " })],
    [SpecimenPermitInput, permit],
    [SpecimenTitleInput, title],
    [SealedRecordInput, person],
  ] as const) {
    const once = schema.parse(input);
    expect(schema.parse(once)).toEqual(once);
  }
});
