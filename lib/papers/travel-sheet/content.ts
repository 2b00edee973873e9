/**
 * The content of a courier's travel sheet: one stage with its ends, crates, seals and
 * the list of specimens that a courier answers for, the temperatures that all of them
 * bear, and the stations at which something is written down.
 */
import { z } from "zod";
import { commonTemperatures } from "#lib/papers/crate-label/content.ts";
import { numberedCrates, type PaperCase, paperCrate, stageOf, wayOf } from "#lib/papers/paper-case.ts";
import { PaperCrate, PaperHead, PaperWay } from "#lib/papers/paper-content.ts";
import { EmergencyLine } from "#lib/people/emergency.ts";

export const TravelSheetContent = PaperHead.extend({
  format: z.literal("travel-sheet-1"),
  way: PaperWay,
  /** Who answers at the venue. */
  contactName: z.string(),
  /** Under which number the lender is reached; sheets issued before this was asked do not say. */
  emergency: EmergencyLine.optional(),
  crates: z.array(PaperCrate).min(1),
  specimens: z.array(z.strictObject({ accessionNumber: z.string(), title: z.string(), crate: z.string() })),
  temperatureC: z.strictObject({ low: z.number(), high: z.number() }).nullable(),
}).strict();
export type TravelSheetContent = z.infer<typeof TravelSheetContent>;

export function travelSheetContent(
  paperCase: PaperCase,
  stageId: string,
  head: PaperHead,
): TravelSheetContent {
  const crates = numberedCrates(paperCase);
  const specimens = paperCase.specimens.filter(({ isLive }) => isLive);
  return {
    ...head,
    format: "travel-sheet-1",
    way: wayOf(paperCase, stageOf(paperCase, stageId)),
    contactName: paperCase.loan.contactName,
    emergency: { ...paperCase.emergency },
    crates: crates.map(paperCrate),
    specimens: specimens.map(({ id, accessionNumber, title }) => ({
      accessionNumber,
      title,
      crate: crates.find(({ contents }) => contents.includes(id))?.code ?? "",
    })),
    temperatureC: commonTemperatures(specimens.map(({ transitC }) => transitC)),
  };
}
