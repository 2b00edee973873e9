/**
 * What of a loan's days stands between now and the next step: consent that was
 * withdrawn while specimens are away, what was recalled and is not on its way, a
 * longer loan that waits for its answer, an agreement that says other days than
 * the loan has. Each with the one act that clears it.
 */
import { z } from "zod";
import type { NextStep } from "#lib/loans/next-step.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { DateText } from "#lib/platform/dates.ts";

export type TimeStepFacts = {
  today: DateText;
  lines: readonly { specimenId: string; accessionNumber: string; state: LineState }[];
  /** Specimens of which a donor has withdrawn. */
  withdrawn: readonly string[];
  recalls: readonly { specimenIds: readonly string[]; returnBy: DateText }[];
  openExtension: { endsOn: DateText } | null;
  endsOn: DateText;
  /** Return-by as the signed agreement says it; null without one that both signed. */
  agreedEndsOn: DateText | null;
};

/** The earliest day by which each specimen that is out was asked back. */
export function recalledSpecimens({ lines, recalls }: Pick<TimeStepFacts, "lines" | "recalls">): {
  specimenId: string;
  accessionNumber: string;
  returnBy: DateText;
}[] {
  return lines
    .filter(({ state }) => outStates.includes(state))
    .flatMap(({ specimenId, accessionNumber }) => {
      const [returnBy] = recalls
        .filter(({ specimenIds }) => specimenIds.includes(specimenId))
        .map((recall) => recall.returnBy)
        .sort();
      return returnBy === undefined ? [] : [{ specimenId, accessionNumber, returnBy }];
    });
}

/** Where the return-by has stood in every form of the terms so far. */
const AnyTerm = z.object({ term: z.object({ returnBy: DateText }) });

/** The return-by that frozen terms say; null where they say none. */
export function agreedReturnBy(frozen: string): DateText | null {
  try {
    return AnyTerm.safeParse(JSON.parse(frozen)).data?.term.returnBy ?? null;
  } catch {
    return null;
  }
}

export function timeSteps(facts: TimeStepFacts): NextStep[] {
  const { today, lines, withdrawn, openExtension, endsOn, agreedEndsOn } = facts;
  const steps: NextStep[] = [];
  const recalled = recalledSpecimens(facts);
  const known = new Set(recalled.map(({ specimenId }) => specimenId));
  const affected = lines.filter(
    ({ specimenId, state }) =>
      outStates.includes(state) && withdrawn.includes(specimenId) && !known.has(specimenId),
  );
  if (affected.length > 0)
    steps.push({
      outcome: "bar",
      code: "next.consent-withdrawn",
      action: "recallLoan",
      parameters: { specimens: affected.length, specimen: affected[0]?.accessionNumber ?? "" },
    });
  const [first] = [...recalled].sort((one, other) => one.returnBy.localeCompare(other.returnBy));
  if (first)
    steps.push({
      outcome: first.returnBy < today ? "bar" : "attend",
      code: "next.recalled",
      action: "sendHome",
      parameters: { specimens: recalled.length, specimen: first.accessionNumber, returnBy: first.returnBy },
    });
  if (openExtension !== null)
    steps.push({
      outcome: "attend",
      code: "next.answer-extension",
      action: "answerExtension",
      parameters: { endsOn: openExtension.endsOn },
    });
  if (agreedEndsOn !== null && agreedEndsOn !== endsOn)
    steps.push({
      outcome: "attend",
      code: "next.amend-days",
      action: null,
      parameters: { endsOn, agreed: agreedEndsOn },
    });
  return steps;
}
