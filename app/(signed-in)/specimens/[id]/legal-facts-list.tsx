/** What rules of law ask of a specimen, as far as it is known. */
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Quantity, Unknown } from "#app/_parts/figures.tsx";
import { institutionsWords } from "#app/_words/en/institutions.ts";
import { legalFactsWords as words } from "#app/_words/en/legal-facts.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

function YesNo({ value }: { value: boolean | null }) {
  return value === null ? <Unknown /> : value ? institutionsWords.yes : institutionsWords.no;
}

export function LegalFactsList({ specimen }: { specimen: SpecimenSheet }) {
  const { legal, human, preparation } = specimen;
  return (
    <>
      <h3>{words.legend}</h3>
      <Facts
        facts={[
          [words.containsCells, <YesNo key="cells" value={legal.containsCells} />],
          [words.originCountry, legal.originCountry ?? <Unknown key="origin" />],
          [words.imported, <YesNo key="imported" value={legal.imported} />],
          [words.heldSince, <DateText key="held" date={legal.heldSince} />],
          [words.madePeriod, legal.madePeriod ?? <Unknown key="made" />],
          human && [words.wholeBody, <YesNo key="whole" value={legal.wholeBody} />],
          human &&
            legal.deathPeriod !== undefined && [
              words.deathPeriod,
              legal.deathPeriod ?? <Unknown key="death" />,
            ],
          human && [words.deathPapers, <YesNo key="papers" value={legal.deathPapers} />],
          human && [
            words.anatomicalExamination,
            <YesNo key="examination" value={legal.anatomicalExamination} />,
          ],
          !human && [words.speciesAppendix, legal.speciesAppendix ?? <Unknown key="appendix" />],
          preparation === "fluid-preserved" && [
            words.freeFluidMl,
            <Quantity key="fluid" value={legal.freeFluidMl} unit="ml" />,
          ],
        ]}
      />
    </>
  );
}
