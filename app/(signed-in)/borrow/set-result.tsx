/** The set that is proposed: what of it shows what, how sure it is, and what stays unshown. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { borrowWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import { formatDate, formatRange } from "#app/_words/format.ts";
import { noteSetOnSlip } from "#app/(signed-in)/slip/actions.ts";
import type { SetProposal, Unshown } from "#lib/loans/queries/propose-set.ts";
import { mostCandidates } from "#lib/loans/wanted.ts";

/** How sure it is that no smaller set would do. */
function sureness({ isSmallest, atLeast, compared, isAll }: SetProposal): string {
  const said = isSmallest ? words.smallest(compared) : words.bound(atLeast, compared);
  return isAll ? said : `${said} ${words.firstOnly(mostCandidates)}`;
}

function UnshownList({ unshown }: { unshown: readonly Unshown[] }) {
  return (
    <>
      <h3>{words.unshown}</h3>
      <ul>
        {unshown.map(({ structure, reason, next }) => (
          <li key={structure.id}>
            <strong>{structure.english}</strong>: {words.reasons[reason]}
            {next && (
              <>
                ;{" "}
                <Link className="mono" href={`/specimens/${next.id}`}>
                  {next.accessionNumber}
                </Link>{" "}
                {words.next(formatDate(next.deliverFrom))}
              </>
            )}
            .
          </li>
        ))}
      </ul>
    </>
  );
}

export function SetResult({ proposal, notes }: { proposal: SetProposal; notes: boolean }) {
  const { days, kept, specimens, wanted, unshown, tooSoon } = proposal;
  const range = formatRange(days.startsOn, days.endsOn);
  return (
    <>
      <p role="status">
        {specimens.length > 0
          ? words.found(specimens.length, wanted.length - unshown.length, range)
          : words.none(range)}
      </p>
      {tooSoon && <p>{words.tooSoon(formatDate(tooSoon))}</p>}
      {specimens.length > 0 && (
        <>
          <DataTable
            caption={words.tableCaption}
            captionHidden
            rows={specimens}
            rowKey={({ id }) => id}
            columns={[
              {
                key: "number",
                label: catalogueWords.number,
                cell: ({ id, accessionNumber }) => (
                  <Link className="mono" href={`/specimens/${id}`}>
                    {accessionNumber}
                  </Link>
                ),
              },
              {
                key: "title",
                label: catalogueWords.title,
                onCard: "bare",
                cell: ({ title, human, scientificName }) => (
                  <>
                    {title}
                    {!human && (
                      <>
                        {" "}
                        <i className="quiet">{scientificName}</i>
                      </>
                    )}
                  </>
                ),
              },
              {
                key: "shows",
                label: words.shows,
                cell: ({ shows }) => shows.map(({ english, seen }) => `${english} (${seen})`).join("; "),
              },
              {
                key: "preparation",
                label: catalogueWords.preparation,
                cell: ({ preparation }) => preparation,
              },
              { key: "use", label: catalogueWords.use, cell: ({ use }) => catalogueWords.useWords[use] },
            ]}
          />
          <p className="quiet">
            {sureness(proposal)} {words.kept(formatRange(kept.startsOn, kept.endsOn))}
          </p>
        </>
      )}
      {unshown.length > 0 && <UnshownList unshown={unshown} />}
      {notes && specimens.length > 0 && (
        <ActForm
          action={noteSetOnSlip}
          label={words.putOnSlip(specimens.length)}
          button={words.putOnSlip(specimens.length)}
        >
          {specimens.map(({ id }) => (
            <input key={id} type="hidden" name="specimenId" value={id} />
          ))}
          <input type="hidden" name="freeFrom" value={days.startsOn} />
          <input type="hidden" name="freeUntil" value={days.endsOn} />
          <p className="quiet small">{words.putOnSlipAbout}</p>
        </ActForm>
      )}
    </>
  );
}
