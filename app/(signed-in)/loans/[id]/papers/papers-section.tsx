/** The papers of a loan: what was issued in which version, as A4 and as Letter, and what can be issued now. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { FieldGrid, SelectField } from "#app/_parts/fields.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { papersWords as words } from "#app/_words/en/papers.ts";
import { issuePapers } from "#app/(signed-in)/loans/[id]/papers/paper-actions.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import type { IssuableKind, PaperRow, SubjectName } from "#lib/papers/queries/loan-papers.ts";
import { paperSizes } from "#lib/papers/sheet.ts";

function subjectWords({ direction, crate }: SubjectName): string {
  return [direction === null ? "" : words.directions[direction], crate ?? ""].filter(Boolean).join(", ");
}

function PapersTable({
  loanId,
  caption,
  papers,
}: {
  loanId: string;
  caption: string;
  papers: readonly PaperRow[];
}) {
  return (
    <DataTable
      caption={caption}
      captionHidden
      rows={papers}
      rowKey={(paper) => paper.id}
      columns={[
        { key: "paper", label: words.paper, cell: (paper) => words.kinds[paper.kind] },
        { key: "subject", label: words.subject, cell: subjectWords },
        { key: "version", label: words.version, right: true, cell: (paper) => paper.version },
        {
          key: "language",
          label: words.language,
          cell: (paper) => words.languages[paper.language] ?? paper.language,
        },
        { key: "issued", label: words.issued, cell: (paper) => <Moment at={paper.issuedAt} /> },
        { key: "by", label: words.issuedBy, cell: (paper) => paper.issuedBy },
        {
          key: "read",
          label: words.read,
          cell: (paper) =>
            paperSizes.map((size, index) => (
              <span key={size}>
                {index > 0 && ", "}
                <a
                  href={`/loans/${loanId}/papers/${paper.id}?size=${size}`}
                  aria-label={words.readAs(
                    words.kinds[paper.kind],
                    subjectWords(paper),
                    paper.version,
                    words.languages[paper.language] ?? paper.language,
                    words.sizes[size],
                  )}
                >
                  {words.sizes[size]}
                </a>
              </span>
            )),
        },
      ]}
    />
  );
}

/** One choice for each kind and way. */
function choicesOf(issuable: readonly IssuableKind[]): [value: string, word: string][] {
  return issuable.flatMap(({ kind, subjects }) =>
    [...new Set(subjects.map(({ direction }) => direction))].map((direction): [string, string] => {
      const mine = subjects.filter((subject) => subject.direction === direction);
      const way = direction === null ? "" : words.directions[direction];
      const perCrate = mine.some(({ crate }) => crate !== null);
      return [`${kind}|${direction ?? ""}`, words.group(words.kinds[kind], way, mine.length, perCrate)];
    }),
  );
}

export function PapersSection({
  loanId,
  papers,
  issuable,
  languages,
}: {
  loanId: string;
  papers: readonly PaperRow[];
  issuable: readonly IssuableKind[];
  /** The borrower's first. */
  languages: readonly PaperLanguage[];
}) {
  const newest = papers.filter((paper) => paper.isNewest);
  const earlier = papers.filter((paper) => !paper.isNewest);
  return (
    <Section
      id="papers"
      title={loanWords.sections.papers}
      margin={<MarginNote title={words.title}>{words.about}</MarginNote>}
    >
      {newest.length === 0 ? (
        <EmptyState>{issuable.length === 0 ? words.noneYet : words.none}</EmptyState>
      ) : (
        <PapersTable loanId={loanId} caption={words.caption} papers={newest} />
      )}
      {earlier.length > 0 && (
        <details>
          <summary>{words.earlier(earlier.length)}</summary>
          <PapersTable loanId={loanId} caption={words.earlierCaption} papers={earlier} />
        </details>
      )}
      {issuable.length > 0 && (
        <div className="no-print">
          <ActForm
            action={issuePapers.bind(null, loanId)}
            label={words.issue}
            button={words.issue}
            look="outline"
          >
            <FieldGrid>
              <SelectField label={words.which} name="which" options={choicesOf(issuable)} />
              <SelectField
                label={words.language}
                name="language"
                options={languages.map((language) => [language, words.languages[language] ?? language])}
              />
            </FieldGrid>
          </ActForm>
        </div>
      )}
    </Section>
  );
}
