/** One series: the level ruler at true scale, the open sheet at its tick, and the geometry. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { LevelRuler } from "#app/_parts/level-ruler.tsx";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { MarginNote, Masthead, NextBox, RecordPage, Section, WorkingNote } from "#app/_parts/record-page.tsx";
import { SpecimenPlate } from "#app/_parts/specimen-plate.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { seriesWords as words } from "#app/_words/en/catalogue.ts";
import { formatNumber, formatShare } from "#app/_words/format.ts";
import { seriesNext } from "#app/(signed-in)/series/[id]/series-next.tsx";
import { listLentOf } from "#lib/desk/queries/lent.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { getSeries, type SeriesSheetRow } from "#lib/specimens/queries/series.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import { numberRuns } from "#lib/specimens/series.ts";
import { sheetSeries, sheetShrinkage } from "#lib/specimens/sheet-series.ts";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Search> };

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(sameAddress(`/series/${id}`, await searchParams));
  const series = await orNotFound(() => getSeries(viewer, id));
  return { title: `${series.code} ${series.title}` };
}

const toneOf = { here: "clear", lent: "attend", missing: "bar" } as const;

function runs(numbers: readonly number[]): string {
  return (
    numberRuns(numbers)
      .map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`))
      .join(", ") || words.noneMissing
  );
}

export default async function SeriesPage({ params, searchParams }: Props) {
  const { id } = await params;
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress(`/series/${id}`, search));
  const series = await orNotFound(() => getSeries(viewer, id));
  const asked = Number(parameterOf(search, "sheet"));
  const { geometry, sheets } = series;
  const current = sheets.find((sheet) => sheet.number === asked) ?? sheets[Math.floor(sheets.length / 2)];
  const day = today();
  const [fromEnd, toEnd] = series.direction.split(" to ") as [string, string];
  const specimenIds = sheets.flatMap(({ specimenId }) => specimenId ?? []);
  const lent = maySee(viewer, "allLoans") ? await listLentOf(viewer, specimenIds) : [];
  const isEven = sheets.every(({ thicknessMm }) => thicknessMm === series.thicknessMm);
  const cut = isEven
    ? sheetSeries.explain({
        thicknessMm: series.thicknessMm,
        sawLossMm: series.sawLossMm,
        sheetCount: series.sheetCount,
        firstNumber: series.firstNumber,
        startLevelMm: series.startLevelMm,
        missing: geometry.missing,
      })
    : null;
  const shrunk =
    series.shrinkageArea === null
      ? null
      : sheetShrinkage.explain({ measuredMm: 100, areaShrinkage: series.shrinkageArea });
  const drawn = current?.specimenId ? await getSpecimen(viewer, current.specimenId) : null;
  const levels = series.landmarks.flatMap(({ number, level }) => {
    const sheet = sheets.find((row) => row.number === number);
    return sheet ? [{ level, atMm: sheet.centreMm }] : [];
  });
  const label = (sheet: SeriesSheetRow) =>
    [`${words.sheet} ${sheet.number}`, sheet.level, words.states[sheet.state]].filter(Boolean).join(", ");

  return (
    <RecordPage
      masthead={
        <Masthead
          number={series.code}
          title={series.title}
          latin={`${series.plane}, ${series.direction}`}
          standing={
            mayDo(viewer, "recordSeries") && (
              <p className="no-print">
                <Link href={`/series/${id}/edit`}>{words.edit}</Link>
              </p>
            )
          }
        />
      }
      next={!isBorrower(viewer) && <NextBox things={seriesNext({ series, lent, runs, today: day })} />}
      index={[
        { id: "ruler", label: words.ruler },
        { id: "geometry", label: words.geometry },
        { id: "sheets", label: words.sheets, count: sheets.length },
      ]}
    >
      <Section
        id="ruler"
        title={words.ruler}
        margin={
          <>
            <MarginNote outcome={geometry.missing.length > 0 ? "attend" : "clear"} title={words.missing}>
              {runs(geometry.missing)}
            </MarginNote>
            <MarginNote title={words.lent}>{runs(geometry.lent)}</MarginNote>
            <MarginNote
              title={series.startLevelMm === 0 ? words.positionFromFace : words.positionFromZero(fromEnd)}
            />
          </>
        }
      >
        <div style={{ display: "flex", flexWrap: "wrap", gap: "1.5rem" }}>
          <LevelRuler
            title={words.ruler}
            ends={[fromEnd, toEnd]}
            levels={levels}
            current={current?.number ?? null}
            sheets={sheets.map((sheet) => ({
              ...sheet,
              href: `?sheet=${sheet.number}`,
              label: label(sheet),
            }))}
          />
          {current && (
            <div style={{ flex: "1 1 20rem", minWidth: 0 }}>
              <h3>
                {words.sheet} {current.number}
                {current.level && `, ${current.level}`}
              </h3>
              {drawn ? (
                <SpecimenPlate specimen={{ ...drawn, picture: null }} />
              ) : (
                <p className="outcome-bar">{words.states.missing}</p>
              )}
              <Facts
                facts={[
                  [
                    words.state,
                    <StateMark key="state" outcome={toneOf[current.state]}>
                      {words.states[current.state]}
                    </StateMark>,
                  ],
                  [
                    words.position,
                    `${formatNumber(current.fromMm, 1)} to ${formatNumber(current.toMm, 1)} mm`,
                  ],
                  [words.thickness, `${formatNumber(current.thicknessMm)} mm`],
                ]}
              />
              {current.specimenId && (
                <Link href={`/specimens/${current.specimenId}`}>
                  {words.open} {current.accessionNumber}
                </Link>
              )}
            </div>
          )}
        </div>
        <p className="quiet small">{words.rulerCaption}</p>
      </Section>
      <Section
        id="geometry"
        title={words.geometry}
        margin={
          <>
            <MarginNote title={words.coverage} source={words.coverageSource} />
            {cut && (
              <WorkingNote title={`${words.blockLength}, ${words.sawLoss.toLowerCase()}`} working={cut} />
            )}
            {shrunk && <WorkingNote title={words.shrinkageNote} working={shrunk} />}
          </>
        }
      >
        <Facts
          facts={[
            [words.thickness, `${formatNumber(series.thicknessMm)} mm`],
            [
              words.sawLoss,
              `${formatNumber(series.sawLossMm)} mm, ${formatNumber(geometry.lossMm, 1)} mm altogether`,
            ],
            [words.blockLength, `${formatNumber(geometry.blockLengthMm, 1)} mm`],
            [words.coverage, formatShare(geometry.coverage, 1)],
            [words.coverageHere, formatShare(geometry.coverageHere, 1)],
            [words.embedding, series.embedding],
            series.shrinkageArea !== null && [words.shrinkage, formatShare(series.shrinkageArea, 2)],
          ]}
        />
      </Section>
      <Section id="sheets" title={words.sheets}>
        <DataTable<SeriesSheetRow>
          caption={words.sheets}
          captionHidden
          dense
          rows={sheets}
          rowKey={(row) => String(row.number)}
          columns={[
            {
              key: "number",
              label: words.sheet,
              right: true,
              cell: (row) => <Link href={`?sheet=${row.number}#ruler`}>{row.number}</Link>,
            },
            {
              key: "accession",
              label: words.code,
              cell: (row) =>
                row.specimenId && (
                  <Link className="mono" href={`/specimens/${row.specimenId}`}>
                    {row.accessionNumber}
                  </Link>
                ),
            },
            { key: "level", label: words.level, cell: (row) => row.level },
            {
              key: "from",
              label: words.position,
              right: true,
              cell: (row) => `${formatNumber(row.fromMm, 1)} mm`,
            },
            {
              key: "state",
              label: words.state,
              cell: (row) => <StateMark outcome={toneOf[row.state]}>{words.states[row.state]}</StateMark>,
            },
          ]}
        />
      </Section>
    </RecordPage>
  );
}
