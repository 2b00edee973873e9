/**
 * Goods on the way, whatever the country: CI1 protected species, NG1 genetic
 * resources of animals, DG1 fluids that carriers take as dangerous goods, CU1 the
 * carnet and CU2 temporary admission, whose terms the days of the loan have to
 * fit. What is not known of a species is a bar to export and to a public show until
 * somebody decides.
 */

import { daysBetween } from "#lib/platform/dates.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isExport, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import { daysAway, isInUnion, unionCrossing } from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** A label of scientific exchange serves between registered institutions, and never for money. */
function papersThatServe({ paidAdmission, displayStyle }: RequestFacts): PermitInput["kind"][] {
  return paidAdmission || displayStyle === "promotional"
    ? ["species protection (CITES)"]
    : ["species protection (CITES)", "scientific exchange label (CITES)"];
}

/** CI1: a protected species crosses a border with a number on paper. */
function judgeSpecies(subject: SpecimenCase, request: RequestFacts): Verdict {
  const { legal, scientificName: species } = subject.specimen;
  const told = { species, country: request.venue.countryCode, appendix: legal.speciesAppendix };
  const isGrave = isExport(request) || isPublicShow(request);
  const best = permitFor(subject, request, papersThatServe(request));
  if (best === null && legal.speciesAppendix === "not listed")
    return { outcome: "clear", fact: "law.species-not-listed", parameters: told };
  if (best === null && !isGrave) return { outcome: "clear", fact: "permits.no-border", parameters: told };
  const verdict = verdictOnPermit(
    best,
    request,
    {
      fits: "law.species-paper",
      vague: "law.species-paper-vague",
      days: "law.species-paper-days",
      country: "law.species-paper-country",
      missing: legal.speciesAppendix === null ? "law.species-not-known" : "law.species-listed",
      wayOut: "way.species-paper",
    },
    best === null && legal.speciesAppendix === null
      ? outcomeOfUnknown(request, isGrave)
      : isExport(request)
        ? "bar"
        : "attend",
  );
  return { ...verdict, parameters: { ...told, ...verdict.parameters } };
}

/** NG1: only research on the genes or the chemistry of an animal makes use of a genetic resource. */
function judgeGenes({ activities, purpose }: RequestFacts): Verdict {
  return activities.includes("sampling")
    ? {
        outcome: "attend",
        fact: "law.genes-sampled",
        parameters: { purpose },
        wayOut: "way.ask-genes-authority",
      }
    : { outcome: "clear", fact: "law.genes-not-used" };
}

/** Free fluid in one inner container that still goes as a small quantity, and strength of formaldehyde not classed. */
const SMALL_QUANTITY_ML = 30;
const FORMALDEHYDE_PERCENT = 10;

/** DG1: what kind of dangerous good the fluid is, if any. */
function judgeFluid({ specimen }: SpecimenCase): Verdict {
  const { fluidName: fluid, fluidPercent: percent, legal } = specimen;
  const parameters = { fluid, percent, freeFluidMl: legal.freeFluidMl, limitMl: SMALL_QUANTITY_ML };
  const wayOut = "way.dangerous-goods";
  if (fluid === "glycerol") return { outcome: "clear", fact: "law.fluid-not-classed", parameters };
  if (fluid === "formaldehyde solution" && percent !== null && percent <= FORMALDEHYDE_PERCENT)
    return { outcome: "clear", fact: "law.fluid-weak-formaldehyde", parameters };
  if (fluid === "ethanol" || fluid === "isopropanol" || fluid === "formaldehyde solution") {
    if (legal.freeFluidMl === null)
      return {
        outcome: "attend",
        fact: "law.fluid-volume-not-known",
        parameters,
        wayOut: "way.record-origin",
      };
    return legal.freeFluidMl <= SMALL_QUANTITY_ML
      ? { outcome: "clear", fact: "law.fluid-small-quantity", parameters }
      : { outcome: "attend", fact: "law.fluid-declared", parameters, wayOut };
  }
  return { outcome: "attend", fact: "law.fluid-not-known", parameters, wayOut };
}

/** A carnet lives a year; some states give half of it. */
const CARNET_DAYS = 365;
const SHORT_CARNET_DAYS = 183;
/** Twenty-four months of temporary admission into the Union. */
const ADMISSION_DAYS = 730;

/** Whether the way crosses a customs border, on it as well as at its end: not within one country, nor between members of the Union. */
export function crossesCustoms({
  lenderCountry,
  venue,
  through,
}: Pick<RequestFacts, "lenderCountry" | "through"> & {
  venue: Pick<RequestFacts["venue"], "countryCode">;
}): boolean {
  return [venue.countryCode, ...through].some(
    (country) => country !== lenderCountry && !(isInUnion(lenderCountry) && isInUnion(country)),
  );
}

function judgeCarnet(request: RequestFacts): Verdict {
  const { from, to } = daysAway(request);
  const days = daysBetween(from, to);
  const parameters = { days, limit: CARNET_DAYS, shortLimit: SHORT_CARNET_DAYS };
  if (days > CARNET_DAYS)
    return {
      outcome: "attend",
      fact: "law.carnet-too-long",
      parameters,
      wayOut: "way.shorter-or-other-customs",
    };
  return days > SHORT_CARNET_DAYS
    ? { outcome: "attend", fact: "law.carnet-short-states", parameters, wayOut: "way.ask-broker" }
    : { outcome: "clear", fact: "law.carnet-fits", parameters };
}

/** The stay under temporary admission: of the loan itself, or of what was lent to us from outside. */
function judgeAdmission({ specimen, provenance }: SpecimenCase, request: RequestFacts): Verdict | null {
  const { from, to } = daysAway(request);
  const { title } = provenance;
  const comesIn = unionCrossing(request) === "in";
  const isGuest =
    isInUnion(request.lenderCountry) &&
    title !== null &&
    (title.status === "loan-in" || title.status === "deposit") &&
    specimen.legal.imported === true;
  if (!comesIn && !isGuest) return null;
  const since = comesIn ? from : specimen.acquiredOn;
  const wayOut = "way.ask-broker";
  if (since === null) return { outcome: "attend", fact: "law.admission-not-known", wayOut };
  const days = daysBetween(since, to);
  const parameters = { days, limit: ADMISSION_DAYS, since };
  return days > ADMISSION_DAYS
    ? { outcome: "bar", fact: "law.admission-too-long", parameters, wayOut: "way.shorter-or-other-customs" }
    : { outcome: "clear", fact: "law.admission-fits", parameters };
}

export function judgeGoods(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const { human, id, preparation } = subject.specimen;
  const find = findingsFor(id, "permits");
  const admission = judgeAdmission(subject, request);
  return [
    ...(human ? [] : [find("CI1", judgeSpecies(subject, request)), find("NG1", judgeGenes(request))]),
    ...(preparation === "fluid-preserved" ? [find("DG1", judgeFluid(subject))] : []),
    ...(crossesCustoms(request) ? [find("CU1", judgeCarnet(request))] : []),
    ...(admission === null ? [] : [find("CU2", admission)]),
  ];
}
