import { describe, expect, test } from "vitest";
import { scopes } from "#lib/provenance/schema.ts";
import { type ConsentRow, toConsent, toConsentFacts, toPermit, toTitle } from "#lib/provenance/stored.ts";

const row: ConsentRow = {
  id: "01920000-0000-7000-8000-000000000001",
  donorCode: "D-4K7QX",
  basis: "will",
  formVersion: "1998",
  signedOn: new Date("1998-02-03"),
  witnessCount: null,
  evidencePlace: "Donor archive",
  audience: "unknown",
  territoriesAllowed: ["NO"],
  territoriesRefused: [],
  validUntil: null,
  reviewDueOn: new Date("2030-01-01"),
  nonCommercialOnly: true,
  identifiable: false,
  withdrawalReceivedOn: new Date("2026-05-06"),
  withdrawalEffectiveOn: null,
  disposition: "burial",
  dispositionDueOn: new Date("2035-12-31"),
  verifiedBy: null,
  verifiedOn: null,
  supersededById: null,
  recordedAt: new Date("2026-01-01T10:00:00Z"),
  answers: [
    { consentId: "01920000-0000-7000-8000-000000000001", scope: "research", answer: "granted" },
    { consentId: "01920000-0000-7000-8000-000000000001", scope: "export", answer: "refused" },
  ],
};

describe("a consent read back", () => {
  test("leaves every scope that the form did not answer unknown", () => {
    const { answers } = toConsent(row);
    expect(Object.keys(answers).sort()).toEqual([...scopes].sort());
    expect(answers.research).toBe("granted");
    expect(answers.export).toBe("refused");
    expect(Object.values(answers).filter((answer) => answer === "unknown")).toHaveLength(scopes.length - 2);
  });

  test("gives rules its days and limits, and nothing of the paper itself", () => {
    const facts = toConsentFacts(row);
    expect(facts).toMatchObject({
      consentId: row.id,
      donorCode: "D-4K7QX",
      reviewDueOn: "2030-01-01",
      withdrawalReceivedOn: "2026-05-06",
      withdrawalEffectiveOn: null,
      dispositionDueOn: "2035-12-31",
      nonCommercialOnly: true,
    });
    expect(facts).toHaveProperty("signedOn");
    expect(facts).toHaveProperty("witnessCount", null);
    for (const key of ["evidencePlace", "formVersion", "verifiedBy"]) expect(facts).not.toHaveProperty(key);
  });

  test("is not read past what does not fit the words", () => {
    expect(() => toConsent({ ...row, audience: "everybody" })).toThrow();
  });
});

test("permits and titles come back with calendar days", () => {
  const specimenId = "01920000-0000-7000-8000-000000000002";
  const stated = {
    kind: "import",
    number: "77/26",
    authority: "Veterinary office",
    territories: [],
  } as const;
  const permit = {
    id: row.id,
    specimenId,
    ...stated,
    territories: [],
    validFrom: null,
    validUntil: new Date("2026-12-31"),
    withdrawnOn: null,
    withdrawnBecause: "",
  };
  expect(toPermit(permit)).toEqual({
    id: row.id,
    ...stated,
    validFrom: null,
    validUntil: "2026-12-31",
    withdrawnOn: null,
    withdrawnBecause: "",
  });
  const takenBack = { withdrawnOn: new Date("2026-06-01"), withdrawnBecause: "Revoked by the office." };
  expect(toPermit({ ...permit, ...takenBack })).toMatchObject({
    validUntil: "2026-12-31",
    withdrawnOn: "2026-06-01",
    withdrawnBecause: "Revoked by the office.",
  });
  expect(
    toTitle({
      specimenId,
      status: "owned",
      ownerName: "",
      leaveToLend: false,
      leaveReference: "",
      recordedOn: new Date("2020-02-29"),
    }).recordedOn,
  ).toBe("2020-02-29");
});
