/**
 * What a condition check holds: findings, each on a mark that keeps its identity
 * from check to check, a verdict on three uses, and who looked. A check is a
 * permanent dated record; a later look is a new check, never a changed one.
 * Nothing is preselected: a verdict and its grounds are always stated.
 */
import { z } from "zod";
import { findingTerms } from "#lib/condition/terms.ts";

/** In rising order; the place in the tuple is the figure 0 to 4. */
export const severities = ["none", "trace", "minor", "moderate", "severe"] as const;
export const Severity = z.enum(severities);
export type Severity = z.infer<typeof Severity>;

export function severityFigure(severity: Severity): number {
  return severities.indexOf(severity);
}

export const severityMeanings: Readonly<Record<Severity, string>> = {
  none: "nothing to see",
  trace: "found only on a close look",
  minor: "visible, without effect on use",
  moderate: "use or display is limited",
  severe: "loss, or use has to stop",
};

export const activities = ["stable", "active", "unknown"] as const;
export const Activity = z.enum(activities);
export type Activity = z.infer<typeof Activity>;

/** What the examiner says of a mark, seen beside the earlier check. */
export const answers = ["new", "same", "better", "worse", "gone", "not-visible"] as const;
export const Answer = z.enum(answers);
export type Answer = z.infer<typeof Answer>;

export const occasions = ["out", "arrival", "departure", "home", "periodic", "incident"] as const;
export const Occasion = z.enum(occasions);
export type Occasion = z.infer<typeof Occasion>;

export const occasionNames: Readonly<Record<Occasion, string>> = {
  out: "Going out",
  arrival: "Arrival at the venue",
  departure: "Leaving the venue",
  home: "Back home",
  periodic: "Periodic",
  incident: "After an incident",
};

/** A place on a picture, each axis as a fraction from the upper left corner. */
export const PicturePoint = z.object({ x: z.number().min(0).max(1), y: z.number().min(0).max(1) });
export type PicturePoint = z.infer<typeof PicturePoint>;

/** An extent is stated in millimetres or in per cent of the area, from 0 to this. */
export const mostExtent = { extentMm: 10_000, extentPercent: 100 } as const;

export const Finding = z
  .object({
    /** The same mark has the same id in every check of a specimen. */
    markId: z.uuid(),
    term: z.enum(findingTerms),
    place: z.string().trim().min(1, "Say where it is.").max(300),
    picturePoint: PicturePoint.optional(),
    extentMm: z.number().min(0).max(mostExtent.extentMm).meta({ title: "Extent", unit: "mm" }).optional(),
    extentPercent: z
      .number()
      .min(0)
      .max(mostExtent.extentPercent)
      .meta({ title: "Extent", unit: "% of the area" })
      .optional(),
    severity: Severity,
    activity: Activity,
    /** Left out where no earlier check stood beside. */
    answer: Answer.optional(),
    note: z.string().trim().max(2000).default(""),
  })
  .refine((finding) => finding.answer !== "gone" || finding.severity === "none", {
    message: "A mark that is gone has the severity none.",
    path: ["severity"],
  });
export type Finding = z.infer<typeof Finding>;

export const verdictUses = ["show", "handle", "travel"] as const;
export type VerdictUse = (typeof verdictUses)[number];

export const Verdict = z.object({
  fitToShow: z.boolean(),
  fitToHandle: z.boolean(),
  fitToTravel: z.boolean(),
});
export type Verdict = z.infer<typeof Verdict>;

/** Whether the verdict allows a use. */
export function isFitTo(use: VerdictUse, verdict: Verdict): boolean {
  return { show: verdict.fitToShow, handle: verdict.fitToHandle, travel: verdict.fitToTravel }[use];
}

export const CheckInput = z
  .object({
    findings: z.array(Finding).max(500),
    verdict: Verdict,
    grounds: z.string().trim().min(1, "State the grounds of the verdict.").max(4000),
    checkedBy: z.string().trim().min(1, "Name who looked.").max(200),
    witness: z.string().trim().min(1).max(200).optional(),
  })
  .superRefine((check, context) => {
    const seen = new Set<string>();
    check.findings.forEach(({ markId }, index) => {
      if (seen.has(markId)) {
        context.addIssue({
          code: "custom",
          message: "This mark is already in the check.",
          path: ["findings", index, "markId"],
        });
      }
      seen.add(markId);
    });
  });
export type CheckInput = z.infer<typeof CheckInput>;
