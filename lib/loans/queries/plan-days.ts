/** The days of the plan as the centre has set them, or the defaults where it has not. */
import { PlanDays, planDefaults } from "#lib/loans/plan-defaults.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";

/** The key under which they are kept. */
export const planDaysKey = "days of the plan";

export async function planDaysOf(reader: Database | Transaction): Promise<PlanDays> {
  const setting = await reader.setting.findUnique({ where: { key: planDaysKey } });
  return setting === null ? planDefaults : PlanDays.parse(setting.value);
}

export async function getPlanDays(viewer: Viewer): Promise<PlanDays> {
  requireSight(viewer, "allLoans");
  return await planDaysOf(database());
}
