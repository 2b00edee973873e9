/** What a working answers, with the words and units of its schema: facts, tables for lists, groups inside groups. */
import type { ReactNode } from "react";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Unknown } from "#app/_parts/figures.tsx";
import { roundForReading } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { type JsonSchema, withoutNull } from "#app/_parts/working-fields.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import { formatShare } from "#app/_words/format.ts";
import { wordsOfName, wordsOfValue } from "#app/_words/names.ts";
import { type Outcome, outcomes } from "#lib/workings/outcome.ts";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const innerSchema = (schema: JsonSchema, keyword: string): JsonSchema => {
  const inner = schema[keyword];
  return isRecord(inner) ? withoutNull(inner).schema : {};
};
const propertyOf = (schema: JsonSchema, name: string): JsonSchema =>
  innerSchema(innerSchema(schema, "properties"), name);

function unitOf(schema: JsonSchema, name: string): string {
  return typeof schema.unit === "string" ? schema.unit : wordsOfName(name).unit;
}
function titleOf(schema: JsonSchema, name: string): string {
  return typeof schema.title === "string" ? schema.title : wordsOfName(name).words;
}

function isOutcome(value: unknown): value is Outcome {
  return (outcomes as readonly unknown[]).includes(value);
}

/** @param name for the unit where the schema states none */
function Leaf({ value, schema, name }: { value: unknown; schema: JsonSchema; name: string }) {
  if (value === null || value === undefined) return <Unknown />;
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (isOutcome(value)) return <StateMark outcome={value} />;
  const unit = unitOf(schema, name);
  if (typeof value === "number") {
    if (unit.startsWith("fraction")) return <span>{formatShare(value, 1)}</span>;
    return (
      <span style={{ whiteSpace: "nowrap" }}>
        {roundForReading(value)} {unit}
      </span>
    );
  }
  return wordsOfValue(String(value));
}

function Value({ value, schema, name }: { value: unknown; schema: JsonSchema; name: string }): ReactNode {
  if (Array.isArray(value)) {
    if (value.length === 0) return words.none;
    const items = innerSchema(schema, "items");
    if (value.every(isRecord)) return <Rows rows={value} schema={items} title={titleOf(schema, name)} />;
    return (
      <ul style={{ margin: 0, paddingLeft: "1.1rem" }}>
        {value.map((each, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an answer's list never moves
          <li key={index}>
            <Leaf value={each} schema={items} name={name} />
          </li>
        ))}
      </ul>
    );
  }
  if (isRecord(value)) return <WorkingResult value={value} schema={schema} />;
  return <Leaf value={value} schema={schema} name={name} />;
}

function Rows({
  rows,
  schema,
  title,
}: {
  rows: readonly Record<string, unknown>[];
  schema: JsonSchema;
  title: string;
}) {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const numbered = rows.map((row, index) => ({ row, index }));
  return (
    <DataTable<(typeof numbered)[number]>
      caption={title}
      captionHidden
      rows={numbered}
      rowKey={({ index }) => String(index)}
      columns={names.map((name) => {
        const inner = propertyOf(schema, name);
        return {
          key: name,
          label: titleOf(inner, name),
          right: rows.some((row) => typeof row[name] === "number"),
          cell: ({ row }) => <Value value={row[name]} schema={inner} name={name} />,
        };
      })}
    />
  );
}

export function WorkingResult({ value, schema }: { value: Record<string, unknown>; schema: JsonSchema }) {
  return (
    <Facts
      facts={Object.entries(value).map(([name, inner]) => {
        const innerOf = propertyOf(schema, name);
        return [
          titleOf(innerOf, name),
          <Value key={name} value={inner} schema={innerOf} name={name} />,
        ] as const satisfies [string, ReactNode];
      })}
    />
  );
}
