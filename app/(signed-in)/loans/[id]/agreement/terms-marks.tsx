/** What stands out in a version of the terms: what differs from the standard, and what an amendment changes. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { agreementTermsWords as words } from "#app/_words/en/agreement-terms.ts";
import { ownTerms } from "#app/(signed-in)/loans/[id]/agreement/terms-choices.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import { differenceCells } from "#lib/papers/agreement-amendment.ts";
import { englishPaper } from "#lib/papers/english.ts";

export function OwnTerms({ terms }: { terms: CurrentTerms }) {
  const rows = ownTerms(terms);
  if (rows.length === 0) return <p className="quiet small">{words.allStandard}</p>;
  return (
    <DataTable
      caption={words.ownTerms}
      rows={rows}
      rowKey={(row) => row.key}
      columns={[
        { key: "clause", label: words.what, cell: (row) => `${row.clause} ${row.label}` },
        { key: "here", label: words.here, cell: (row) => <mark>{row.here}</mark> },
        { key: "standard", label: words.standardHead, cell: (row) => row.standard },
      ]}
    />
  );
}

/** @param isPlanned it is not frozen yet */
export function AmendmentOf({ terms, isPlanned = false }: { terms: CurrentTerms; isPlanned?: boolean }) {
  const { amends } = terms;
  if (amends === null) return null;
  const { number, version, differences } = amends;
  const rows = differences.map((difference) => {
    const [what, before, after] = differenceCells(difference, terms, englishPaper, clausesIn.en);
    return { key: difference.path.join("/"), what, before, after };
  });
  return (
    <>
      <p>{isPlanned ? words.wouldAmend(number, version) : words.amends(number, version)}</p>
      {rows.length === 0 ? (
        <p className="quiet">{words.nothingDiffers}</p>
      ) : (
        <DataTable
          caption={words.differences}
          captionHidden={isPlanned}
          rows={rows}
          rowKey={(row) => row.key}
          columns={[
            { key: "what", label: words.what, cell: (row) => row.what },
            { key: "before", label: words.before, cell: (row) => row.before },
            { key: "after", label: words.after, cell: (row) => <mark>{row.after}</mark> },
          ]}
        />
      )}
      <p className="quiet small">{words.signedStay}</p>
    </>
  );
}
