"use server";
/** Writing down tariff codes from a loan's file. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { tariffWords } from "#app/_words/en/tariff.ts";
import { decideTariffCode } from "#lib/loans/commands/tariff.ts";
import { type TariffSheet, tariffCodesOf } from "#lib/loans/queries/tariff-codes.ts";

/** The specimens that a choice stands for: a group, or one by its id. */
function chosen(sheet: TariffSheet | undefined, which: string, countryCode: string): string[] {
  if (sheet === undefined) return [];
  const idsOf = (specimens: TariffSheet["specimens"]) => specimens.map(({ id }) => id);
  switch (which) {
    case "open":
      return idsOf(sheet.open.find((one) => one.countryCode === countryCode)?.specimens ?? []);
    case "human":
      return idsOf(sheet.specimens.filter(({ human }) => human));
    case "animal":
      return idsOf(sheet.specimens.filter(({ human }) => !human));
    case "all":
      return idsOf(sheet.specimens);
    default:
      return idsOf(sheet.specimens.filter(({ id }) => id === which));
  }
}

export async function decideCode(
  loanId: string,
  stageId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const countryCode = textIn(fields, "countryCode");
    const sheet = (await tariffCodesOf(viewer, loanId)).find((one) => one.stageId === stageId);
    await decideTariffCode(viewer, {
      stageId,
      countryCode,
      specimenIds: chosen(sheet, textIn(fields, "which"), countryCode),
      code: textIn(fields, "code"),
      decidedBy: textIn(fields, "decidedBy"),
      decidedOn: textIn(fields, "decidedOn"),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: tariffWords.done };
  });
}
