/** The surroundings the specimen may have, each figure with its ground. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { limitRows } from "#app/_words/limit-rows.ts";
import { cautionsFor } from "#lib/environment/limits.ts";
import { limitsOfSpecimen, preparationCodeOf } from "#lib/environment/specimen-limits.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";

export function LimitsSection({ specimen }: { specimen: SpecimenSheet }) {
  const limits = limitsOfSpecimen(specimen);
  return (
    <Section
      id="limits"
      title={words.limits}
      margin={cautionsFor(preparationCodeOf(specimen)).map((caution) => (
        <MarginNote key={caution} title={caution} />
      ))}
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
          {
            key: "ground",
            label: words.ground,
            cell: (row) => <span className="small quiet">{row.ground}</span>,
          },
        ]}
      />
    </Section>
  );
}
