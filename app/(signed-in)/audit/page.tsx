/** The audit: every change, newest first, by record, by person, by kind of row. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import { pageLinks, parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { auditWords as words } from "#app/_words/en/audit.ts";
import { listAuditEntries } from "#lib/desk/queries/happened.ts";

export const metadata: Metadata = { title: words.title };

const entriesOnAPage = 100;

export default async function AuditPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/audit", search));
  const tableName = parameterOf(search, "tableName");
  const rowKey = parameterOf(search, "rowKey");
  const actor = parameterOf(search, "actor");
  const { rows, next, tables } = await orNotFound(() =>
    listAuditEntries(
      viewer,
      { tableName, rowKey, actor },
      { after: parameterOf(search, "after") ?? null, limit: entriesOnAPage },
    ),
  );
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <search className="no-print">
        <form action="/audit" aria-label={words.filter} key={JSON.stringify(search)}>
          <FieldGrid>
            <TextField
              label={words.rowKey}
              hint={words.rowKeyHint}
              name="rowKey"
              defaultValue={rowKey}
              maxLength={200}
            />
            <TextField
              label={words.actor}
              hint={words.actorHint}
              name="actor"
              defaultValue={actor}
              maxLength={200}
            />
            <SelectField
              label={words.table}
              name="tableName"
              options={tables.map((table) => [table, words.tables[table]] as const)}
              empty={words.anyTable}
              defaultValue={tableName ?? ""}
            />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.find}</button>
            <Link href="/audit">{words.clear}</Link>
          </FormActions>
        </form>
      </search>
      <h2 className="visually-hidden">{words.caption}</h2>
      <Happened entries={rows} linked empty={<EmptyState>{words.none}</EmptyState>} />
      <Pager {...pageLinks("/audit", search, next)} />
    </PlainPage>
  );
}
