/** The crate the specimen would travel in, worked out from the catalogue, with every figure's working. */

import { CrateFacts, CrateWorkings } from "#app/_parts/crate-facts.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { crateWords } from "#app/_words/en/crate.ts";
import { getCratePreview } from "#lib/loans/queries/crate-preview.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function CrateSection({ specimenId, viewer }: { specimenId: string; viewer: Viewer }) {
  const preview = await getCratePreview(viewer, specimenId);
  if (!preview)
    return (
      <Section id="crate" title={words.crate}>
        <p>{words.crateUnknown}</p>
      </Section>
    );
  return (
    <Section id="crate" title={words.crate} margin={<CrateWorkings margin={preview.margin} />}>
      <Facts facts={[[crateWords.carrier, crateWords.carriers[preview.carrierClass]]]} />
      <CrateFacts plan={preview.plan.output} hasVenue={false} />
      <MarginNote title={crateWords.untested} />
    </Section>
  );
}
