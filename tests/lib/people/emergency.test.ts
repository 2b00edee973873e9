import { expect, test } from "vitest";
import { emergencyLine } from "#lib/people/emergency.ts";
import { CentreSettings } from "#lib/people/schema.ts";

test("a house with a number for every hour is reached under it", () => {
  expect(emergencyLine({ phone: "+47 1", emergencyPhone: "+47 9" })).toEqual({
    phone: "+47 9",
    hours: "any hour",
  });
});

test.each([{}, { emergencyPhone: "" }, { emergencyPhone: undefined }])(
  "without one (%o) its telephone stands, in office hours",
  (said) => {
    expect(emergencyLine({ phone: "+47 1", ...said })).toEqual({ phone: "+47 1", hours: "office hours" });
  },
);

test("the centre may leave it out and may not write words into it", () => {
  const { emergencyPhone } = CentreSettings.shape;
  expect(emergencyPhone.safeParse(undefined).success).toBe(true);
  expect(emergencyPhone.safeParse("+47 555 0199").success).toBe(true);
  expect(emergencyPhone.safeParse("ask the porter").success).toBe(false);
});
