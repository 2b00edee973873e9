/**
 * How much shock a specimen bears, as the greatest acceleration in multiples of
 * gravity: its alarm, and the figure that its crate is designed for. No preserved
 * anatomical specimen has a published value: these are starting values by likeness
 * to better known things, and the curator decides. The warning stands at 60 % of
 * the alarm. Shock is measured on the specimen's mount, not on the skin of a crate.
 */
import type { Limits } from "#lib/environment/schema.ts";
import type { FragilityClassName } from "#lib/specimens/classes.ts";
import { type Citation, cite } from "#lib/workings/sources.ts";

type ShockBorne = { peakG: number; ground: string; likeness?: Citation };

const startingValue = cite("practice", "shock by class: starting values of this program, curator decides");
const panels = cite("panel-transport-1998", "30 to 40 G for panels");
const skeletons = cite("cci-six-steps", "step 3, table 4: assembled skeletons");

/** What the figures rest on, for the limits and for the crate alike. */
export const shockSources: readonly Citation[] = [startingValue, panels, skeletons];

/** Starting values, curator decides. */
export const shockBorne: Readonly<Record<FragilityClassName, ShockBorne>> = {
  "compact-organ": { peakG: 60, ground: "elastic, without free parts" },
  "organ-with-free-parts": { peakG: 40, ground: "slender vessels and nerves" },
  "whole-body": { peakG: 40, ground: "slender parts; carried by its own frame" },
  sheet: { peakG: 50, ground: "resin held over its whole face", likeness: panels },
  jar: { peakG: 30, ground: "glass, seal, and the push of the fluid" },
  "corrosion-cast": { peakG: 20, ground: "brittle filigree" },
  "articulated-skeleton": {
    peakG: 25,
    ground: "wires and thin bone that swing",
    likeness: skeletons,
  },
  bone: { peakG: 45, ground: "each bone in a cavity of its own" },
  "teeth-or-thin-bone": { peakG: 30, ground: "teeth, drilled or thin bone, dried membranes" },
  "dry-tissue": { peakG: 25, ground: "dried tissue and varnish, brittle" },
  slide: { peakG: 40, ground: "thin glass held on edge in a slide box" },
};

/** A warning comes before the alarm; common practice, no source. */
export const WARNING_SHARE = 0.6;

/** Where a logger on its mount warns and alarms. */
export function shockLimits(fragilityClass: FragilityClassName): Limits["shockG"] {
  const { peakG: alarm, likeness } = shockBorne[fragilityClass];
  return {
    warn: Math.round(alarm * WARNING_SHARE * 10) / 10,
    alarm,
    ground: [{ ...startingValue }, ...(likeness ? [{ ...likeness }] : [])],
  };
}
