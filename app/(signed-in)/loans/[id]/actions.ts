"use server";
/** Acts on a loan's file: what is on it, the words of the offices, cover, the agreement, release, close. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, isTicked, minorIn, numberIn, textIn } from "#app/_parts/sent-fields.ts";
import { readCodes } from "#app/_parts/typed-codes.ts";
import { runAction } from "#app/_server/action.ts";
import { agreementWords, coverWords, decisionWords, releaseWords } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { roadWords } from "#app/_words/en/loan-road.ts";
import { signingWords } from "#app/_words/en/mandates.ts";
import { setAsideWords } from "#app/_words/en/set-aside.ts";
import { slipWords } from "#app/_words/en/slip.ts";
import { formatRange } from "#app/_words/format.ts";
import type { ClauseLanguageCode } from "#lib/agreements/clauses/language.ts";
import { isSetParameter, parameterNames, parameterOf } from "#lib/agreements/clauses/parameters.ts";
import type { CountersignInput } from "#lib/agreements/signing.ts";
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { closeLoan } from "#lib/loans/commands/check-in.ts";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { type Noted, noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { recordCover, takeBackCover } from "#lib/loans/commands/record-cover.ts";
import { type SetAsideInput, setAsideBar } from "#lib/loans/commands/set-aside.ts";
import { countersignAgreement, signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import type { DecisionInput } from "#lib/loans/schema.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays, DateText } from "#lib/platform/dates.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { listSeries } from "#lib/specimens/queries/series.ts";
import { findByNumber } from "#lib/specimens/queries.ts";

/** Runs one act on a loan and has its file drawn anew. */
async function actOnLoan(loanId: string, act: (viewer: Viewer) => Promise<string>): Promise<FormState> {
  return await runAction(async (viewer) => {
    const message = await act(viewer);
    revalidatePath(`/loans/${loanId}`);
    revalidatePath("/slip");
    return { message };
  });
}

/** Notes what is meant by a number: one specimen, or all sheets of a series. */
export async function noteByNumber(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    const text = textIn(fields, "number");
    const code = text.toLowerCase();
    const series = (await listSeries(viewer)).find((row) => row.code.toLowerCase() === code);
    const [specimen, ...others] = series ? [] : await findByNumber(viewer, text);
    if (!series && (!specimen || others.length > 0)) throw notFound("specimen");
    const noted = await noteSpecimen(viewer, {
      loanId,
      specimenIds: specimen ? [specimen.id] : [],
      seriesId: series?.id ?? null,
    });
    return notedWords(noted);
  });
}

/** What is added to a request that was submitted is on it, and nothing is held for it yet. */
function notedWords({ added, waits, days }: Noted): string {
  if (added === 0) return loanWords.notedAlready;
  return waits
    ? loanWords.notedWaits(added)
    : slipWords.noted(added, formatRange(days.startsOn, days.endsOn));
}

/** Puts back what was just taken off. */
export async function putBack(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) =>
    notedWords(
      await noteSpecimen(viewer, { loanId, specimenIds: [textIn(fields, "specimenId")], seriesId: null }),
    ),
  );
}

/** Where the file says what was done to a line, and offers the way back where there is one. */
async function leaveLoan(loanId: string, specimenId: string, how: "off" | "withdrawn"): Promise<FormState> {
  return await runAction(async (viewer) => {
    await removeSpecimen(viewer, { loanId, specimenId });
    revalidatePath(`/loans/${loanId}`);
    revalidatePath("/slip");
    return { goTo: `/loans/${loanId}?${how}=${specimenId}#specimens` };
  });
}

/** From a slip a specimen goes without a trace, and may be put back. */
export async function takeOffLoan(
  loanId: string,
  specimenId: string,
  _before: FormState,
): Promise<FormState> {
  return await leaveLoan(loanId, specimenId, "off");
}

/** What was asked for is withdrawn for good. */
export async function withdrawLine(
  loanId: string,
  specimenId: string,
  _before: FormState,
): Promise<FormState> {
  return await leaveLoan(loanId, specimenId, "withdrawn");
}

export async function takeCoverBack(loanId: string, coverId: string, _before: FormState): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await takeBackCover(viewer, { coverId });
    return coverWords.takenBack;
  });
}

export async function withdrawLoan(loanId: string, _before: FormState): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await withdrawRequest(viewer, { loanId });
    return roadWords.saved;
  });
}

export async function giveWord(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await decideLoan(viewer, {
      loanId,
      office: textIn(fields, "office") as DecisionInput["office"],
      outcome: textIn(fields, "outcome") as DecisionInput["outcome"],
      conditions: textIn(fields, "conditions"),
      grounds: textIn(fields, "grounds"),
      reference: textIn(fields, "reference"),
      specimenIds: textIn(fields, "outcome") === "accept" ? allIn(fields, "specimenIds") : [],
    });
    return decisionWords.recorded;
  });
}

/** A bar that somebody who may sets aside, for the specimens of its note. */
export async function setAside(
  loanId: string,
  rule: string,
  fact: string,
  specimenIds: readonly string[],
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await setAsideBar(viewer, {
      loanId,
      rule,
      fact,
      specimenIds: [...specimenIds],
      office: textIn(fields, "office") as SetAsideInput["office"],
      grounds: textIn(fields, "grounds"),
      evidence: textIn(fields, "evidence"),
    });
    return setAsideWords.done;
  });
}

/** The first and the last covered day become moments: from midnight to the midnight after the last. */
export async function saveCover(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    const currency = textIn(fields, "currency").toUpperCase();
    const lastDay = textIn(fields, "lastDay");
    const midnight = (day: string) => (DateText.safeParse(day).success ? `${day}T00:00:00Z` : "");
    await recordCover(viewer, {
      loanId,
      insurer: textIn(fields, "insurer"),
      policyNumber: textIn(fields, "policyNumber"),
      minor: minorIn(fields, "minor", currency) ?? Number.NaN,
      currency,
      startsAt: midnight(textIn(fields, "firstDay")),
      endsAt: DateText.safeParse(lastDay).success ? midnight(addDays(lastDay, 1)) : "",
      coversTransit: isTicked(fields, "coversTransit"),
      coversStay: isTicked(fields, "coversStay"),
      territories: allIn(fields, "territories").flatMap((typed) => readCodes(typed.toUpperCase())),
    });
    return coverWords.recorded;
  });
}

/** What the form has sent of a clause's parameter; what was left empty has its standard. */
function sentParameters(fields: FormData): Record<string, string | number> {
  const sent: Record<string, string | number> = {};
  for (const name of parameterNames) {
    const parameter = parameterOf(name);
    const field = `parameters.${name}`;
    if (!isSetParameter(parameter) || !fields.has(field)) continue;
    const value = parameter.kind === "number" ? numberIn(fields, field) : textIn(fields, field);
    if (value !== null && !(parameter.kind === "choice" && value === "")) sent[name] = value;
  }
  return sent;
}

export async function drawUp(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    const languages = [textIn(fields, "ruling"), textIn(fields, "second")].filter((code) => code !== "");
    await drawUpAgreement(viewer, {
      loanId,
      languages: languages.length === 0 ? null : (languages as ClauseLanguageCode[]),
      parameters: sentParameters(fields),
    });
    return agreementWords.drawnUpDone;
  });
}

export async function sign(
  loanId: string,
  agreementId: string,
  sha256: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await signAgreement(viewer, {
      agreementId,
      sha256,
      signerRole: textIn(fields, "signerRole"),
      strokes: textIn(fields, "strokes"),
      electronic: isTicked(fields, "electronic") as true,
    });
    return agreementWords.signed;
  });
}

/** A file that is too large is said so by the command; none that was chosen is none. */
export async function countersign(
  loanId: string,
  agreementId: string,
  sha256: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    const file = fields.get("content");
    await countersignAgreement(viewer, {
      agreementId,
      sha256,
      party: textIn(fields, "party") as CountersignInput["party"],
      signerName: textIn(fields, "signerName"),
      signerRole: textIn(fields, "signerRole"),
      content: new Uint8Array(file instanceof File ? await file.arrayBuffer() : []),
    });
    return signingWords.recorded;
  });
}

export async function dispatch(loanId: string, _before: FormState): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await dispatchLoan(viewer, { loanId });
    return releaseWords.dispatched;
  });
}

export async function close(loanId: string, _before: FormState): Promise<FormState> {
  return await actOnLoan(loanId, async (viewer) => {
    await closeLoan(viewer, { loanId });
    return roadWords.closed;
  });
}
