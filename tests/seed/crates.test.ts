/**
 * Every specimen of the scenario with its limits and its crate: one figure of shock
 * for both, and one drop height in the plan, its margin note and its steps.
 */
import { describe, expect, test } from "vitest";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import { showsTeeth } from "#lib/specimens/teeth.ts";
import { crateQuestionOf } from "#lib/suitability/crate-case.ts";
import type { LentSpecimen } from "#lib/suitability/rules/case.ts";
import { explainCratePlan } from "#lib/transport/crate-plan.ts";
import { carrierClasses } from "#lib/transport/schema.ts";
import { collection } from "#seed/scenario/collection.ts";
import { seriesOfSheets, sheetName, sheetNumbers } from "#seed/scenario/series.ts";
import { aLentSpecimen } from "#tests/support/loan-cases.ts";

const alone: LentSpecimen[] = collection.map(({ record, shows }) =>
  aLentSpecimen({ ...record, replacementCost: null, hasTeeth: showsTeeth(shows) }),
);
/** All sheets of a series are alike as far as limits and crates go. */
const sheets: LentSpecimen[] = Object.values(seriesOfSheets).map((one) =>
  aLentSpecimen({
    accessionNumber: sheetName(one, sheetNumbers(one)[0] ?? 0),
    kind: "sheet",
    preparation: one.series.embedding === "epoxy" ? "epoxy sheet" : "polyester sheet",
    size: one.size,
    massKg: one.massKg,
    sheetThicknessMm: one.series.thicknessMm,
  }),
);

describe.each([...alone, ...sheets].map((specimen) => [specimen.accessionNumber, specimen] as const))(
  "%s",
  (_number, specimen) => {
    test.each(carrierClasses)("by %s never feels more than it bears", (carrierClass) => {
      const question = crateQuestionOf(specimen, { passages: [], carrierClass, count: 1 });
      expect(question).not.toBeNull();
      const { plan, margin } = explainCratePlan(question);
      const { alarm } = limitsOfSpecimen(specimen).shockG;
      expect(plan.output.peakG).toBe(alarm);
      // Where no foam of the list holds, the plan is barred and says so.
      if (plan.output.cushion.holds) expect(plan.output.cushion.peakG).toBeLessThanOrEqual(alarm);
      else expect(plan.output.reasons).toContain("no-cushion-holds");
      expect(margin.dropHeight.output.dropHeightMm).toBe(plan.output.dropHeightMm);
    });
  },
);

test("by a specialist every specimen of the scenario has a crate that holds", () => {
  for (const specimen of [...alone, ...sheets]) {
    const circumstances = { passages: [], carrierClass: "specialist-door-to-door", count: 1 } as const;
    const { plan } = explainCratePlan(crateQuestionOf(specimen, circumstances));
    expect([specimen.accessionNumber, plan.output.cushion.holds]).toEqual([specimen.accessionNumber, true]);
  }
});
