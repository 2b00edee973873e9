/**
 * The least severity that a measurement calls for, whatever the eye said. It is
 * shown beside a check and never chosen for the examiner: a figure comes from an
 * instrument that the program does not read.
 */
import type { Severity } from "#lib/condition/schema.ts";
import type { FindingGroup } from "#lib/condition/terms.ts";
import { type Citation, cite } from "#lib/workings/sources.ts";

export const measures = [
  "colour-difference",
  "yellowness-rise",
  "shrinkage-a-year",
  "fluid-loss-a-year",
] as const;
export type Measure = (typeof measures)[number];

export type MeasuredSeverity = {
  measure: Measure;
  /** What is above it calls for the severity; lengths and fluid as a fraction of what there was. */
  above: number;
  severity: Severity;
  source: Citation;
};

const practice = cite("practice", "least severity by measurement");

const rows: readonly (MeasuredSeverity & { groups: readonly FindingGroup[] | null })[] = [
  {
    measure: "colour-difference",
    above: 1.8,
    severity: "moderate",
    source: cite("colour-acceptability", "acceptable to 1.8"),
    groups: null,
  },
  { measure: "yellowness-rise", above: 5, severity: "moderate", source: practice, groups: ["sheet"] },
  { measure: "shrinkage-a-year", above: 0.01, severity: "minor", source: practice, groups: ["tissue"] },
  { measure: "shrinkage-a-year", above: 0.03, severity: "moderate", source: practice, groups: ["tissue"] },
  { measure: "fluid-loss-a-year", above: 0.05, severity: "minor", source: practice, groups: ["fluid"] },
];

/** What bears on a preparation, by the groups of words that are asked of it. */
export function measuredSeverities(groups: readonly FindingGroup[]): MeasuredSeverity[] {
  return rows
    .filter((row) => row.groups === null || row.groups.some((group) => groups.includes(group)))
    .map(({ groups: _groups, ...row }) => row);
}
