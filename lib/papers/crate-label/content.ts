/**
 * The content of a crate label: what strangers on the way need and no more. No
 * specimen, no donor, no cost, no title; the marks follow from the crate's plan and
 * from the temperatures that its contents bear on the way.
 */
import { z } from "zod";
import {
  type CaseCrate,
  crateOn,
  type PaperCase,
  paperCrate,
  specimensIn,
  wayOf,
} from "#lib/papers/paper-case.ts";
import { PaperCrate, PaperHead, PaperWay } from "#lib/papers/paper-content.ts";
import { type HandlingMark, handlingMarks } from "#lib/papers/pictograms.ts";
import { phoneHours } from "#lib/people/emergency.ts";

const Band = z.strictObject({ low: z.number(), high: z.number() });

export const CrateLabelContent = PaperHead.omit({ loan: true })
  .extend({
    format: z.literal("crate-label-1"),
    loan: z.strictObject({ number: z.string(), title: z.literal("") }),
    way: PaperWay,
    crate: PaperCrate.omit({ sealNumber: true }).strict(),
    centreOfGravityHeightMm: z.number(),
    marks: z.array(z.enum(handlingMarks)).min(1),
    /** What may stand on it, where the mark of the limit is printed. */
    stackingLimitKg: z.number().nullable(),
    temperatureC: Band.nullable(),
    phone: z.string(),
    /** When it is answered; labels issued before this was asked do not say. */
    phoneHours: z.enum(phoneHours).optional(),
  })
  .strict();
export type CrateLabelContent = z.infer<typeof CrateLabelContent>;

type Temperatures = { low: number; high: number };

/** What all contents bear; null where they have nothing in common or nothing is known. */
export function commonTemperatures(bands: readonly (Temperatures | null)[]): Temperatures | null {
  const known = bands.filter((band) => band !== null);
  if (known.length === 0) return null;
  const low = Math.max(...known.map((band) => band.low));
  const high = Math.min(...known.map((band) => band.high));
  return low < high ? { low, high } : null;
}

/** In the order in which they stand on the label. */
export function marksOf(
  crate: Pick<CaseCrate, "orientation" | "handling" | "lidLoadKg">,
  temperatureC: Temperatures | null,
): HandlingMark[] {
  const holds: Readonly<Record<HandlingMark, boolean>> = {
    "this way up": crate.orientation === "this-side-up",
    fragile: true,
    "keep dry": true,
    "keep from sunlight and heat": true,
    "centre of gravity": true,
    "do not stack": crate.lidLoadKg <= 0,
    "stacking limit": crate.lidLoadKg > 0,
    "no hand hooks": true,
    // what a truck has to lift is also lifted by a crane
    "sling here": crate.handling === "pallet-truck",
    "temperature limits": temperatureC !== null,
    "do not roll": crate.orientation === "this-side-up",
  };
  return handlingMarks.filter((mark) => holds[mark]);
}

export function crateLabelContent(paperCase: PaperCase, subject: string, head: PaperHead): CrateLabelContent {
  const { crate, stage } = crateOn(paperCase, subject);
  const { sealNumber: _seal, ...outside } = paperCrate(crate);
  const temperatureC = commonTemperatures(specimensIn(paperCase, crate).map(({ transitC }) => transitC));
  return {
    ...head,
    format: "crate-label-1",
    loan: { number: head.loan.number, title: "" },
    way: wayOf(paperCase, stage),
    crate: outside,
    centreOfGravityHeightMm: Math.round(crate.centreOfGravityHeightMm),
    marks: marksOf(crate, temperatureC),
    stackingLimitKg: crate.lidLoadKg > 0 ? Math.floor(crate.lidLoadKg) : null,
    temperatureC,
    phone: paperCase.emergency.phone,
    phoneHours: paperCase.emergency.hours,
  };
}
