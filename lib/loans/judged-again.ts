/**
 * Judging a loan again because something that it rests on changed: consent, a
 * licence or the venue. Before release everything is judged anew. Afterwards only
 * what speaks of the change is, and the rest stays as it was last kept: that it
 * would be too late to ask for what has long arrived says nothing. Whatever is
 * found then is information; the way home is never barred.
 */
import { gotWorse, runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding, RuleGroup } from "#lib/suitability/schema.ts";

/** In the order in which they name a run that several of them called for. */
export const changeOccasions = ["consent changed", "licence changed", "venue changed"] as const;
export type ChangeOccasion = (typeof changeOccasions)[number];

/** Acts that bars stop; the evaluation that stopped them is kept. */
export const stoppedActs = ["decision", "agreement", "signature", "dispatch", "extension"] as const;
export type StoppedAct = (typeof stoppedActs)[number];

export const refusedOccasion = (act: StoppedAct) => `${act} refused` as const;

/** Every occasion on which an evaluation is kept. */
export const runOccasions: readonly string[] = [
  "request",
  ...stoppedActs,
  ...stoppedActs.map(refusedOccasion),
  ...changeOccasions,
];

/** Groups of rules that speak of what changed. */
const groupsOf: Record<ChangeOccasion, readonly RuleGroup[]> = {
  "consent changed": ["consent", "use", "permits"],
  "licence changed": ["title", "permits"],
  "venue changed": ["permits", "use", "climate", "light", "way in"],
};

/** What is found of a loan that has left: anew of what changed, as before of the rest. */
export function findingsSinceRelease(
  before: readonly Finding[],
  now: readonly Finding[],
  occasions: readonly ChangeOccasion[],
): Finding[] {
  const groups = new Set(occasions.flatMap((occasion) => groupsOf[occasion]));
  const present = new Set(now.map(({ specimenId }) => specimenId));
  return [
    ...before.filter(({ group, specimenId }) => !groups.has(group) && present.has(specimenId)),
    ...now.filter(({ group }) => groups.has(group)),
  ];
}

/** How many specimens are judged worse than before. */
export function countWorse(before: readonly Finding[], after: readonly Finding[]): number {
  const worse = runDifference(before, after).filter(gotWorse);
  return new Set(worse.map(({ specimenId }) => specimenId)).size;
}

export type KeptFindings = { occasion: string; runAt: Date; findings: readonly Finding[] };

const isOfChange = ({ occasion }: KeptFindings) => (changeOccasions as readonly string[]).includes(occasion);
const isRefused = ({ occasion }: KeptFindings) => occasion.endsWith(" refused");

/**
 * Whether a loan is judged worse than when a person last settled it: by an act for
 * which it was judged, by a decision, a word against a bar or a recall.
 * @param runs in the order in which they were kept
 * @param wordsAt when a person said something that settles what was found before
 */
export function judgedWorse(
  runs: readonly KeptFindings[],
  wordsAt: readonly Date[],
): { since: Date; count: number } | null {
  const word = Math.max(0, ...wordsAt.map((at) => at.getTime()));
  const settled = runs.findLastIndex(
    (run) => (!isOfChange(run) && !isRefused(run)) || run.runAt.getTime() <= word,
  );
  const [base, newest] = [runs[settled], runs.at(-1)];
  if (!base || !newest) return null;
  const count = countWorse(base.findings, newest.findings);
  const first = runs
    .slice(settled + 1)
    .find((run) => isOfChange(run) && countWorse(base.findings, run.findings) > 0);
  return count === 0 || !first ? null : { since: first.runAt, count };
}
