/**
 * The content of a dispatch note: one stage, its crates with seals, sizes and masses.
 * It goes with the driver, so it names no specimen, no donor and no cost.
 */
import { z } from "zod";
import { numberedCrates, type PaperCase, paperCrate, stageOf, wayOf } from "#lib/papers/paper-case.ts";
import { PaperCrate, PaperHead, PaperWay } from "#lib/papers/paper-content.ts";

export const DispatchNoteContent = PaperHead.omit({ loan: true })
  .extend({
    format: z.literal("dispatch-note-1"),
    /** Its number alone: a title may tell what is in the crates. */
    loan: z.strictObject({ number: z.string(), title: z.literal("") }),
    way: PaperWay,
    crates: z.array(PaperCrate).min(1),
    specimenCount: z.number().int().min(1),
  })
  .strict();
export type DispatchNoteContent = z.infer<typeof DispatchNoteContent>;

export function dispatchNoteContent(
  paperCase: PaperCase,
  stageId: string,
  head: PaperHead,
): DispatchNoteContent {
  const crates = numberedCrates(paperCase);
  return {
    ...head,
    format: "dispatch-note-1",
    loan: { number: head.loan.number, title: "" },
    way: wayOf(paperCase, stageOf(paperCase, stageId)),
    crates: crates.map(paperCrate),
    specimenCount: crates.reduce((sum, { contents }) => sum + contents.length, 0),
  };
}

/** To a tenth of a kilogram, as each crate is marked. @returns kg */
export function grossMassKg(crates: readonly PaperCrate[]): number {
  const tenths = crates.reduce((sum, crate) => sum + Math.round(crate.grossMassKg * 10), 0);
  return tenths / 10;
}
