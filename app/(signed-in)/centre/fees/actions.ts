"use server";
/** Setting a new version of the fee scale. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { readNumber } from "#app/_parts/typed-number.ts";
import { runAction } from "#app/_server/action.ts";
import { moneyWords, feeWords as words } from "#app/_words/en/money.ts";
import { rateNames } from "#app/(signed-in)/centre/fees/scale-tables.tsx";
import { amountIn, decimalIn } from "#app/(signed-in)/loans/[id]/money/sent-lines.ts";
import { setFeeScale } from "#lib/costing/commands.ts";
import { type FeeScale, lineCodes, type premiumBases } from "#lib/costing/schema.ts";
import { purposes } from "#lib/suitability/schema.ts";

/** A group of fields of one kind, read by their keys. */
function group<Key extends string, Value>(keys: readonly Key[], read: (key: Key) => Value) {
  return Object.fromEntries(keys.map((key) => [key, read(key)])) as Record<Key, Value>;
}

/** A whole number; what is none stays as such and is refused by the schema. */
const wholeIn = (fields: FormData, name: string) => readNumber(textIn(fields, name), "large measure") ?? 0;

function scaleIn(fields: FormData): FeeScale {
  const currency = textIn(fields, "currency").toUpperCase();
  const amount = (name: string, label: string) => amountIn(fields, name, label, currency);
  const decimal = (name: string, label: string) => decimalIn(fields, name, label);
  const steps = [...fields.keys()]
    .filter((name) => name.startsWith("step-days-"))
    .map((name) => name.slice("step-days-".length))
    .filter((key) => textIn(fields, `step-days-${key}`) !== "");
  return {
    currency,
    loanFees: group(purposes, (purpose) => ({
      baseMinor: amount(`fee-base-${purpose}`, `${words.purposes[purpose]}, ${words.base}`),
      included: wholeIn(fields, `fee-included-${purpose}`),
      furtherMinor: amount(`fee-further-${purpose}`, `${words.purposes[purpose]}, ${words.further}`),
    })),
    rates: group(rateNames, (name) => amount(`rate-${name}`, words.rateNames[name])),
    cover: {
      transitPerMille: decimal("transitPerMille", words.transit),
      transitBasis: textIn(fields, "transitBasis") as (typeof premiumBases)[number],
      stayPerMille: decimal("stayPerMille", words.stay),
      stayBasis: textIn(fields, "stayBasis") as (typeof premiumBases)[number],
    },
    recall: {
      percent: decimal("recallPercent", words.recallPercent),
      leastMinor: amount("recallLeast", words.recallLeast),
    },
    contingencyPercent: decimal("contingencyPercent", words.contingency),
    taxPercent: group(lineCodes, (code) => decimal(`tax-${code}`, moneyWords.lines[code])),
    validDays: wholeIn(fields, "validDays"),
    cancellation: steps.map((key) => ({
      daysBefore: wholeIn(fields, `step-days-${key}`),
      percent: decimal(`step-share-${key}`, words.step(Number(key) + 1)),
    })),
  };
}

export async function saveFeeScale(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await setFeeScale(viewer, { scale: scaleIn(fields), validFrom: textIn(fields, "validFrom") });
    revalidatePath("/centre", "layout");
    return { goTo: "/centre/fees" };
  });
}
