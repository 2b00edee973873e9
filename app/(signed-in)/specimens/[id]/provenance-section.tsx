/** Where it came from and what was allowed: scopes and limits, never who. */
import Link from "next/link";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Unknown } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { formatDate } from "#app/_words/format.ts";
import { ScopeList } from "#app/(signed-in)/specimens/[id]/scope-list.tsx";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { ProvenanceSheet } from "#lib/provenance/queries.ts";
import type { AudienceLimit } from "#lib/provenance/schema.ts";

/** The narrowest limit that is known, and that somebody's is not. */
function audienceText({ limit, unknown }: { limit: AudienceLimit; unknown: boolean }): string {
  if (limit === "unknown") return words.unknown;
  return unknown ? words.atMost(limit) : limit;
}

/** Once a consent has ended, what it granted is told as what it was. */
function Scopes({
  provenance,
  strictest,
}: {
  provenance: ProvenanceSheet;
  strictest: NonNullable<ProvenanceSheet["strictest"]>;
}) {
  if (strictest.notInForce.length === 0)
    return (
      <>
        <h3>{words.consentHeld}</h3>
        <ScopeList label={words.consentHeld} answerOf={(scope) => strictest.answers[scope].answer} />
      </>
    );
  const ended = (provenance.consents ?? []).filter(({ status }) => !status.inForce);
  const days = new Set(
    ended.flatMap(({ status: { state, endsOn } }) => {
      if (endsOn === null) return [];
      const day = formatDate(endsOn);
      return state === "withdrawn" ? words.consentWithdrawn(day) : words.consentExpired(day);
    }),
  );
  const only = provenance.donorCount === 1 ? ended[0] : undefined;
  return (
    <>
      <h3>{words.consentHeld}</h3>
      <p>
        <StateMark outcome="bar">{[...days].join(" ")}</StateMark> {words.nothingCounts}
      </p>
      {only && (
        <details>
          <summary>{words.givenBefore}</summary>
          <ScopeList label={words.givenBefore} answerOf={(scope) => only.answers[scope]} />
        </details>
      )}
    </>
  );
}

export function ProvenanceSection({ viewer, provenance }: { viewer: Viewer; provenance: ProvenanceSheet }) {
  const { strictest, title, permits, donorCodes } = provenance;
  const edits = (["recordTitle", "recordPermit", "linkDonor"] as const).some((act) => mayDo(viewer, act));
  return (
    <Section
      id="provenance"
      title={words.provenance}
      margin={
        provenance.human && (
          <>
            {provenance.donorCount === 0 && <MarginNote outcome="attend" title={words.noDonor} />}
            <MarginNote title={words.sealedCaution} />
          </>
        )
      }
    >
      <Facts
        facts={[
          [
            words.titleStatus,
            title ? (
              `${title.status}${title.ownerName && `, ${title.ownerName}`}${title.status === "owned" ? "" : title.leaveToLend ? `, ${words.leave} ${title.leaveReference}` : `, ${words.noLeave}`}`
            ) : (
              <Unknown key="title" />
            ),
          ],
          donorCodes !== null &&
            donorCodes.length > 0 && [
              words.donors,
              donorCodes.map((code) => (
                <Link key={code} className="mono" href={`/donors/${code}`} style={{ marginRight: "0.8rem" }}>
                  {code}
                </Link>
              )),
            ],
          strictest && [words.audience, audienceText(strictest.audience)],
          strictest && [
            words.countries,
            strictest.territoriesAllowed === null
              ? words.noList
              : strictest.territoriesAllowed.join(", ") || words.nowhere,
          ],
          strictest &&
            strictest.territoriesRefused.length > 0 && [
              words.countriesRefused,
              strictest.territoriesRefused.join(", "),
            ],
          strictest?.validUntil && [
            words.validUntil,
            <DateText key="until" date={strictest.validUntil.value} />,
          ],
          strictest?.dispositionDue && [
            words.disposition,
            <>
              {strictest.dispositionDue.value.disposition},{" "}
              <DateText key="due" date={strictest.dispositionDue.value.dueOn} />
            </>,
          ],
        ]}
      />
      {strictest && <Scopes provenance={provenance} strictest={strictest} />}
      <DataTable
        caption={words.permits}
        rows={permits}
        rowKey={(row) => `${row.kind} ${row.number}`}
        empty={<p className="quiet">{words.noPermits}</p>}
        columns={[
          { key: "kind", label: words.kind, cell: (row) => row.kind },
          { key: "number", label: words.number, cell: (row) => <span className="mono">{row.number}</span> },
          { key: "authority", label: words.authority, cell: (row) => row.authority },
          { key: "territories", label: words.countries, cell: (row) => row.territories.join(", ") },
          { key: "until", label: words.validUntil, cell: (row) => <DateText date={row.validUntil} /> },
        ]}
      />
      {edits && (
        <Link className="no-print" href={`/specimens/${provenance.specimenId}/provenance`}>
          {words.editProvenance}
        </Link>
      )}
    </Section>
  );
}
