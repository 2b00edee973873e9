/**
 * From one way of telling a colour to the other, for instruments that give only
 * one: the colour difference asks for L*a*b*, yellowness for X, Y and Z. Both ways
 * stay under one illuminant and observer; nothing is adapted to another white.
 */
import { z } from "zod";
import { illuminantObservers, labFromXyz, whitePoints, xyzFromLab } from "#lib/condition/colour.ts";
import { LabInput, sameInstrument, XyzInput } from "#lib/condition/colour-workings.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const illuminantObserver = z.enum(illuminantObservers).default("D65/10°");
const sources = [
  cite("cie-15", "CIELAB"),
  cite("practice", "tristimulus values of the whites, from memory"),
] as const;
const cautions = [sameInstrument, "Name the illuminant and observer that the instrument was set to."];

export const labOfReading = working({
  id: "colour-lab-from-xyz",
  title: "L*a*b* of a reading in X, Y, Z",
  about: "The same colour as the colour difference asks for it.",
  input: z.object({ reading: XyzInput, illuminantObserver }),
  output: z.object({
    lightness: z.number().meta({ title: "L*" }),
    a: z.number().meta({ title: "a*" }),
    b: z.number().meta({ title: "b*" }),
  }),
  sources,
  cautions,
  compute({ reading, illuminantObserver: condition }, note) {
    const lab = labFromXyz(reading, whitePoints[condition]);
    note("L*", lab.lightness, "", "116 · f(Y/Yₙ) − 16");
    note("a*", lab.a, "", "500 · (f(X/Xₙ) − f(Y/Yₙ))");
    note("b*", lab.b, "", "200 · (f(Y/Yₙ) − f(Z/Zₙ))");
    return lab;
  },
});

export const xyzOfReading = working({
  id: "colour-xyz-from-lab",
  title: "X, Y, Z of a reading in L*a*b*",
  about: "The same colour as yellowness asks for it.",
  input: z.object({ reading: LabInput, illuminantObserver }),
  output: z.object({
    x: z.number().meta({ title: "X" }),
    y: z.number().meta({ title: "Y" }),
    z: z.number().meta({ title: "Z" }),
  }),
  sources,
  cautions,
  compute({ reading, illuminantObserver: condition }, note) {
    const xyz = xyzFromLab(reading, whitePoints[condition]);
    note("X", xyz.x, "", "Xₙ · f⁻¹((L* + 16)/116 + a*/500)");
    note("Y", xyz.y, "", "Yₙ · f⁻¹((L* + 16)/116)");
    note("Z", xyz.z, "", "Zₙ · f⁻¹((L* + 16)/116 − b*/200)");
    return xyz;
  },
});
