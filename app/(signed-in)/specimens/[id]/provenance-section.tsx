/** Where it came from and what was allowed: scopes and limits, never who. */
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Unknown } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { ProvenanceSheet } from "#lib/provenance/queries.ts";
import { scopes } from "#lib/provenance/schema.ts";

const toneOf = { granted: "clear", refused: "bar", "not asked": "attend", unknown: "attend" } as const;

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
          strictest && [
            words.audience,
            strictest.audience.unknown
              ? `${strictest.audience.limit} (${words.unknown})`
              : strictest.audience.limit,
          ],
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
      {strictest && (
        <DataTable
          caption={words.consentHeld}
          rows={scopes}
          rowKey={(scope) => scope}
          columns={[
            { key: "scope", label: words.scope, cell: (scope) => scope },
            {
              key: "answer",
              label: words.answer,
              cell: (scope) => (
                <StateMark outcome={toneOf[strictest.answers[scope].answer]}>
                  {strictest.answers[scope].answer}
                </StateMark>
              ),
            },
          ]}
        />
      )}
      <DataTable
        caption={words.permits}
        rows={permits}
        rowKey={(row) => `${row.kind} ${row.number}`}
        empty={!provenance.human && <EmptyState>{words.noPermits}</EmptyState>}
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
