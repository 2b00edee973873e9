/**
 * The content of a loan's closure: which specimens went and came back, when, with the
 * grade at both checks and the verdict at home. A loan can only be closed once each of
 * them is checked in, so nothing on it is still away.
 */
import { z } from "zod";
import { type PaperCase, paperSpecimen } from "#lib/papers/paper-case.ts";
import { PaperHead, PaperSpecimen, WayEnd } from "#lib/papers/paper-content.ts";
import { DateText } from "#lib/platform/dates.ts";

const Checked = z.strictObject({ checkedOn: DateText, grade: z.string() }).nullable();

export const LoanClosureContent = PaperHead.extend({
  format: z.literal("loan-closure-1"),
  lender: WayEnd,
  borrower: WayEnd,
  startsOn: DateText,
  returnBy: DateText,
  closedOn: DateText,
  specimens: z
    .array(
      PaperSpecimen.omit({ condition: true })
        .extend({
          /** The day on which the lender took it over again; null where no hand-over says it. */
          backOn: DateText.nullable(),
          out: Checked,
          home: Checked,
          verdict: z.string().nullable(),
          remark: z.string(),
        })
        .strict(),
    )
    .min(1),
}).strict();
export type LoanClosureContent = z.infer<typeof LoanClosureContent>;

const closedOnes = ({ specimens }: PaperCase) => specimens.filter(({ ending }) => ending.state === "closed");

export const closureSubjects = (paperCase: PaperCase): string[] =>
  paperCase.loan.closedOn !== null && closedOnes(paperCase).length > 0 ? [""] : [];

export function loanClosureContent(paperCase: PaperCase, _loan: string, head: PaperHead): LoanClosureContent {
  const { loan, house, venue, handovers } = paperCase;
  if (loan.closedOn === null) throw new RangeError("This loan is not closed.");
  const back = new Map(
    [...handovers]
      .sort((first, second) => first.at.localeCompare(second.at))
      .filter(({ direction, toParty }) => direction === "home" && toParty === house.organisation)
      .map(({ accessionNumber, at }) => [accessionNumber, at.slice(0, 10)]),
  );
  return {
    ...head,
    format: "loan-closure-1",
    lender: house,
    borrower: venue,
    startsOn: loan.startsOn,
    returnBy: loan.returnBy,
    closedOn: loan.closedOn,
    specimens: closedOnes(paperCase).map((specimen) => {
      const { condition: _condition, ...named } = paperSpecimen(specimen);
      const { out, home, verdict, remark } = specimen.ending;
      return { ...named, backOn: back.get(named.accessionNumber) ?? null, out, home, verdict, remark };
    }),
  };
}
