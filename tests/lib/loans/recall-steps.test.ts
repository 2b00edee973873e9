/** What a borrower does who is asked for specimens back. */
import { expect, test } from "vitest";
import { recallSteps } from "#lib/loans/recall-steps.ts";

test("use stops first and at once where that was asked, and the last step is home by the day stated", () => {
  const steps = recallSteps({ stopUse: true, returnBy: "2027-03-04" });
  expect(steps[0]).toEqual({ what: "stop use", by: "now" });
  expect(steps.at(-1)).toEqual({ what: "home", by: "2027-03-04" });
});

test("where use may go on until they are packed nobody is told to stop it", () => {
  const steps = recallSteps({ stopUse: false, returnBy: "2027-03-04" });
  expect(steps.map(({ what }) => what)).toEqual(["agree on the way", "look and pack", "seal", "home"]);
});
