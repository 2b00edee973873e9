/**
 * What happened, the newest first: one line for each deed, with who and when, and
 * only what changed. A deed of many rows is folded; it opens without a script and
 * prints open or closed as it stands.
 */
import Link from "next/link";
import type { ReactNode } from "react";
import styles from "#app/_parts/happened.module.css";
import { auditWords as words } from "#app/_words/en/audit.ts";
import { formatDate, formatMoment, formatNumber } from "#app/_words/format.ts";
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
    venue: `/venues/${record.key}/edit`,
    loan: `/loans/${record.key}`,
    donor: `/donors/${record.key}`,
    account: `/accounts/${record.key}`,
    settings: "/audit?tableName=setting",
  };
  return pages[record.kind];
}

function textOf(value: unknown): string {
  if (value === null || value === undefined || value === "") return words.empty;
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (typeof value === "number") return formatNumber(value);
  if (Array.isArray(value)) {
    if (value.length === 0) return words.empty;
    const plain = value.every((each) => typeof each === "string" || typeof each === "number");
    return plain ? value.join(", ") : `${value.length} ${words.rows}`;
  }
  if (typeof value === "object") return JSON.stringify(value).slice(0, longestText);
  const text = String(value);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return formatDate(text);
  if (/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(text)) return formatMoment(text);
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

function Changes({ entry }: { entry: HappenedEntry }) {
  const list = (
    <dl className={styles.changes}>
      {entry.changes.map((change) => (
        <div key={change.field}>
          <dt>{fieldWords(change.field)}</dt>
          <dd>
            <Difference change={change} operation={entry.operation} />
          </dd>
        </div>
      ))}
    </dl>
  );
  if (entry.changes.length === 0) return <span className="quiet">{words.noValues}</span>;
  if (entry.changes.length <= readAtAGlance) return list;
  return (
    <details>
      <summary>
        {entry.changes.length} {words.fields}
      </summary>
      {list}
    </details>
  );
}

function RowChanged({ entry, linked }: { entry: HappenedEntry; linked: boolean }) {
  const table = words.tables[entry.tableName as keyof typeof words.tables] ?? entry.tableName;
  const name = entry.label ?? entry.recordName;
  const belongs = entry.label !== null && entry.recordName !== null && entry.recordName !== entry.label;
  return (
    <li>
      <p className={styles.row}>
        {words.operations[entry.operation]}: {table}
        {name && (
          <>
            {" "}
            <b>{linked && entry.record ? <Link href={hrefOf(entry.record)}>{name}</Link> : name}</b>
          </>
        )}
        {belongs && <span className="quiet"> ({entry.recordName})</span>}
      </p>
      <Changes entry={entry} />
    </li>
  );
}

function folded(rows: readonly ReactNode[]): ReactNode {
  if (rows.length <= readAtAGlance) return <ul className={styles.rows}>{rows}</ul>;
  return (
    <details>
      <summary>
        {rows.length} {words.rows}
      </summary>
      <ul className={styles.rows}>{rows}</ul>
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
          <div className={styles.deed}>
            <p>
              <b>{words.acts[deed.act] ?? deed.act}</b>
            </p>
            <p className="quiet small">
              {deed.entries[0]?.by}, <time dateTime={deed.at.toISOString()}>{formatMoment(deed.at)}</time>
            </p>
          </div>
          <div>
            {folded(deed.entries.map((entry) => <RowChanged key={entry.id} entry={entry} linked={linked} />))}
          </div>
        </li>
      ))}
    </ol>
  );
}
