/**
 * A working's JSON Schema as the fields of a form, and the parameters of an
 * address read back into an input. Names are dotted paths (`sides.lengthMm`,
 * `spans.0.hours`), so a form that is sent without a script says everything.
 *
 * An empty field is left out, never nought. A row of a list and a group that may
 * be missing are left out when nothing in them was filled. What was typed and
 * cannot be read stays as it was typed: the working refuses it by name.
 */
import {
  fractionToPercent,
  type NumberKind,
  percentToFraction,
  readNumber,
  writeNumber,
} from "#app/_parts/typed-number.ts";
import { wordsOfName } from "#app/_words/names.ts";

export type JsonSchema = { readonly [keyword: string]: unknown };

type Common = { title: string; required: boolean };
export type NumberField = Common & {
  kind: "number";
  unit: string;
  whole: boolean;
  /** Shown and typed as a percentage, kept as a fraction. */
  percent: boolean;
  /** Bounds in the unit of the schema; the open ones are not reached. */
  minimum: number | null;
  maximum: number | null;
  aboveMinimum: boolean;
  start: number | null;
};
export type ChoiceField = Common & {
  kind: "choice";
  unit: string;
  options: readonly (string | number)[];
  start: string | number | null;
};
export type BooleanField = Common & { kind: "boolean"; start: boolean | null };
export type TextField = Common & { kind: "text"; most: number | null };
export type GroupField = Common & { kind: "group"; fields: readonly NamedField[] };
export type ListField = Common & { kind: "list"; item: Field; least: number; most: number };
/** One of several shapes, told apart by a word. */
export type VariantField = Common & {
  kind: "variant";
  key: string;
  cases: readonly { value: string; fields: readonly NamedField[] }[];
};
export type Field =
  | NumberField
  | ChoiceField
  | BooleanField
  | TextField
  | GroupField
  | ListField
  | VariantField;
export type NamedField = { name: string; field: Field };

const isSchema = (value: unknown): value is JsonSchema =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const schemasOf = (value: unknown): JsonSchema[] => (Array.isArray(value) ? value.filter(isSchema) : []);
const numberOf = (value: unknown): number | null => (typeof value === "number" ? value : null);
const textOf = (value: unknown): string => (typeof value === "string" ? value : "");

/** A schema that allows null beside something else, as that something. */
export function withoutNull(schema: JsonSchema): { schema: JsonSchema; nullable: boolean } {
  const { anyOf, type } = schema;
  if (Array.isArray(type)) {
    const [only] = type.filter((each) => each !== "null");
    return { schema: { ...schema, type: only }, nullable: type.includes("null") };
  }
  const [only, ...more] = schemasOf(anyOf).filter((each) => each.type !== "null");
  if (!only || more.length > 0) return { schema, nullable: false };
  const { anyOf: _left, ...outer } = schema;
  return { schema: { ...only, ...outer }, nullable: true };
}

const percentUnit = /^fraction/;

function namedFields(schema: JsonSchema, without?: string): NamedField[] {
  const properties = isSchema(schema.properties) ? schema.properties : {};
  const required = Array.isArray(schema.required) ? schema.required : [];
  return Object.entries(properties).flatMap(([name, inner]) => {
    if (name === without || !isSchema(inner)) return [];
    return [{ name, field: fieldOf(inner, name, required.includes(name)) }];
  });
}

function fieldOf(given: JsonSchema, name: string, required: boolean): Field {
  const { schema, nullable } = withoutNull(given);
  const said = wordsOfName(name);
  const common = {
    title: textOf(schema.title) || said.words,
    required: required && !nullable && !("default" in schema),
  };
  const unit = textOf(schema.unit) || said.unit;
  const start = schema.default;
  if (Array.isArray(schema.enum)) {
    const options = schema.enum.filter((each) => typeof each === "string" || typeof each === "number");
    return {
      kind: "choice",
      ...common,
      unit,
      options,
      start: typeof start === "string" || typeof start === "number" ? start : null,
    };
  }
  const cases = schemasOf(schema.oneOf);
  if (cases.length > 0) return variantOf(cases, common);
  switch (schema.type) {
    case "number":
    case "integer":
      return {
        kind: "number",
        ...common,
        unit: percentUnit.test(unit) ? "%" : unit,
        whole: schema.type === "integer",
        percent: percentUnit.test(unit),
        minimum: numberOf(schema.minimum) ?? numberOf(schema.exclusiveMinimum),
        maximum: numberOf(schema.maximum) ?? numberOf(schema.exclusiveMaximum),
        aboveMinimum: schema.minimum === undefined && schema.exclusiveMinimum !== undefined,
        start: numberOf(start),
      };
    case "boolean":
      return { kind: "boolean", ...common, start: typeof start === "boolean" ? start : null };
    case "array":
      return {
        kind: "list",
        ...common,
        item: fieldOf(isSchema(schema.items) ? schema.items : {}, name, true),
        least: numberOf(schema.minItems) ?? 0,
        most: numberOf(schema.maxItems) ?? 1_000,
      };
    case "object":
      return { kind: "group", ...common, fields: namedFields(schema) };
    default:
      return { kind: "text", ...common, most: numberOf(schema.maxLength) };
  }
}

function variantOf(cases: readonly JsonSchema[], common: Common): VariantField {
  const constantsOf = (schema: JsonSchema) =>
    Object.entries(isSchema(schema.properties) ? schema.properties : {}).flatMap(([name, inner]) =>
      isSchema(inner) && typeof inner.const === "string" ? [{ name, value: inner.const }] : [],
    );
  const key = (cases[0] && constantsOf(cases[0])[0]?.name) ?? "kind";
  return {
    kind: "variant",
    ...common,
    key,
    cases: cases.flatMap((schema) => {
      const value = constantsOf(schema).find((constant) => constant.name === key)?.value;
      return value === undefined ? [] : [{ value, fields: namedFields(schema, key) }];
    }),
  };
}

/** The fields of a working's input. */
export function fieldsOf(schema: JsonSchema): NamedField[] {
  return namedFields(schema);
}

/** What an address says: a value by name, and all names. */
export type Sent = { get(name: string): string | null; names: readonly string[] };

export function sentIn(search: Readonly<Record<string, string | string[] | undefined>>): Sent {
  return {
    get: (name) => {
      const value = Object.hasOwn(search, name) ? search[name] : undefined;
      return (Array.isArray(value) ? value[0] : value) ?? null;
    },
    names: Object.keys(search),
  };
}

/** Whole numbers, lengths and light go into thousands; thousandths of them are not typed. */
export const kindOfNumber = ({ whole, unit }: NumberField): NumberKind =>
  whole || /^(mm|lx|µW)/.test(unit) ? "large measure" : "measure";

const join = (prefix: string, name: string | number) => (prefix === "" ? String(name) : `${prefix}.${name}`);
const mostRows = 300;

/** How many rows of a list an address names. */
function rowsIn(sent: Sent, name: string): number {
  let rows = 0;
  for (const each of sent.names) {
    if (!each.startsWith(`${name}.`)) continue;
    const [, index] = /^(\d{1,3})(?:\.|$)/.exec(each.slice(name.length + 1)) ?? [];
    if (index !== undefined) rows = Math.max(rows, Number(index) + 1);
  }
  return Math.min(rows, mostRows);
}

function readGroup(fields: readonly NamedField[], prefix: string, sent: Sent): Record<string, unknown> {
  const read: Record<string, unknown> = {};
  for (const { name, field } of fields) {
    const value = readField(field, join(prefix, name), sent);
    if (value !== undefined) read[name] = value;
  }
  return read;
}

/** Whether nothing was filled; a default that stood in the field counts as filled. */
const isBlank = (value: unknown): boolean =>
  value === undefined || (typeof value === "object" && value !== null && Object.values(value).every(isBlank));

function readField(field: Field, name: string, sent: Sent): unknown {
  const typed = sent.get(name)?.trim() ?? "";
  switch (field.kind) {
    case "number": {
      const value = readNumber(typed, kindOfNumber(field));
      if (value === null) return undefined;
      if (Number.isNaN(value)) return typed;
      return field.percent ? percentToFraction(value) : value;
    }
    case "choice":
      if (typed === "") return undefined;
      return field.options.find((option) => String(option) === typed) ?? typed;
    case "boolean":
      return typed === "" ? undefined : typed === "yes" ? true : typed === "no" ? false : typed;
    case "text":
      return typed === "" ? undefined : typed;
    case "group": {
      const value = readGroup(field.fields, name, sent);
      return isBlank(value) && !field.required ? undefined : value;
    }
    case "list": {
      const rows = Array.from({ length: rowsIn(sent, name) }, (_, index) =>
        readField(field.item, join(name, index), sent),
      ).filter((row) => !isBlank(row));
      return rows.length === 0 && !field.required ? undefined : rows;
    }
    case "variant": {
      const value = sent.get(join(name, field.key))?.trim() ?? "";
      if (value === "") return undefined;
      const chosen = field.cases.find((each) => each.value === value);
      return { [field.key]: value, ...(chosen ? readGroup(chosen.fields, join(name, value), sent) : {}) };
    }
  }
}

/** The input that an address states. */
export function readInput(fields: readonly NamedField[], sent: Sent): Record<string, unknown> {
  return readGroup(fields, "", sent);
}

/** What stands in a field for a value of the input, or for its default when there is none. */
export function fieldText(field: Field, value: unknown): string {
  switch (field.kind) {
    case "number": {
      const shown = value === undefined || value === null ? field.start : value;
      if (typeof shown !== "number") return typeof shown === "string" ? shown : "";
      return writeNumber(field.percent ? fractionToPercent(shown) : shown, kindOfNumber(field));
    }
    case "choice":
      return String(value ?? field.start ?? "");
    case "boolean": {
      const shown = value ?? field.start;
      return typeof shown === "boolean" ? (shown ? "yes" : "no") : String(shown ?? "");
    }
    default:
      return typeof value === "string" ? value : "";
  }
}

function writeField(field: Field, name: string, value: unknown, query: URLSearchParams): void {
  if (value === undefined || value === null) return;
  if (field.kind === "group" && isSchema(value)) {
    for (const inner of field.fields)
      writeField(inner.field, join(name, inner.name), value[inner.name], query);
  } else if (field.kind === "list" && Array.isArray(value)) {
    value.forEach((row, index) => {
      writeField(field.item, join(name, index), row, query);
    });
  } else if (field.kind === "variant" && isSchema(value)) {
    const word = textOf(value[field.key]);
    query.set(join(name, field.key), word);
    for (const inner of field.cases.find((each) => each.value === word)?.fields ?? [])
      writeField(inner.field, join(join(name, word), inner.name), value[inner.name], query);
  } else query.set(name, fieldText(field, value));
}

/** The parameters that state an input: what the form would send for it. */
export function writeInput(fields: readonly NamedField[], input: Readonly<Record<string, unknown>>): string {
  const query = new URLSearchParams();
  for (const { name, field } of fields) writeField(field, name, input[name], query);
  return query.toString();
}
