/**
 * The two colour computations as a reader opens them: the difference between
 * two measured colours, and yellowness, alone or against an earlier reading.
 * The formulas stand in `colour.ts`.
 */
import { z } from "zod";
import {
  colourChange,
  colourChanges,
  deltaE76,
  deltaE2000,
  greyScaleGrade,
  illuminantObservers,
  yellownessIndex,
} from "#lib/condition/colour.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

export const LabInput = z.object({
  lightness: z.number().min(0).max(100).meta({ title: "L*" }),
  a: z.number().min(-160).max(160).meta({ title: "a*" }),
  b: z.number().min(-160).max(160).meta({ title: "b*" }),
});

export const XyzInput = z.object({
  x: z.number().min(0).max(200).meta({ title: "X, white at about 100" }),
  y: z.number().positive().max(200).meta({ title: "Y, white at 100" }),
  z: z.number().min(0).max(200).meta({ title: "Z, white at about 100" }),
});

export const sameInstrument =
  "Compare only readings with the same illuminant, observer, geometry, aperture and backing; take the mean of at least three.";

export const colourDifference = working({
  id: "colour-difference",
  title: "Colour difference",
  about: "How far two measured colours lie apart, and whether an eye would see it.",
  input: z.object({ first: LabInput, second: LabInput }),
  output: z.object({
    deltaE2000: z.number().meta({ title: "ΔE00" }),
    deltaE76: z.number().meta({ title: "ΔE*ab" }),
    greyScaleGrade: z.string().meta({ title: "Grey scale grade" }),
    change: z.enum(colourChanges).meta({ title: "What it says" }),
  }),
  sources: [
    cite("sharma-2005", "equations 2 to 22"),
    cite("cie-15", "ΔE*ab"),
    cite("iso-105-a02", "table of grades"),
    cite("colour-acceptability", "perceptible 0.8, acceptable 1.8"),
    cite("practice", "noise below 0.5, watch to 1.0, noticeable to 1.8, significant to 5, severe above"),
  ],
  cautions: [sameInstrument],
  compute({ first, second }, note) {
    note("Difference of lightness", second.lightness - first.lightness, "", "L*₂ − L*₁");
    note("Difference of a*", second.a - first.a, "", "a*₂ − a*₁");
    note("Difference of b*", second.b - first.b, "", "b*₂ − b*₁");
    const plain = note("ΔE*ab", deltaE76(first, second), "", "√(ΔL*² + Δa*² + Δb*²)");
    const weighted = note(
      "ΔE00",
      deltaE2000(first, second),
      "",
      "√((ΔL′/S_L)² + (ΔC′/S_C)² + (ΔH′/S_H)² + R_T·(ΔC′/S_C)·(ΔH′/S_H))",
    );
    return {
      deltaE2000: weighted,
      deltaE76: plain,
      greyScaleGrade: note("Grey scale grade", greyScaleGrade(plain), "", "nearest contrast"),
      change: note("What it says", colourChange(weighted)),
    };
  },
});

/** Common practice: a rise of 2 is watched, above 5 it limits use. */
const yellownessWatch = 2;
const yellownessLimit = 5;

export const yellowness = working({
  id: "yellowness",
  title: "Yellowness",
  about: "The yellowness index of a sheet or block, and its rise since an earlier reading.",
  input: z.object({
    reading: XyzInput,
    earlier: XyzInput.nullable().default(null),
    illuminantObserver: z.enum(illuminantObservers).default("D65/10°"),
  }),
  output: z.object({
    yellowness: z.number().meta({ title: "Yellowness index" }),
    rise: z.number().nullable().meta({ title: "Rise since the earlier reading" }),
    change: z.enum(["not-compared", "steady", "watch", "limits-use"]).meta({ title: "What it says" }),
  }),
  sources: [
    cite("astm-e313", "coefficients for each illuminant and observer"),
    cite("practice", "rise of 2 and of 5"),
  ],
  cautions: [sameInstrument, "An older form of the index gives other figures: compare only within one form."],
  compute({ reading, earlier, illuminantObserver }, note) {
    const formula = "100 · (C_X · X − C_Z · Z) / Y";
    const now = note("Yellowness index", yellownessIndex(reading, illuminantObserver), "", formula);
    if (earlier === null) return { yellowness: now, rise: null, change: "not-compared" as const };
    const before = note(
      "Earlier yellowness index",
      yellownessIndex(earlier, illuminantObserver),
      "",
      formula,
    );
    const rise = note("Rise", now - before, "", "now − earlier");
    const change = rise > yellownessLimit ? "limits-use" : rise > yellownessWatch ? "watch" : "steady";
    return { yellowness: now, rise, change: note("What it says", change) };
  },
});
