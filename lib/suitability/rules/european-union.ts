/**
 * The border of the European Union: EU1 export of cultural goods, EU2 their
 * import, EU3 animals at the border veterinary control. Each is asked only where
 * the way out crosses that border; between two members none of them speaks. The
 * way home crosses it too, so EU2 and EU3 speak in both directions.
 */

import { yearsBefore } from "#lib/specimens/legal-periods.ts";
import type { Preparation } from "#lib/specimens/schema.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor } from "#lib/suitability/rules/case.ts";
import { isInUnion, madeBefore, unionCrossing } from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** Thresholds in euro cents: 50 000 EUR for export (from memory), 18 000 EUR for import (read in summary). */
const EXPORT_FROM_MINOR = 5_000_000;
const IMPORT_FROM_MINOR = 1_800_000;

/** Whether the cost reaches a threshold in euro; null where it is not known or in another currency. */
export function reachesEuro(
  { replacementCost }: Pick<SpecimenCase["specimen"], "replacementCost">,
  minor: number,
): boolean | null {
  return replacementCost === null || replacementCost.currency !== "EUR"
    ? null
    : replacementCost.minor >= minor;
}

/** EU1: a licence where national law, age or cost ask for one. */
function judgeExport(subject: SpecimenCase, request: RequestFacts): Verdict {
  const missing =
    reachesEuro(subject.specimen, EXPORT_FROM_MINOR) === false
      ? "law.union-export-below"
      : "law.union-export-over";
  return verdictOnPermit(
    permitFor(subject, request, ["export"]),
    request,
    {
      fits: "law.export-licence",
      vague: "law.export-licence-vague",
      days: "law.export-licence-days",
      country: "law.export-licence-country",
      missing,
      wayOut: "way.ask-export-authority",
    },
    "attend",
  );
}

/** EU2: what was made in the Union is not concerned; else age and cost decide what is asked. */
function judgeImport(subject: SpecimenCase, request: RequestFacts): Verdict {
  const { originCountry } = subject.specimen.legal;
  const wayOut = "way.ask-authority-border";
  if (originCountry === null) return { outcome: "attend", fact: "law.union-origin-not-known", wayOut };
  if (isInUnion(originCountry))
    return { outcome: "clear", fact: "law.union-made-there", parameters: { country: originCountry } };
  const isOld = madeBefore(subject, yearsBefore(request.startsOn, 200));
  const isCostly = reachesEuro(subject.specimen, IMPORT_FROM_MINOR);
  if (isOld === false || isCostly === false)
    return { outcome: "clear", fact: "law.union-import-below", parameters: { country: originCountry } };
  return {
    outcome: "attend",
    fact: isOld && isCostly ? "law.union-statement" : "law.union-age-or-cost-not-known",
    parameters: { country: originCountry },
    wayOut,
  };
}

/** Preparations that leave nothing raw: the authority names impregnation, fluids and slides. */
const complete: readonly Preparation[] = [
  "silicone-impregnated",
  "epoxy sheet",
  "polyester sheet",
  "fluid-preserved",
  "corrosion cast",
  "slide",
];

/** EU3: a complete anatomical preparation with a statement, or else a veterinary certificate. */
function judgeAnimal(subject: SpecimenCase, request: RequestFacts): Verdict {
  if (complete.includes(subject.specimen.preparation))
    return {
      outcome: "clear",
      fact: "law.union-complete-preparation",
      parameters: { preparation: subject.specimen.preparation },
    };
  return verdictOnPermit(
    permitFor(subject, request, ["veterinary"]),
    request,
    {
      fits: "law.veterinary-paper",
      vague: "law.veterinary-paper-vague",
      days: "law.veterinary-paper-days",
      country: "law.veterinary-paper-country",
      missing: "law.veterinary-missing",
      wayOut: "way.veterinary-certificate",
    },
    "bar",
  );
}

export function judgeEuropeanUnion(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const crossing = unionCrossing(request);
  if (crossing === null) return [];
  const find = findingsFor(subject.specimen.id, "permits");
  return [
    ...(crossing === "out" ? [find("EU1", judgeExport(subject, request))] : []),
    find("EU2", judgeImport(subject, request)),
    ...(subject.specimen.human ? [] : [find("EU3", judgeAnimal(subject, request))]),
  ];
}
