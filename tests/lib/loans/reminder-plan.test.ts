/** Which step of the ladder a loan has come to, and what letter it is. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { letterPlan } from "#lib/loans/letters.ts";
import {
  defaultReminders,
  isLastStep,
  letterOfStep,
  ReminderPlan,
  stepToTake,
} from "#lib/loans/reminder-plan.ts";
import { addDays } from "#lib/platform/dates.ts";

const loan = { startsOn: "2027-01-04", endsOn: "2027-06-01", taken: [] as number[] };

test.each([
  ["2027-04-01", null],
  ["2027-04-02", -60],
  ["2027-05-02", -30],
  ["2027-05-18", -14],
  ["2027-05-29", -3],
  ["2027-06-01", 0],
  ["2027-06-04", 3],
  ["2027-06-08", 7],
  ["2027-06-15", 14],
  ["2028-06-15", 14],
])("on %s the step is %s", (today, step) => {
  expect(stepToTake(defaultReminders, loan, today)).toBe(step);
});

test("a step that was taken, or a later one, is not taken again", () => {
  expect(stepToTake(defaultReminders, { ...loan, taken: [-60] }, "2027-05-01")).toBeNull();
  expect(stepToTake(defaultReminders, { ...loan, taken: [-60] }, "2027-05-02")).toBe(-30);
  expect(stepToTake(defaultReminders, { ...loan, taken: [3] }, "2027-06-01")).toBeNull();
});

test("what would have been said before the delivery is not said after it", () => {
  const short = { startsOn: "2027-05-10", endsOn: "2027-06-01", taken: [] };
  expect(stepToTake(defaultReminders, short, "2027-05-11")).toBeNull();
  expect(stepToTake(defaultReminders, short, "2027-05-18")).toBe(-14);
});

test("day by day each step is taken once, and with days left out only steps that have come", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: -365, max: 365 }), { minLength: 1, maxLength: 16 }),
      fc.array(fc.boolean(), { minLength: 800, maxLength: 800 }),
      (days, awake) => {
        const plan = ReminderPlan.parse({ days });
        const taken: number[] = [];
        for (let day = 0; day < 800; day += 1) {
          const today = addDays(loan.endsOn, day - 400);
          if (!awake[day]) continue;
          const step = stepToTake(plan, { ...loan, startsOn: "2020-01-01", taken }, today);
          if (step === null) continue;
          expect(taken).not.toContain(step);
          expect(addDays(loan.endsOn, step) <= today).toBe(true);
          taken.push(step);
        }
        expect(taken).toEqual([...taken].sort((one, other) => one - other));
        if (awake.every(Boolean)) expect(taken).toEqual(plan.days);
      },
    ),
    { numRuns: 25 },
  );
});

test("a program that runs every day takes every step", () => {
  const taken: number[] = [];
  for (let day = -100; day < 40; day += 1) {
    const step = stepToTake(defaultReminders, { ...loan, taken }, addDays(loan.endsOn, day));
    if (step !== null) taken.push(step);
  }
  expect(taken).toEqual(defaultReminders.days);
});

test("letters grow in weight and go further up", () => {
  expect(defaultReminders.days.map((shift) => letterOfStep(defaultReminders, shift))).toEqual([
    "reminder-ahead",
    "reminder-ahead",
    "reminder-ahead",
    "reminder-ahead",
    "reminder-today",
    "reminder-overdue",
    "reminder-urgent",
    "reminder-last",
  ]);
  expect(letterPlan["reminder-ahead"].to).not.toContain("borrower registrars");
  expect(letterPlan["reminder-overdue"].to).toContain("borrower registrars");
  expect(letterPlan["reminder-overdue"].to).not.toContain("institution");
  expect(letterPlan["reminder-urgent"].to).toEqual(expect.arrayContaining(["institution", "registrars"]));
});

test("only a step after the return-by day can be the last", () => {
  expect(isLastStep(defaultReminders, 14)).toBe(true);
  expect(isLastStep(defaultReminders, 7)).toBe(false);
  expect(isLastStep({ days: [-14, -3] }, -3)).toBe(false);
});

test("days are sorted, whole, within a year and named once", () => {
  expect(ReminderPlan.parse({ days: [7, -30, 0] })).toEqual({ days: [-30, 0, 7] });
  for (const days of [[], [1.5], [400], [3, 3], [Number.NaN]])
    expect(ReminderPlan.safeParse({ days }).success, String(days)).toBe(false);
});
