/** The cover that is taken out, typed as an amount of a currency; an empty amount is not known yet. */
"use client";

import { useState } from "react";
import { type Control, useController } from "react-hook-form";
import { FieldGrid, TextField } from "#app/_parts/fields.tsx";
import { digitsOf } from "#app/_parts/sent-fields.ts";
import { readMinor } from "#app/_parts/typed-number.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { numberSentence } from "#app/_words/number-problem.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";

type Cover = RequestDraft["cover"];

function typedAmount(cover: Cover): string {
  if (cover === null || !Number.isFinite(cover.minor)) return "";
  const digits = digitsOf(cover.currency);
  return (cover.minor / 10 ** digits).toFixed(digits);
}

function readCover(amount: string, currency: string): Cover {
  const minor = readMinor(amount, digitsOf(currency));
  return minor === null ? null : { minor, currency };
}

export function CoverFields({
  control,
  currency: usual,
  error,
}: {
  control: Control<RequestDraft>;
  currency: string;
  error?: string | undefined;
}) {
  const { field } = useController({ control, name: "cover" });
  const kept = field.value;
  const [amount, setAmount] = useState(() => typedAmount(kept));
  const [currency, setCurrency] = useState(kept?.currency ?? usual);
  // A draft that came back shows its own amount, not the one this form began with.
  const isTyped = readCover(amount, currency)?.minor === kept?.minor || Number.isNaN(kept?.minor);
  const change = (nextAmount: string, nextCurrency: string) => {
    setAmount(nextAmount);
    setCurrency(nextCurrency);
    field.onChange(readCover(nextAmount, nextCurrency));
  };
  const shown = isTyped
    ? { amount, currency }
    : { amount: typedAmount(kept), currency: kept?.currency ?? usual };
  return (
    <fieldset>
      <legend>{words.cover}</legend>
      <FieldGrid>
        <TextField
          label={words.coverAmount}
          hint={words.coverAmountHint}
          name="cover-amount"
          inputMode="decimal"
          autoComplete="off"
          ref={field.ref}
          value={shown.amount}
          onBlur={field.onBlur}
          onChange={(event) => change(event.target.value, shown.currency)}
          error={error && (numberSentence(shown.amount, { decimals: digitsOf(shown.currency) }) ?? error)}
        />
        <TextField
          label={words.coverCurrency}
          name="cover-currency"
          autoComplete="off"
          value={shown.currency}
          onBlur={field.onBlur}
          onChange={(event) => change(shown.amount, event.target.value.toUpperCase())}
        />
      </FieldGrid>
    </fieldset>
  );
}
