/** The versions of a venue's facility report, each with what it changed against the one before. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { facilityPaperWords } from "#app/_words/en/facility-paper.ts";
import { papersWords } from "#app/_words/en/papers.ts";
import { answerWord, questionWord } from "#app/(signed-in)/venues/[id]/answers.tsx";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { type FacilityChange, facilityChanges } from "#lib/people/facility-changes.ts";
import type { FacilityVersion } from "#lib/people/queries/facility.ts";

function ChangeLine({ change }: { change: FacilityChange }) {
  if (change.of !== "answer")
    return (
      <>
        {words[change.of]} {change.name}: {words.became[change.became]}
      </>
    );
  const { section, question } = change;
  return (
    <>
      {questionWord(section, question)}: <span className="visually-hidden">{words.from} </span>
      <del>{answerWord(section, question, change.before)}</del> <span aria-hidden="true">→</span>
      <span className="visually-hidden"> {words.to}</span>{" "}
      <ins>{answerWord(section, question, change.after)}</ins>
    </>
  );
}

function Changes({ changes }: { changes: readonly FacilityChange[] | null }) {
  if (changes === null) return <span className="quiet">{words.firstVersion}</span>;
  if (changes.length === 0) return <span className="quiet">{words.noChange}</span>;
  return (
    <ul>
      {changes.map((change) => (
        <li
          key={
            change.of === "answer"
              ? `${change.section} ${change.question}`
              : `${change.of} ${change.name} ${change.became}`
          }
        >
          <ChangeLine change={change} />
        </li>
      ))}
    </ul>
  );
}

/** One version in each language and on either sheet. */
function Papers({
  address,
  version,
  languages,
}: {
  address: string;
  version: number;
  languages: readonly PaperLanguage[];
}) {
  return (
    <ul>
      {languages.map((language) => {
        const named = papersWords.languages[language] ?? language;
        return (
          <li key={language}>
            {named}:{" "}
            {paperSizes.map((size, index) => (
              <span key={size}>
                {index > 0 && ", "}
                <a
                  href={`${address}?version=${version}&language=${language}&size=${size}`}
                  aria-label={facilityPaperWords.readAs(version, named, papersWords.sizes[size])}
                >
                  {papersWords.sizes[size]}
                </a>
              </span>
            ))}
          </li>
        );
      })}
    </ul>
  );
}

/** @param languages those of the papers, that of the institution first */
export function Versions({
  venueId,
  languages,
  reports,
}: {
  venueId: string;
  languages: readonly PaperLanguage[];
  reports: readonly FacilityVersion[];
}) {
  return (
    <DataTable
      caption={words.versionsCaption}
      rows={reports.map((report, at) => {
        const earlier = reports[at + 1];
        return { report, changes: earlier ? facilityChanges(earlier.answers, report.answers) : null };
      })}
      rowKey={({ report }) => String(report.version)}
      columns={[
        { key: "version", label: words.version, right: true, cell: ({ report }) => report.version },
        { key: "on", label: words.reportedOn, cell: ({ report }) => <DateText date={report.reportedOn} /> },
        { key: "by", label: words.reportedBy, cell: ({ report }) => report.reportedBy },
        {
          key: "until",
          label: words.countsUntil,
          cell: ({ report }) => <DateText date={report.validUntil} />,
        },
        {
          key: "paper",
          label: facilityPaperWords.asPdf,
          cell: ({ report: { version } }) => (
            <Papers address={`/venues/${venueId}/paper`} version={version} languages={languages} />
          ),
        },
        { key: "changes", label: words.changes, cell: ({ changes }) => <Changes changes={changes} /> },
      ]}
    />
  );
}
