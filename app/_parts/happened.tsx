/**
 * What happened, the newest first: one line for each deed, with who and when, and
 * only what changed. A deed of many rows is folded; it opens without a script, and
 * what stays folded is not printed.
 */
import Link from "next/link";
import { Fragment, type ReactNode } from "react";
import styles from "#app/_parts/happened.module.css";
import { Moment } from "#app/_parts/moment.tsx";
import { auditWords as words } from "#app/_words/en/audit.ts";
import { formatDate, formatExact } from "#app/_words/format.ts";
import { wordsOfName } from "#app/_words/names.ts";
import { type Change, deedsOf, type RecordKey } from "#lib/desk/audit-entry.ts";
import type { HappenedEntry } from "#lib/desk/queries/happened.ts";

/** More than this is folded until asked for. */
const readAtAGlance = 4;
const longestText = 240;

function hrefOf(record: RecordKey): string {
  const pages: Record<RecordKey["kind"], string> = {
    specimen: `/specimens/${record.key}`,
    series: `/series/${record.key}`,
    institution: `/institutions/${record.key}`,
    venue: `/venues/${record.key}`,
    loan: `/loans/${record.key}`,
    donor: `/donors/${record.key}`,
    account: `/accounts/${record.key}`,
    settings: "/audit?tableName=setting",
  };
  return pages[record.kind];
}

function textOf(value: unknown): ReactNode {
  if (value === null || value === undefined || value === "") return words.empty;
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (typeof value === "number") return formatExact(value);
  if (Array.isArray(value)) {
    if (value.length === 0) return words.empty;
    const plain = value.every((each) => typeof each === "string" || typeof each === "number");
    return plain ? value.join(", ") : `${value.length} ${words.rows}`;
  }
  if (typeof value === "object") return JSON.stringify(value).slice(0, longestText);
  const text = String(value);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return formatDate(text);
  if (/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(text)) return <Moment at={text} long />;
  return text.length > longestText ? `${text.slice(0, longestText)}…` : text;
}

function fieldWords(field: string): string {
  const own = words.fieldWords[field];
  if (own) return own;
  const { words: said, unit } = wordsOfName(field);
  return unit ? `${said}, ${unit}` : said;
}

/** The difference of one column: what it was, struck through, and what it is. */
function Difference({ change, operation }: { change: Change; operation: HappenedEntry["operation"] }) {
  if (change.withheld) return <i className="quiet">{words.withheld}</i>;
  const before = <del className={styles.before}>{textOf(change.before)}</del>;
  const after = <ins className={styles.after}>{textOf(change.after)}</ins>;
  if (operation === "insert") return after;
  if (operation === "delete") return before;
  return (
    <>
      <span className="visually-hidden">{words.from} </span>
      {before} <span aria-hidden="true">→</span>
      <span className="visually-hidden"> {words.to} </span> {after}
    </>
  );
}

/** That a row belongs to its record is said by the deed already. */
function newsOf({ changes, recordName, operation }: HappenedEntry): Change[] {
  const named = (change: Change) => (operation === "delete" ? change.before : change.after);
  return changes.filter((change) => recordName === null || named(change) !== recordName);
}

function Changes({ entry }: { entry: HappenedEntry }) {
  const news = newsOf(entry);
  return (
    <dl className={styles.changes}>
      {news.map((change) => (
        <div key={change.field}>
          <dt>{fieldWords(change.field)}</dt>
          <dd>
            <Difference change={change} operation={entry.operation} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

function tableWords(table: string): string {
  return words.tables[table as keyof typeof words.tables] ?? table;
}

/** One row: what happened to it, its name among the rows of the deed, and what changed. */
function RowChanged({ entry }: { entry: HappenedEntry }) {
  return (
    <li>
      <p className={styles.row}>
        {words.operations[entry.operation]}: {tableWords(entry.tableName)}{" "}
        {entry.label && entry.label !== entry.recordName && <b>{entry.label}</b>}
        {entry.changes.length === 0 && <span className="quiet">({words.noValues})</span>}
      </p>
      <Changes entry={entry} />
    </li>
  );
}

/** The records that a deed touched, each once. */
function Records({ entries, linked }: { entries: readonly HappenedEntry[]; linked: boolean }) {
  const records = new Map<string, { name: string; href: string | null }>();
  for (const { record, recordOpens, recordName, label } of entries) {
    const name = recordName ?? label;
    const href = record && linked && recordOpens ? hrefOf(record) : null;
    if (record && name) records.set(`${record.kind} ${record.key}`, { name, href });
  }
  const shown = [...records].slice(0, readAtAGlance);
  return (
    <>
      {shown.map(([key, { name, href }], place) => (
        <Fragment key={key}>
          {place > 0 && ", "}
          {href === null ? name : <Link href={href}>{name}</Link>}
        </Fragment>
      ))}
      {records.size > shown.length && ` ${words.andMore(records.size - shown.length)}`}
    </>
  );
}

/** What a folded deed holds: each kind of row with its number. */
function contentsOf(entries: readonly HappenedEntry[]): string {
  const counts = new Map<string, number>();
  for (const { tableName, operation } of entries) {
    const what = `${tableWords(tableName)} ${words.operations[operation]}`;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return [...counts].map(([what, count]) => (count > 1 ? `${what} × ${count}` : what)).join(", ");
}

function Rows({ entries }: { entries: readonly HappenedEntry[] }) {
  const rows = (
    <ul className={styles.rows}>
      {entries.map((entry) => (
        <RowChanged key={entry.id} entry={entry} />
      ))}
    </ul>
  );
  const lines = entries.reduce((sum, { changes }) => sum + Math.max(changes.length, 1), 0);
  if (lines <= readAtAGlance) return rows;
  return (
    <details>
      <summary>{contentsOf(entries)}</summary>
      {rows}
    </details>
  );
}

/**
 * @param linked whether the names of records lead to their pages, as they do outside the record's own page
 * @param empty what to say when there is nothing
 */
export function Happened({
  entries,
  linked = false,
  empty = words.noneShown,
}: {
  entries: readonly HappenedEntry[];
  linked?: boolean;
  empty?: ReactNode;
}) {
  if (entries.length === 0) return typeof empty === "string" ? <p className="quiet">{empty}</p> : empty;
  return (
    <ol className={styles.deeds}>
      {deedsOf(entries).map((deed) => (
        <li key={deed.key}>
          <p className={styles.when}>
            <Moment at={deed.at.toISOString()} long />
            <span className="quiet">{deed.entries[0]?.by}</span>
          </p>
          <div>
            <p className={styles.row}>
              <b>{words.acts[deed.act] ?? deed.act}</b> <Records entries={deed.entries} linked={linked} />
            </p>
            <Rows entries={deed.entries} />
          </div>
        </li>
      ))}
    </ol>
  );
}
