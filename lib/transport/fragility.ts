/**
 * How much shock the crate must keep from a specimen: what specimens of its class
 * bear (lib/environment/shock.ts), which is also where a logger on the mount alarms,
 * or the curator's own figure. This file adds which classes always lie in an inner
 * case, because a cushion may never press on their free parts.
 */
import { z } from "zod";
import { shockBorne, shockSources } from "#lib/environment/shock.ts";
import { FragilityClass, PeakG } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** Nothing presses on free parts, glass, filigree or thin bone; common practice, no source. */
const liesInInnerCase: Readonly<Record<FragilityClass, boolean>> = {
  "compact-organ": false,
  "organ-with-free-parts": true,
  "whole-body": false,
  sheet: true,
  jar: true,
  "corrosion-cast": true,
  "articulated-skeleton": true,
  bone: false,
  "teeth-or-thin-bone": true,
  "dry-tissue": true,
  slide: true,
};

export const fragility = working({
  id: "fragility",
  title: "Fragility",
  about: "The greatest shock that a specimen of this kind may feel on its way.",
  input: z.object({
    fragilityClass: FragilityClass,
    curatorPeakG: PeakG.optional().meta({ title: "The curator's own figure", unit: "G" }),
  }),
  output: z.object({ peakG: PeakG, innerCase: z.boolean(), ground: z.string() }),
  sources: [...shockSources, cite("practice", "which classes lie in an inner case")],
  cautions: [
    "Starting values: the curator decides for each specimen.",
    "A real specimen, with its old cracks, is always more fragile than a sound one.",
  ],
  compute({ fragilityClass, curatorPeakG }, note) {
    const usual = shockBorne[fragilityClass];
    const ground = curatorPeakG === undefined ? usual.ground : "the curator's own figure";
    const peakG = note("greatest shock", curatorPeakG ?? usual.peakG, "G", ground);
    return { peakG, innerCase: liesInInnerCase[fragilityClass], ground };
  },
});
