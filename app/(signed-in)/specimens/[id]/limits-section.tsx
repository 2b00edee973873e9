/** The surroundings the specimen may have; in the margin what to mind, and each source once with what rests on it. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { limitGrounds, limitRows } from "#app/_words/limit-rows.ts";
import { cautionsFor } from "#lib/environment/limits.ts";
import { limitsOfSpecimen, preparationCodeOf } from "#lib/environment/specimen-limits.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

export function LimitsSection({ specimen }: { specimen: SpecimenSheet }) {
  const limits = limitsOfSpecimen(specimen);
  const grounds = limitGrounds(limits);
  return (
    <Section
      id="limits"
      title={words.limits}
      margin={
        <>
          {cautionsFor(preparationCodeOf(specimen)).map((caution) => (
            <MarginNote key={caution} title={caution} />
          ))}
          <details>
            <summary>{words.limitSources(grounds.length)}</summary>
            {grounds.map(({ key, source, standing, quantities }) => (
              <MarginNote key={key} title={`${quantities}:`} source={`(${standing})`}>
                {source}
              </MarginNote>
            ))}
          </details>
        </>
      }
    >
      <DataTable
        caption={words.limits}
        captionHidden
        rows={limitRows(limits)}
        rowKey={(row) => row.quantity}
        columns={[
          { key: "quantity", label: words.quantity, cell: (row) => row.quantity },
          { key: "target", label: words.target, right: true, cell: (row) => row.target },
          { key: "warn", label: words.warn, right: true, cell: (row) => row.attend },
          { key: "alarm", label: words.alarm, right: true, cell: (row) => row.bar },
        ]}
      />
    </Section>
  );
}
