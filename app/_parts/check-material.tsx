/** What a check form needs of a specimen: the plates, the last findings, the words that fit its preparation. */
import type { EarlierFinding } from "#app/_parts/check-draft.ts";
import { SeverityNote, WordsNote } from "#app/_parts/check-notes.tsx";
import { extentWords } from "#app/_parts/findings-table.tsx";
import { type PlateSpecimen, SpecimenPicture } from "#app/_parts/specimen-plate.tsx";
import { conditionLabels } from "#app/_words/en/condition-labels.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import type { Finding } from "#lib/condition/schema.ts";
import { findingGroupNames, findingWord, groupOf, groupsFor, termsFor } from "#lib/condition/terms.ts";
import { type PreparedSpecimen, preparationCodeOf } from "#lib/environment/specimen-limits.ts";
import type { Mark } from "#lib/specimens/drawing/marks.ts";

/** Words of one group, by their terms. */
export type TermGroup = { group: string; words: readonly (readonly [term: string, word: string])[] };

/** Marks of a check by their numbers in it; what is no longer there has none. */
export function checkMarks(findings: readonly Finding[]): Mark[] {
  return findings.flatMap(({ picturePoint, severity }, index) =>
    picturePoint && severity !== "none" ? [{ number: index + 1, ...picturePoint }] : [],
  );
}

export function checkMaterial(specimen: PlateSpecimen & PreparedSpecimen, last: CheckSheet | null) {
  const findings = last?.findings ?? [];
  const earlier: EarlierFinding[] = findings
    .map((finding, index) => ({
      number: index + 1,
      finding,
      words: [findingWord(finding.term), finding.place, extentWords(finding), finding.severity]
        .filter(Boolean)
        .join(", "),
    }))
    .filter(({ finding }) => finding.severity !== "none");
  const preparation = preparationCodeOf(specimen);
  const terms = termsFor(preparation);
  const drawn = { ...specimen, picture: null };
  return {
    earlier,
    firstNew: findings.length + 1,
    before: <SpecimenPicture specimen={drawn} marks={checkMarks(findings)} />,
    // A mark is set where it will be drawn; a photograph shows the specimen from another side.
    now: <SpecimenPicture specimen={drawn} />,
    photograph: specimen.picture ? <SpecimenPicture specimen={specimen} /> : null,
    beforeCaption: last ? conditionLabels.marksOf(last.checkedOn) : conditionLabels.firstCheck,
    terms: groupsFor(preparation).map(
      (group): TermGroup => ({
        group: findingGroupNames[group],
        words: terms
          .filter((term) => groupOf(term) === group)
          .map((term) => [term, findingWord(term)] as const),
      }),
    ),
    severityNote: <SeverityNote />,
    wordsNote: <WordsNote groups={groupsFor(preparation)} />,
  };
}
