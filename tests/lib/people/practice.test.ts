import { expect, test } from "vitest";
import {
  defaultPractice,
  PracticeInput,
  practiceDefaults,
  practiceNames,
  practiceOf,
} from "#lib/people/practice.ts";
import { judgeBooking } from "#lib/suitability/rules/booking.ts";
import { judgeConsent } from "#lib/suitability/rules/general.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

test("the defaults are the figures of the trade, each with its basis", () => {
  expect(defaultPractice).toEqual({
    noticeTeachingDays: 42,
    noticeNationalDays: 182,
    noticeAbroadDays: 274,
    usualLoanDays: 366,
    usualResearchDays: 184,
    holdDays: 14,
    bufferSmallDays: 14,
    bufferCrateDays: 30,
    bufferBodyDays: 60,
    restSmallDays: 14,
    restCrateDays: 30,
    restBodyDays: 60,
    consentMarginDays: 30,
    dispositionMarginDays: 60,
    extensionNoticeDays: 30,
    recallNoticeDays: 30,
    courierCost: 50_000,
    courierJarMl: 5_000,
    courierLoans: 1,
  });
  for (const name of practiceNames) expect(practiceDefaults[name].source).not.toBe("");
});

test("what the centre leaves out stays at its default", () => {
  expect(practiceOf(undefined)).toEqual(defaultPractice);
  expect(practiceOf({ recallNoticeDays: 45, noticeAbroadDays: undefined })).toEqual({
    ...defaultPractice,
    recallNoticeDays: 45,
  });
});

test.each([[-1], [367], [2.5], [Number.NaN]])("%s days are refused", (days) => {
  expect(PracticeInput.safeParse({ recallNoticeDays: days }).success).toBe(false);
});

test("a figure that is no days has a range of its own", () => {
  expect(PracticeInput.safeParse({ courierCost: 2_000_000, courierJarMl: 20_000 }).success).toBe(true);
  expect(PracticeInput.safeParse({ courierLoans: 21 }).success).toBe(false);
  expect(PracticeInput.safeParse({ courierCost: -1 }).success).toBe(false);
});

const answered = (rule: string, practice: PracticeInput, findings: typeof judgeBooking) =>
  findings(
    aSpecimenCase({
      lastLoan: { endedOn: "2027-02-01", days: 20 },
      provenance: {
        ...aSpecimenCase().provenance,
        consents: [
          aConsentFact({
            validUntil: "2027-08-15",
            disposition: "cremation",
            dispositionDueOn: "2027-10-01",
          }),
        ],
      },
    }),
    aRequestFact({
      startsOn: "2027-03-01",
      endsOn: "2027-07-01",
      requestedOn: "2026-12-01",
      today: "2026-12-01",
      practice: practiceOf(practice),
    }),
  ).find((one) => one.rule === rule)?.outcome;

test.each([
  ["B4", judgeBooking, { noticeTeachingDays: 90 }, { noticeTeachingDays: 91 }, "attend"],
  ["B5", judgeBooking, { usualLoanDays: 122 }, { usualLoanDays: 121 }, "attend"],
  [
    "B6",
    judgeBooking,
    { restSmallDays: 28, restCrateDays: 28 },
    { restSmallDays: 29, restCrateDays: 29 },
    "attend",
  ],
  ["G4", judgeConsent, { consentMarginDays: 45 }, { consentMarginDays: 46 }, "bar"],
  ["G12", judgeConsent, { dispositionMarginDays: 92 }, { dispositionMarginDays: 93 }, "bar"],
] as const)("%s counts with the centre's figure, to the day", (rule, judge, within, beyond, outcome) => {
  expect(answered(rule, within, judge)).toBe("clear");
  expect(answered(rule, beyond, judge)).toBe(outcome);
});
