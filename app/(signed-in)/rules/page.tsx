/** The rule book: every rule of suitability with its place, its days, its inputs and what it rests on. */
import type { Metadata } from "next";
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { rulesWords as words } from "#app/_words/en/rules.ts";
import { ruleBook, rulebookVersion } from "#lib/suitability/rules/book.ts";

export const metadata: Metadata = { title: words.title };

export default async function RulesPage() {
  await requireViewer("/rules");
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <p className="quiet small">{words.version(rulebookVersion)}</p>
      <DataTable
        caption={words.caption}
        rows={ruleBook}
        rowKey={({ id }) => id}
        columns={[
          { key: "id", label: words.rule, cell: ({ id }) => <span className="mono">{id}</span> },
          {
            key: "place",
            label: words.place,
            cell: ({ place, validFrom, validTo }) =>
              [
                place,
                ...(validFrom === null ? [] : [words.from(validFrom)]),
                ...(validTo === null ? [] : [words.until(validTo)]),
              ].join(", "),
          },
          { key: "inputs", label: words.looksAt, cell: ({ inputs }) => inputs.join(", ") },
          { key: "outcomes", label: words.answers, cell: ({ outcomes }) => outcomes.join(", ") },
          {
            key: "citation",
            label: words.restsOn,
            cell: ({ citation, standing }) => `${citation} (${standing})`,
          },
          {
            key: "checked",
            label: words.checkedOn,
            cell: ({ checkedOn }) => <DateText date={checkedOn} short />,
          },
          {
            key: "overridden",
            label: words.overriddenBy,
            cell: ({ overriddenBy, needsEvidence }) =>
              overriddenBy.length === 0
                ? words.nobody
                : `${overriddenBy.join(", ")}${needsEvidence ? `, ${words.withEvidence}` : ""}`,
          },
        ]}
      />
    </PlainPage>
  );
}
