/**
 * Fields of a record's form whose text is not their value: numbers that may be
 * unknown, percentages that are kept as fractions, answers of yes, no and not
 * known, codes in one line. What was typed stays as it was typed while it is
 * being typed; an empty field is not known.
 */
"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { type Control, type FieldPath, type FieldValues, useController } from "react-hook-form";
import { SelectField, TextField } from "#app/_parts/fields.tsx";
import { digitsOf } from "#app/_parts/sent-fields.ts";
import { readCodes, writeCodes } from "#app/_parts/typed-codes.ts";
import {
  fractionToPercent,
  kindOfField,
  percentToFraction,
  readMinor,
  readNumber,
  writeNumber,
} from "#app/_parts/typed-number.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { numberSentence } from "#app/_words/number-problem.ts";

type FieldOf<Values extends FieldValues> = {
  control: Control<Values>;
  name: FieldPath<Values>;
  label: string;
  hint?: ReactNode;
  error?: string | undefined;
};

const sameNumber = (first: unknown, second: unknown) => Object.is(first, second);

/** @param percent typed and shown as a percentage, kept as a fraction */
export function NumberField<Values extends FieldValues>({
  control,
  name,
  percent = false,
  ...field
}: FieldOf<Values> & { percent?: boolean }) {
  const { field: kept } = useController({ control, name });
  const kind = kindOfField(name);
  const read = (text: string): number | null => {
    const value = readNumber(text, kind);
    return value !== null && percent ? percentToFraction(value) : value;
  };
  const textOf = (value: unknown) =>
    typeof value === "number" ? writeNumber(percent ? fractionToPercent(value) : value, kind) : "";
  const [typed, setTyped] = useState(() => textOf(kept.value));
  // A draft that came back, or a row that moved up, shows its own value and not what was typed here before.
  const shown = sameNumber(read(typed), kept.value ?? null) ? typed : textOf(kept.value);
  return (
    <TextField
      {...field}
      error={field.error && (numberSentence(shown, kind) ?? field.error)}
      name={name}
      ref={kept.ref}
      inputMode="decimal"
      autoComplete="off"
      value={shown}
      onBlur={kept.onBlur}
      onChange={(event) => {
        setTyped(event.target.value);
        kept.onChange(read(event.target.value));
      }}
    />
  );
}

/** An amount as people write it, kept in whole minor units of its currency. */
export function AmountField<Values extends FieldValues>({
  control,
  name,
  currency,
  ...field
}: FieldOf<Values> & { currency: string | undefined }) {
  const { field: kept } = useController({ control, name });
  const digits = digitsOf(currency ?? "");
  const read = (text: string) => readMinor(text, digits);
  const textOf = (value: unknown) =>
    typeof value === "number" && Number.isFinite(value) ? (value / 10 ** digits).toFixed(digits) : "";
  const [typed, setTyped] = useState(() => textOf(kept.value));
  const shown = sameNumber(read(typed), kept.value ?? null) ? typed : textOf(kept.value);
  const keep = (text: string) => {
    setTyped(text);
    kept.onChange(read(text));
  };
  // The same figure in a currency with other decimals is another number of minor units.
  const last = useRef({ digits, shown });
  useEffect(() => {
    const figure = last.current.digits === digits ? shown : last.current.shown;
    last.current = { digits, shown: figure };
    if (figure !== shown) keep(figure);
  });
  return (
    <TextField
      {...field}
      error={field.error && (numberSentence(shown, { decimals: digits }) ?? field.error)}
      name={name}
      ref={kept.ref}
      inputMode="decimal"
      autoComplete="off"
      value={shown}
      onBlur={kept.onBlur}
      onChange={(event) => keep(event.target.value)}
    />
  );
}

/** Yes, no, or not known. */
export function YesNoField<Values extends FieldValues>({ control, name, ...field }: FieldOf<Values>) {
  const { field: kept } = useController({ control, name });
  const value: unknown = kept.value;
  return (
    <SelectField
      {...field}
      name={name}
      ref={kept.ref}
      options={[
        ["yes", fieldWords.yes],
        ["no", fieldWords.no],
      ]}
      empty={fieldWords.notKnown}
      value={value === true ? "yes" : value === false ? "no" : ""}
      onBlur={kept.onBlur}
      onChange={(event) => kept.onChange(event.target.value === "" ? null : event.target.value === "yes")}
    />
  );
}

/** A day, or not known. */
export function DayField<Values extends FieldValues>({ control, name, ...field }: FieldOf<Values>) {
  const { field: kept } = useController({ control, name });
  return (
    <TextField
      {...field}
      type="date"
      name={name}
      ref={kept.ref}
      value={typeof kept.value === "string" ? kept.value : ""}
      onBlur={kept.onBlur}
      onChange={(event) => kept.onChange(event.target.value === "" ? null : event.target.value)}
    />
  );
}

/** Codes in one line. @param capitals whether the codes are capital letters, as countries are */
export function CodesField<Values extends FieldValues>({
  control,
  name,
  capitals = false,
  ...field
}: FieldOf<Values> & { capitals?: boolean }) {
  const { field: kept } = useController({ control, name });
  const read = (text: string) => readCodes(capitals ? text.toUpperCase() : text);
  const textOf = (value: unknown) => (Array.isArray(value) ? writeCodes(value as string[]) : "");
  const [typed, setTyped] = useState(() => textOf(kept.value));
  const shown = writeCodes(read(typed)) === textOf(kept.value) ? typed : textOf(kept.value);
  return (
    <TextField
      {...field}
      name={name}
      ref={kept.ref}
      autoComplete="off"
      value={shown}
      onBlur={kept.onBlur}
      onChange={(event) => {
        setTyped(event.target.value);
        kept.onChange(read(event.target.value));
      }}
    />
  );
}
