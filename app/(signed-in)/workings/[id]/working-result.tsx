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
import styles from "#app/(signed-in)/workings/[id]/working-form.module.css";
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

/** A figure, a word, or a short list of them: what has a place on one line. */
function Plain({ value, schema, name }: { value: unknown; schema: JsonSchema; name: string }): ReactNode {
  if (!Array.isArray(value)) return <Leaf value={value} schema={schema} name={name} />;
  if (value.length === 0) return words.none;
  const items = innerSchema(schema, "items");
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

/** Whether a value has parts of its own and needs more than a line. */
const hasParts = (value: unknown): boolean =>
  isRecord(value) ||
  (Array.isArray(value) && value.some((each) => typeof each === "object" && each !== null));

type Rows = readonly Record<string, unknown>[];

function TableOfRows({ rows, schema, title }: { rows: Rows; schema: JsonSchema; title: string }) {
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
          cell: ({ row }) => <Plain value={row[name]} schema={inner} name={name} />,
        };
      })}
    />
  );
}

/** A part of an answer under its own heading: a group, a table, or one group for each row that has parts. */
function Part({ value, schema, title }: { value: unknown; schema: JsonSchema; title: string }): ReactNode {
  if (isRecord(value))
    return (
      <>
        <h3 className={styles.part}>{title}</h3>
        <WorkingResult value={value} schema={schema} within={title} />
      </>
    );
  const items = innerSchema(schema, "items");
  const rows = (Array.isArray(value) ? value : []).filter(isRecord);
  if (rows.some((row) => Object.values(row).some(hasParts)))
    return rows.map((row, index) => (
      <Part
        // biome-ignore lint/suspicious/noArrayIndexKey: an answer's list never moves
        key={index}
        value={row}
        schema={items}
        title={words.row(title, index + 1)}
      />
    ));
  return (
    <>
      <h3 className={styles.part}>{title}</h3>
      <TableOfRows rows={rows} schema={items} title={title} />
    </>
  );
}

/** @param within the headings above, so that two tables are never called the same */
export function WorkingResult({
  value,
  schema,
  within = "",
}: {
  value: Record<string, unknown>;
  schema: JsonSchema;
  within?: string;
}) {
  const entries = Object.entries(value).map(([name, inner]) => {
    const innerOf = propertyOf(schema, name);
    return { name, inner, innerOf, title: titleOf(innerOf, name) };
  });
  const plain = entries.filter(({ inner }) => !hasParts(inner));
  return (
    <>
      {plain.length > 0 && (
        <Facts
          facts={plain.map(({ name, inner, innerOf, title }) => [
            title,
            <Plain key={name} value={inner} schema={innerOf} name={name} />,
          ])}
        />
      )}
      {entries
        .filter(({ inner }) => hasParts(inner))
        .map(({ name, inner, innerOf, title }) => (
          <Part
            key={name}
            value={inner}
            schema={innerOf}
            title={within === "" ? title : `${within}: ${title}`}
          />
        ))}
    </>
  );
}
