/**
 * The content of a packing list: one crate on one stage with what lies in it by
 * position, its sizes and masses, how it is built inside. Each specimen is named with
 * its components, because what comes apart is counted apart. The drawing is kept as
 * the facts that it is made from; a picture by its id.
 */
import { z } from "zod";
import {
  crateOn,
  type PaperCase,
  paperCrate,
  paperSpecimen,
  specimensIn,
  wayOf,
} from "#lib/papers/paper-case.ts";
import { PaperCrate, PaperHead, PaperSpecimen, PaperWay } from "#lib/papers/paper-content.ts";
import { planes } from "#lib/specimens/schema.ts";

const Drawing = z.strictObject({
  kind: z.string(),
  preparation: z.string(),
  species: z.string(),
  title: z.string(),
  latinTitle: z.string(),
  side: z.string(),
  shown: z.array(z.strictObject({ structure: z.string(), latin: z.string() })),
  sheet: z
    .strictObject({
      code: z.string(),
      title: z.string(),
      plane: z.enum(planes),
      imagedFace: z.string(),
      number: z.number().int(),
      vertebra: z.number().nullable(),
      fromMedianMm: z.number().nullable(),
    })
    .nullable(),
  seed: z.string(),
});

export const PackingListContent = PaperHead.extend({
  format: z.literal("packing-list-1"),
  way: PaperWay,
  crate: PaperCrate.extend({
    contentsKg: z.number().nullable(),
    innerCaseWallMm: z.number().nullable(),
    cushionMm: z.number(),
    absorbentMl: z.number().nullable(),
    centreOfGravityHeightMm: z.number(),
  }),
  contents: z
    .array(
      PaperSpecimen.extend({ position: z.number().int(), drawing: Drawing, pictureId: z.uuid().nullable() }),
    )
    .min(1),
}).strict();
export type PackingListContent = z.infer<typeof PackingListContent>;

export function packingListContent(
  paperCase: PaperCase,
  subject: string,
  head: PaperHead,
): PackingListContent {
  const { crate, stage } = crateOn(paperCase, subject);
  const { contentsKg, innerCaseWallMm, cushionMm, absorbentMl, centreOfGravityHeightMm } = crate;
  return {
    ...head,
    format: "packing-list-1",
    way: wayOf(paperCase, stage),
    crate: {
      ...paperCrate(crate),
      contentsKg,
      innerCaseWallMm,
      cushionMm,
      absorbentMl,
      centreOfGravityHeightMm: Math.round(centreOfGravityHeightMm),
    },
    contents: specimensIn(paperCase, crate).map((specimen, index) => ({
      ...paperSpecimen(specimen),
      position: index + 1,
      drawing: Drawing.parse(specimen.drawing),
      pictureId: specimen.pictureId,
    })),
  };
}
