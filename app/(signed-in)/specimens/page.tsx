/** The catalogue: search by number, title or structure, narrowed by what it is and when it is free. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState, ListKeys } from "#app/_parts/data-table.tsx";
import { type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StripLegend } from "#app/_parts/strip.tsx";
import { orRefused } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { soughtWords } from "#app/_words/en/go.ts";
import { specimenListWords as listWords } from "#app/_words/en/specimens.ts";
import { outOfReach } from "#app/(signed-in)/go/address.ts";
import { loanDaysAround } from "#app/(signed-in)/specimens/days-around.ts";
import {
  askedDays,
  leavesSheetsOut,
  listAnchor,
  readFields,
  readFilter,
  readPage,
  type SearchFields,
  searchAddress,
} from "#app/(signed-in)/specimens/search-fields.ts";
import { SpecimenSearch } from "#app/(signed-in)/specimens/specimen-search.tsx";
import { SpecimenTable } from "#app/(signed-in)/specimens/specimen-table.tsx";
import { stripWindow } from "#app/(signed-in)/specimens/strip-window.ts";
import { listRegionsAndSystems } from "#lib/anatomy/queries.ts";
import { findSlip } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import { practiceHere } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { type DaysAround, mostDaysAround } from "#lib/specimens/days-around.ts";
import {
  listAnimalSpecies,
  listSpecimens,
  type SpecimenList,
} from "#lib/specimens/queries/list-specimens.ts";
import { type BufferDays, bufferDaysOf } from "#lib/suitability/period.ts";
import { freePeriodsOf } from "#lib/whereabouts/queries.ts";

export const metadata: Metadata = { title: words.specimens };

const nothing: SpecimenList = { rows: [], next: null, previous: null, meant: [] };

/** The days around, no shorter than those of the slip that this person is gathering. */
async function readDaysAround(viewer: Viewer, own: BufferDays): Promise<DaysAround[]> {
  const slip = isBorrower(viewer) && mayDo(viewer, "openLoan") ? await findSlip(viewer) : null;
  return loanDaysAround(own, slip && slip.specimens.length > 0 ? await getLoan(viewer, slip.id) : undefined);
}

/** How the text was understood, and what else may be asked. */
function Understood({ fields, list }: { fields: SearchFields; list: SpecimenList }) {
  const { meant } = list;
  const implied = Boolean(fields.implied);
  const leftOut = Boolean(fields.q ?? fields.structure) && leavesSheetsOut(fields);
  return (
    <>
      {meant.length > 0 && (
        <p>
          {words.takenToMean}:{" "}
          {meant.map((structure, position) => (
            <span key={structure.id}>
              {position > 0 && "; "}
              {structure.english} <i>{structure.latin}</i>
            </span>
          ))}
        </p>
      )}
      {implied && meant.length > 0 && (
        <p>{listWords.impliedAbout(meant.map(({ english }) => english).join(", "))}</p>
      )}
      {(leftOut || meant.length > 0) && (
        <p className="quiet small no-print">
          {leftOut && (
            <>
              {listWords.sheetsLeftOut}{" "}
              <Link href={searchAddress(fields, { sheets: "yes" })}>{listWords.showSheets}</Link>
            </>
          )}
          {leftOut && meant.length > 0 && " · "}
          {meant.length > 0 && (
            <Link href={searchAddress(fields, { implied: implied ? "" : "yes" })}>
              {implied ? listWords.showRecorded : listWords.showImplied}
            </Link>
          )}
        </p>
      )}
    </>
  );
}

export default async function SpecimensPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/specimens", search));
  const fields = readFields(search);
  const asked = askedDays(fields);
  const own = bufferDaysOf(await practiceHere());
  const around = asked ? await readDaysAround(viewer, own) : loanDaysAround(own);
  const { found, refused } = await orRefused(() =>
    listSpecimens(viewer, readFilter(fields, around), readPage(fields)),
  );
  const list = found ?? nothing;
  const window = stripWindow(today(), asked, around);
  const free = await freePeriodsOf(
    viewer,
    list.rows.map((row) => row.id),
    window.from,
    // For who borrows, the days after a loan may reach beyond what the strips show.
    isBorrower(viewer) && !asked ? addDays(window.until, mostDaysAround(around).after) : window.until,
  );
  const searched = Object.entries(fields).some(
    ([name, value]) => value && !["after", "before"].includes(name),
  );
  const sought = fields.q ? await outOfReach(viewer, fields.q.trim()) : null;

  return (
    <PlainPage>
      <Masthead
        title={words.specimens}
        standing={
          mayDo(viewer, "recordSpecimen") && (
            <Link className="act no-print" href="/specimens/new">
              {words.newSpecimen}
            </Link>
          )
        }
      />
      <SpecimenSearch
        around={own}
        fields={fields}
        groups={await listRegionsAndSystems(viewer)}
        species={await listAnimalSpecies(viewer)}
      />
      <h2 id={listAnchor} tabIndex={-1} data-heads-list>
        {searched ? listWords.found : listWords.all}
      </h2>
      {sought && fields.q && <p role="status">{soughtWords[sought](fields.q)}</p>}
      {refused && (
        <p role="alert" className="form-refused">
          {refused.join(" ")}
        </p>
      )}
      <Understood fields={fields} list={list} />
      {list.rows.length > 0 && (
        <>
          <StripLegend asked={asked !== null} toBeHad={isBorrower(viewer) && asked === null} />
          <ListKeys>{listWords.rowKeys}</ListKeys>
        </>
      )}
      <SpecimenTable
        rows={list.rows}
        free={free}
        window={window}
        asked={asked}
        around={around}
        said={{ text: Boolean(fields.q), implied: Boolean(fields.implied) }}
        notes={isBorrower(viewer)}
        empty={
          <EmptyState
            action={
              searched || refused ? (
                <Link href="/specimens">{words.clear}</Link>
              ) : (
                mayDo(viewer, "recordSpecimen") && (
                  <Link className="act" href="/specimens/new">
                    {words.newSpecimen}
                  </Link>
                )
              )
            }
          >
            {refused ? words.notSearched : searched ? words.noneFound : words.noneYet}
          </EmptyState>
        }
      />
      <Pager
        previous={list.previous && searchAddress(fields, { before: list.previous })}
        next={list.next && searchAddress(fields, { after: list.next })}
      />
    </PlainPage>
  );
}
