/** The set that is proposed: what of it shows what, how sure it is, and what stays unshown. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { borrowWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { findingSentence } from "#app/_words/finding-sentence.ts";
import { formatDate, formatRange } from "#app/_words/format.ts";
import { countryName } from "#app/_words/readable.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { SetFields } from "#app/(signed-in)/borrow/read-question.ts";
import { withheld } from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import { noteSetOnSlip } from "#app/(signed-in)/slip/actions.ts";
import type { KeptBack, SetProposal, Unshown } from "#lib/loans/queries/propose-set.ts";
import { mostCandidates } from "#lib/loans/wanted.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** More than these are counted and not listed. */
const mostKeptBack = 20;

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

const waysOut = (findings: readonly Finding[]) => [
  ...new Set(findings.map(({ wayOut, parameters }) => sentence(wayOut, parameters))),
];

/** The group alone where the reason is not for this viewer. */
const reasons = (findings: readonly Finding[]) => [
  ...new Set(
    findings.map((finding) =>
      finding.fact === withheld
        ? loanWords.groups[finding.group]
        : `${loanWords.groups[finding.group]}: ${findingSentence(finding)}`,
    ),
  ),
];

function Lines({ sentences }: { sentences: readonly string[] }) {
  return sentences.map((one) => (
    <span key={one} style={{ display: "block" }}>
      {one}
    </span>
  ));
}

function KeptBackList({ rows }: { rows: readonly KeptBack[] }) {
  return (
    <>
      <h3>{words.keptBack}</h3>
      <p>{words.keptBackAbout(rows.length)}</p>
      <DataTable
        caption={words.keptBackCaption}
        captionHidden
        rows={rows.slice(0, mostKeptBack)}
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
          { key: "title", label: catalogueWords.title, onCard: "bare", cell: ({ title }) => title },
          {
            key: "because",
            label: words.because,
            cell: ({ because }) => <Lines sentences={reasons(because)} />,
          },
          {
            key: "wayOut",
            label: words.wayOut,
            cell: ({ because }) => <Lines sentences={waysOut(because)} />,
          },
        ]}
      />
      {rows.length > mostKeptBack && (
        <p className="quiet">{words.moreKeptBack(rows.length - mostKeptBack)}</p>
      )}
    </>
  );
}

function placeOf(venue: string | null, countryCode: string): string {
  const country = countryName(countryCode);
  return venue === null ? words.somewhereIn(country) : words.atVenue(venue, country);
}

export function SetResult({
  proposal,
  venue,
  fields: { purpose, audience, paid, use, venue: venueId },
  notes,
}: {
  proposal: SetProposal;
  /** Null where no venue is chosen. */
  venue: string | null;
  fields: Pick<SetFields, "purpose" | "audience" | "paid" | "use" | "venue">;
  notes: boolean;
}) {
  const { days, kept, specimens, wanted, unshown, keptBack, tooSoon, countryCode } = proposal;
  const range = formatRange(days.startsOn, days.endsOn);
  const before = paid ? `${audience}, ${words.paid}` : audience;
  return (
    <>
      <p role="status">
        {specimens.length > 0
          ? words.found(specimens.length, wanted.length - unshown.length, range)
          : words.none(range)}
      </p>
      <p className="quiet">
        {words.judgedFor(loanWords.purposes[purpose], before, placeOf(venue, countryCode))}
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
              {
                key: "papers",
                label: words.papers,
                cell: ({ papersWanted }) =>
                  papersWanted.length === 0 ? (
                    <span className="quiet">{words.noPapers}</span>
                  ) : (
                    <Lines sentences={waysOut(papersWanted)} />
                  ),
              },
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
          <input type="hidden" name="purpose" value={purpose} />
          <input type="hidden" name="audience" value={audience} />
          <input type="hidden" name="paid" value={paid ? "yes" : ""} />
          <input type="hidden" name="use" value={use} />
          <input type="hidden" name="venue" value={venueId} />
          <input type="hidden" name="freeFrom" value={days.startsOn} />
          <input type="hidden" name="freeUntil" value={days.endsOn} />
          <p className="quiet small">{words.putOnSlipAbout}</p>
        </ActForm>
      )}
      {keptBack.length > 0 && <KeptBackList rows={keptBack} />}
    </>
  );
}
