/** The whole collection of the scenario besides the sheets of its series, and what was seen on it. */
import { headChecks } from "#seed/scenario/checks-head.ts";
import { limbChecks } from "#seed/scenario/checks-limbs.ts";
import { trunkChecks } from "#seed/scenario/checks-trunk.ts";
import { animalChecks, wholeChecks } from "#seed/scenario/checks-whole.ts";
import { furtherPermitsOf, legalFactsOf } from "#seed/scenario/legal-facts.ts";
import type { History, ScenarioSpecimen } from "#seed/scenario/shape.ts";
import { abdomenSpecimens } from "#seed/scenario/specimens-abdomen.ts";
import { animalSpecimens } from "#seed/scenario/specimens-animals.ts";
import { brainSpecimens } from "#seed/scenario/specimens-brain.ts";
import { headSpecimens } from "#seed/scenario/specimens-head.ts";
import { heartSpecimens } from "#seed/scenario/specimens-heart.ts";
import { lowerLimbSpecimens } from "#seed/scenario/specimens-lower-limb.ts";
import { pelvisSpecimens } from "#seed/scenario/specimens-pelvis.ts";
import { skullSpecimens } from "#seed/scenario/specimens-skull.ts";
import { slideSpecimens } from "#seed/scenario/specimens-slides.ts";
import { thoraxSpecimens } from "#seed/scenario/specimens-thorax.ts";
import { upperLimbSpecimens } from "#seed/scenario/specimens-upper-limb.ts";
import { wholeSpecimens } from "#seed/scenario/specimens-whole.ts";
import { wildAnimalSpecimens } from "#seed/scenario/specimens-wild-animals.ts";

const written: ScenarioSpecimen[] = [
  ...upperLimbSpecimens,
  ...lowerLimbSpecimens,
  ...headSpecimens,
  ...skullSpecimens,
  ...brainSpecimens,
  ...heartSpecimens,
  ...thoraxSpecimens,
  ...abdomenSpecimens,
  ...pelvisSpecimens,
  ...wholeSpecimens,
  ...slideSpecimens,
  ...animalSpecimens,
  ...wildAnimalSpecimens,
];

export const collection: ScenarioSpecimen[] = written.map((one) => ({
  ...one,
  record: { ...one.record, legal: legalFactsOf(one) },
  permits: [...one.permits, ...furtherPermitsOf(one)],
}));

/** Checks by accession number. */
export const histories: Record<string, History> = {
  ...limbChecks,
  ...headChecks,
  ...trunkChecks,
  ...wholeChecks,
  ...animalChecks,
};
