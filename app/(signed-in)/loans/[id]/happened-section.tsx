/** What happened to the loan and everything on it, the newest first. */
import { Happened } from "#app/_parts/happened.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { happenedTo, type RowOfRecord } from "#lib/desk/queries/happened.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function HappenedSection({ viewer, rows }: { viewer: Viewer; rows: readonly RowOfRecord[] }) {
  const entries = await happenedTo(viewer, rows);
  return (
    <Section id="happened" title={words.sections.happened}>
      <Happened entries={entries} />
    </Section>
  );
}
