/** What happened to the record, newest first. */
import { Happened } from "#app/_parts/happened.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { happenedToSpecimen } from "#lib/desk/queries/happened.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function HappenedSection({ viewer, specimenId }: { viewer: Viewer; specimenId: string }) {
  const entries = await happenedToSpecimen(viewer, specimenId);
  return (
    <Section id="happened" title={words.happened}>
      <Happened entries={entries} />
    </Section>
  );
}
