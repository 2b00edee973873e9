/**
 * Which specimens share a crate: sheets of one series that are alike, up to ten
 * to a crate, in the order of their numbers; everything else has a crate of its
 * own. Nothing is left out and nothing is in two crates.
 */
import type { CrateQuestion } from "#lib/suitability/crate-case.ts";
import type { LentSpecimen } from "#lib/suitability/rules/case.ts";

/** What two persons lift and one hand can take out in order (common practice, no source). */
export const SHEETS_PER_CRATE = 10;

export type Asked = { specimen: LentSpecimen; question: CrateQuestion };
export type CrateGroup = { specimens: LentSpecimen[]; question: CrateQuestion };

export function crateGroups(asked: readonly Asked[]): CrateGroup[] {
  const alike = new Map<string, Asked[]>();
  const groups: CrateGroup[] = [];
  for (const one of asked) {
    const { specimen, question } = one;
    const key =
      question.fragilityClass === "sheet" && specimen.seriesId !== null
        ? `${specimen.seriesId} ${JSON.stringify(question)}`
        : specimen.id;
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  for (const members of alike.values()) {
    const inOrder = [...members].sort(
      (a, b) => (a.specimen.numberInSeries ?? 0) - (b.specimen.numberInSeries ?? 0),
    );
    for (let first = 0; first < inOrder.length; first += SHEETS_PER_CRATE) {
      const together = inOrder.slice(first, first + SHEETS_PER_CRATE);
      const [{ question }] = together as [Asked, ...Asked[]];
      groups.push({
        specimens: together.map(({ specimen }) => specimen),
        question: { ...question, count: together.length },
      });
    }
  }
  return groups;
}
