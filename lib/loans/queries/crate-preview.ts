/** The crate that a specimen would travel in, before there is a loan: the plan with the working beside each figure. */

import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { specimenFactsOf } from "#lib/specimens/queries.ts";
import { crateQuestionOf, planCrate } from "#lib/suitability/crate-case.ts";
import { explainCratePlan } from "#lib/transport/crate-plan.ts";
import type { CarrierClass } from "#lib/transport/schema.ts";

/** What a loan is planned with unless the registrar says otherwise. */
const carrierClass: CarrierClass = "specialist-door-to-door";

export type CratePreview = { carrierClass: CarrierClass } & ReturnType<typeof explainCratePlan>;

/** Null for a specimen that nobody has measured or weighed, or whose crate has to be designed by hand. Sizes and masses are open to everyone signed in. */
export async function getCratePreview(_viewer: Viewer, specimenId: string): Promise<CratePreview | null> {
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  const specimen = (await specimenFactsOf(database(), [specimenId])).get(specimenId);
  if (!specimen) throw notFound("specimen");
  const question = crateQuestionOf(specimen, { passages: [], carrierClass, count: 1 });
  if (question === null || planCrate(question) === null) return null;
  return { carrierClass, ...explainCratePlan(question) };
}
