/** What a check form needs of a specimen: the plates, the last findings, the words that fit its preparation. */
import { extentWords } from "#app/_parts/findings-table.tsx";
import { type PlateSpecimen, SpecimenPicture } from "#app/_parts/specimen-plate.tsx";
import { conditionLabels } from "#app/_words/en/condition-labels.ts";
import type { CheckSheet } from "#lib/condition/queries.ts";
import type { Finding } from "#lib/condition/schema.ts";
import { findingWord, termsFor } from "#lib/condition/terms.ts";
import { type PreparedSpecimen, preparationCodeOf } from "#lib/environment/specimen-limits.ts";

export type EarlierFinding = { number: number; words: string; finding: Finding };

export function checkMaterial(specimen: PlateSpecimen & PreparedSpecimen, last: CheckSheet | null) {
  const earlier: EarlierFinding[] = (last?.findings ?? [])
    .map((finding, index) => ({
      number: index + 1,
      finding,
      words: [findingWord(finding.term), finding.place, extentWords(finding), finding.severity]
        .filter(Boolean)
        .join(", "),
    }))
    .filter(({ finding }) => finding.severity !== "none");
  const marks = earlier.flatMap(({ number, finding }) =>
    finding.picturePoint ? [{ number, ...finding.picturePoint }] : [],
  );
  return {
    earlier,
    before: <SpecimenPicture specimen={{ ...specimen, picture: null }} marks={marks} />,
    now: <SpecimenPicture specimen={specimen} />,
    beforeCaption: last ? conditionLabels.marksOf(last.checkedOn) : conditionLabels.firstCheck,
    terms: termsFor(preparationCodeOf(specimen)).map((term) => [term, findingWord(term)] as const),
  };
}
