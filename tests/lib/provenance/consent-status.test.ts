import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ConsentDates, type ConsentState, consentStatusOn } from "#lib/provenance/consent-status.ts";
import { anyConsent, anyDay } from "#tests/support/consents.ts";

const never = {
  validUntil: null,
  reviewDueOn: null,
  withdrawalReceivedOn: null,
  withdrawalEffectiveOn: null,
};

describe("a consent on a day", () => {
  const rows: [
    what: string,
    dates: Partial<ConsentDates>,
    day: string,
    state: ConsentState,
    endsOn: string | null,
  ][] = [
    ["without limits is in force", {}, "2027-03-01", "in force", null],
    ["holds on its last day", { validUntil: "2027-06-30" }, "2027-06-30", "in force", "2027-07-01"],
    ["is over on the day after", { validUntil: "2027-06-30" }, "2027-07-01", "expired", "2027-07-01"],
    [
      "still counts between the letter and the day of effect",
      { withdrawalReceivedOn: "2027-03-01", withdrawalEffectiveOn: "2027-04-01" },
      "2027-03-31",
      "withdrawal received",
      "2027-04-01",
    ],
    [
      "is withdrawn on the day of effect",
      { withdrawalReceivedOn: "2027-03-01", withdrawalEffectiveOn: "2027-04-01" },
      "2027-04-01",
      "withdrawn",
      "2027-04-01",
    ],
    [
      "is withdrawn at once where no day of effect is stated",
      { withdrawalReceivedOn: "2027-03-01" },
      "2027-03-01",
      "withdrawn",
      "2027-03-01",
    ],
    [
      "is in force before the letter came",
      { withdrawalReceivedOn: "2027-03-01", withdrawalEffectiveOn: "2027-04-01" },
      "2027-02-28",
      "in force",
      "2027-04-01",
    ],
    [
      "is withdrawn rather than expired where both hold",
      { validUntil: "2027-01-31", withdrawalReceivedOn: "2027-03-01" },
      "2027-05-01",
      "withdrawn",
      "2027-02-01",
    ],
  ];
  test.each(rows)("%s", (_what, dates, day, state, endsOn) => {
    expect(consentStatusOn({ ...never, ...dates }, day)).toMatchObject({
      state,
      endsOn,
      inForce: state === "in force" || state === "withdrawal received",
    });
  });

  test("its review is due on the day itself, not the day before", () => {
    const dates = { ...never, reviewDueOn: "2027-05-01" };
    expect(consentStatusOn(dates, "2027-04-30").reviewDue).toBe(false);
    expect(consentStatusOn(dates, "2027-05-01").reviewDue).toBe(true);
  });

  test("it counts exactly before the day on which it ends", () => {
    fc.assert(
      fc.property(anyConsent, anyDay, (consent, day) => {
        const { inForce, endsOn } = consentStatusOn(consent, day);
        expect(inForce).toBe(endsOn === null || day < endsOn);
      }),
    );
  });
});
