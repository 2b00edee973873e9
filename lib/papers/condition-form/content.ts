/**
 * The content of a condition form: each specimen of the loan with its last check, mark
 * by mark, so that whoever looks next says of every mark what became of it. The same
 * form serves every occasion; which one it is is ticked on the paper.
 */
import { z } from "zod";
import { type CaseSpecimen, numberedCrates, type PaperCase, paperSpecimen } from "#lib/papers/paper-case.ts";
import { PaperHead, PaperSpecimen, WayEnd } from "#lib/papers/paper-content.ts";
import { DateText } from "#lib/platform/dates.ts";

const Mark = z.strictObject({
  term: z.string(),
  place: z.string(),
  extentMm: z.number().nullable(),
  extentPercent: z.number().nullable(),
  severity: z.string(),
  activity: z.string(),
  note: z.string(),
});
export type Mark = z.infer<typeof Mark>;

export const ConditionFormContent = PaperHead.extend({
  format: z.literal("condition-form-1"),
  lender: WayEnd,
  borrower: WayEnd,
  specimens: z
    .array(
      PaperSpecimen.omit({ condition: true })
        .extend({
          crate: z.string(),
          check: z
            .strictObject({
              occasion: z.string(),
              checkedOn: DateText,
              checkedBy: z.string(),
              grade: z.string(),
              marks: z.array(Mark),
            })
            .nullable(),
        })
        .strict(),
    )
    .min(1),
}).strict();
export type ConditionFormContent = z.infer<typeof ConditionFormContent>;

export const conditionFormSubjects = ({ specimens }: PaperCase): string[] =>
  specimens.some(({ isLive }) => isLive) ? [""] : [];

/** What is still to be seen: a mark that is gone is not looked for again. */
function checkOf({ check }: CaseSpecimen) {
  if (check === null) return null;
  const { findings, ...said } = check;
  return {
    ...said,
    marks: findings.filter(({ severity }) => severity !== "none").map((mark) => ({ ...mark })),
  };
}

export function conditionFormContent(
  paperCase: PaperCase,
  _loan: string,
  head: PaperHead,
): ConditionFormContent {
  const crates = numberedCrates(paperCase);
  return {
    ...head,
    format: "condition-form-1",
    lender: paperCase.house,
    borrower: paperCase.venue,
    specimens: paperCase.specimens
      .filter(({ isLive }) => isLive)
      .map((specimen) => {
        const { condition: _condition, ...named } = paperSpecimen(specimen);
        return {
          ...named,
          crate: crates.find(({ contents }) => contents.includes(specimen.id))?.code ?? "",
          check: checkOf(specimen),
        };
      }),
  };
}
