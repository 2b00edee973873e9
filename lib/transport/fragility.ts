/**
 * How much shock a specimen bears, as the greatest acceleration in multiples of
 * gravity. No preserved anatomical specimen has a published value: these are
 * starting values by likeness to better known things, and the curator decides.
 * The table also says which classes always lie in an inner case, because a
 * cushion may never press on their free parts.
 */
import { z } from "zod";
import { FragilityClass, PeakG } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

type Fragility = { peakG: number; innerCase: boolean; ground: string };

/** Starting values, curator decides. */
export const fragilityTable: Record<FragilityClass, Fragility> = {
  "compact-organ": { peakG: 60, innerCase: false, ground: "elastic, without free parts" },
  "organ-with-free-parts": { peakG: 40, innerCase: true, ground: "slender vessels and nerves" },
  "whole-body": { peakG: 40, innerCase: false, ground: "slender parts; carried by its own frame" },
  sheet: { peakG: 50, innerCase: true, ground: "resin held over its whole face" },
  jar: { peakG: 30, innerCase: true, ground: "glass, seal, and the push of the fluid" },
  "corrosion-cast": { peakG: 20, innerCase: true, ground: "brittle filigree" },
  "articulated-skeleton": { peakG: 25, innerCase: true, ground: "wires and thin bone that swing" },
  bone: { peakG: 45, innerCase: false, ground: "each bone in a cavity of its own" },
  slide: { peakG: 60, innerCase: true, ground: "thin glass held on edge in a slide box" },
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
  sources: [
    cite("practice", "starting values, curator decides"),
    cite("panel-transport-1998", "30 to 40 G for panels"),
    cite("cci-six-steps", "step 3, table 4: assembled skeletons"),
  ],
  cautions: [
    "Starting values: the curator decides for each specimen.",
    "A real specimen, with its old cracks, is always more fragile than a sound one.",
  ],
  compute({ fragilityClass, curatorPeakG }, note) {
    const entry = fragilityTable[fragilityClass];
    const ground = curatorPeakG === undefined ? entry.ground : "the curator's own figure";
    const peakG = note("greatest shock", curatorPeakG ?? entry.peakG, "G", ground);
    return { peakG, innerCase: entry.innerCase, ground };
  },
});
