/**
 * The annexes of an agreement as data: which of A to M apply and what stands in them
 * beyond the schedule, the crates, the stages and the cover. The evidence of consent
 * is named by specimen and never by donor. What a venue has not stated is neither
 * within a limit nor beyond it.
 */
import { papersOf } from "#lib/agreements/clause-values.ts";
import type { ClauseLanguageCode } from "#lib/agreements/clauses/language.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import type { ScheduleLimits } from "#lib/agreements/frozen-terms.ts";
import {
  type AnnexMark,
  annexMarks,
  type FacilityFigure,
  type TermsAnnexes,
} from "#lib/agreements/terms-annexes.ts";
import type { VenueFacts } from "#lib/people/schema.ts";
import type { SpecimenCase } from "#lib/suitability/rules/case.ts";

const answers = [
  "supervisedRoom",
  "restrictedView",
  "spillProvision",
  "fireDetection",
  "nightGuard",
] as const satisfies readonly (keyof VenueFacts)[];

type Bound = { fact: string; stated: number | null; limit: number | null; end: "least" | "most" };

function figure({ fact, stated, limit, end }: Bound): FacilityFigure {
  if (stated === null || limit === null) return { fact, stated, limit, isBeyond: null };
  return { fact, stated, limit, isBeyond: end === "least" ? !(stated >= limit) : !(stated <= limit) };
}

/** What the venue states beside the limits that hold for all specimens together. */
export function facilityFigures(venue: VenueFacts, limits: ScheduleLimits): FacilityFigure[] {
  const least = (fact: string, stated: number | null, limit: number | null) =>
    figure({ fact, stated, limit, end: "least" });
  const most = (fact: string, stated: number | null, limit: number | null) =>
    figure({ fact, stated, limit, end: "most" });
  return [
    least("temperatureLowC", venue.temperatureLowC, limits.temperatureC?.low ?? null),
    most("temperatureHighC", venue.temperatureHighC, limits.temperatureC?.high ?? null),
    most("temperatureSwing24hK", venue.temperatureSwing24hK, limits.temperatureChange24hK),
    least("humidityLow", venue.humidityLow, limits.humidity?.low ?? null),
    most("humidityHigh", venue.humidityHigh, limits.humidity?.high ?? null),
    most("humiditySwing24h", venue.humiditySwing24h, limits.humidityChange24h),
    most("illuminanceLx", venue.illuminanceLx, limits.illuminanceLx),
    most("uvMicrowattPerLumen", venue.uvMicrowattPerLumen, limits.uvMicrowattPerLumen),
  ];
}

export type AnnexSource = {
  venue: VenueFacts;
  /** The newest facility report of the venue, from which its facts are. */
  report: NonNullable<TermsAnnexes["facility"]["report"]> | null;
  limits: ScheduleLimits;
  subjects: readonly SpecimenCase[];
  checks: TermsAnnexes["checks"];
  costing: TermsAnnexes["costing"];
  languages: readonly ClauseLanguageCode[];
  hasCertificates: boolean;
  isAmendment: boolean;
};

/** H has nothing to say where there is neither a donor nor a paper; G, I and M wait for what they hold. */
function annexesThatApply(source: AnnexSource, evidence: TermsAnnexes["evidence"]): AnnexMark[] {
  const missing: Partial<Record<AnnexMark, boolean>> = {
    G: !source.hasCertificates,
    H: evidence.length === 0 && source.venue.licences.length === 0,
    M: !source.isAmendment,
  };
  return annexMarks.filter((mark) => missing[mark] !== true);
}

function evidenceOf({ specimen, provenance }: SpecimenCase): TermsAnnexes["evidence"] {
  const { consents, donorsWithoutConsent, permits, title } = provenance;
  if (!specimen.human && permits.length === 0) return [];
  return [
    {
      accessionNumber: specimen.accessionNumber,
      title: title?.status ?? "unknown",
      isConsentComplete: specimen.human ? consents.length > 0 && donorsWithoutConsent === 0 : null,
      papers: papersOf(permits),
    },
  ];
}

export function termsAnnexes(source: AnnexSource): TermsAnnexes {
  const { venue, limits, languages } = source;
  const evidence = source.subjects.flatMap(evidenceOf);
  return {
    applies: annexesThatApply(source, evidence),
    checks: [...source.checks],
    facility: {
      reportedOn: venue.reportedOn,
      report: source.report,
      figures: facilityFigures(venue, limits),
      answers: answers.map((fact) => ({ fact, stated: venue[fact] })),
    },
    evidence,
    licences: papersOf(venue.licences),
    costing: source.costing,
    notices: Object.fromEntries(languages.map((code) => [code, clausesIn[code].notices])),
  };
}
