/** The centre's fee scale: the version that counts, or the one that is asked for, and all versions. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { Masthead, PlainPage, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { feeWords as words } from "#app/_words/en/money.ts";
import { formatDate } from "#app/_words/format.ts";
import { ScaleTables, scaleSections } from "#app/(signed-in)/centre/fees/scale-tables.tsx";
import { type FeeScaleVersion, listFeeScales } from "#lib/costing/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import { today } from "#lib/platform/clock.ts";

export const metadata: Metadata = { title: words.title };

function standingOf({ counts, validFrom }: FeeScaleVersion): string {
  if (counts) return words.counts;
  return validFrom > today() ? words.later : words.over;
}

export default async function FeesPage({ searchParams }: { searchParams: Promise<Search> }) {
  const viewer = await requireViewer("/centre/fees");
  const versions = await orNotFound(() => listFeeScales(viewer));
  const asked = parameterOf(await searchParams, "version");
  const shown =
    versions.find((one) => String(one.version) === asked) ??
    versions.find((one) => one.counts) ??
    versions[0];
  const edit = mayDo(viewer, "setFeeScale") && (
    <Link className={shown ? undefined : "act"} href="/centre/fees/edit">
      {shown ? words.edit : words.set}
    </Link>
  );
  if (!shown)
    return (
      <PlainPage>
        <Masthead title={words.title} />
        <EmptyState action={edit}>{words.none}</EmptyState>
      </PlainPage>
    );
  return (
    <RecordPage
      masthead={
        <Masthead
          title={words.title}
          latin={`${words.version(shown.version)}, ${standingOf(shown)}, from ${formatDate(shown.validFrom)}`}
          standing={edit && <p className="no-print">{edit}</p>}
        />
      }
      index={[...scaleSections, { id: "history", label: words.history }]}
    >
      <ScaleTables scale={shown.scale} />
      <Section id="history" title={words.history}>
        <DataTable
          caption={words.historyCaption}
          captionHidden
          rows={versions}
          rowKey={(one) => String(one.version)}
          columns={[
            {
              key: "version",
              label: words.history,
              cell: (one) => (
                <Link href={`/centre/fees?version=${one.version}`}>{words.version(one.version)}</Link>
              ),
            },
            { key: "from", label: words.validFrom, cell: (one) => <DateText date={one.validFrom} /> },
            { key: "standing", label: words.currency, cell: (one) => one.scale.currency },
            {
              key: "set",
              label: words.setBy,
              cell: (one) => (
                <>
                  {one.setBy !== "" && `${one.setBy}, `}
                  <Moment at={one.setAt} />
                </>
              ),
            },
          ]}
        />
      </Section>
    </RecordPage>
  );
}
