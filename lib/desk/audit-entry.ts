/**
 * Reads entries of the audit for one viewer. Which rows and which values somebody
 * may read follows the table of sights: the audit never shows more than the record
 * itself would. A table that is not listed here is shown to nobody, and the sealed
 * record leaves no values in the audit at all.
 *
 * Entries that one act wrote in one transaction are one deed.
 */
import { maySee, type Sight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export const operations = ["insert", "update", "delete"] as const;
export type Operation = (typeof operations)[number];

/** A row as it stood, by column. */
export type Row = Readonly<Record<string, unknown>>;

export type StoredEntry = {
  id: string;
  /** The transaction that wrote it, as the database names it; entries of one act share it. */
  transaction: string;
  at: Date;
  actor: string;
  act: string;
  tableName: string;
  rowKey: string;
  operation: Operation;
  before: Row | null;
  after: Row | null;
};

/** One column that changed. A withheld one changed too, but its values are not for the viewer. */
export type Change = { field: string; before: unknown; after: unknown; withheld: boolean };

/** What somebody needs to see before rows of a table are shown at all. */
export const auditedTables = {
  setting: [],
  stored_file: [],
  institution: ["institutions"],
  venue: ["facilityFacts"],
  passage: ["facilityFacts"],
  licence: ["facilityFacts"],
  facility_report: ["facilityFacts"],
  climate_record: ["facilityFacts"],
  insurance: ["facilityFacts"],
  account: ["roleHolders"],
  donor: ["donorCode"],
  consent: ["donorCode", "consentScopes"],
  consent_answer: ["donorCode", "consentScopes"],
  specimen_donor: ["donorCode"],
  permit: [],
  title: [],
  donor_identity: ["donorCode", "sealedLooks"],
  donor_look: ["donorCode", "sealedLooks"],
  specimen: [],
  component: [],
  former_number: [],
  hazard: [],
  series: [],
  series_landmark: [],
  shown: [],
  preparation_step: [],
  place: ["storeLocation"],
  move: ["storeLocation"],
  custody_event: ["allLoans"],
  booking: ["allLoans"],
  condition_check: ["conditionRecords"],
  finding: ["conditionRecords"],
  crate: ["allLoans"],
  crate_content: ["allLoans"],
  stage: ["allLoans"],
  tariff_code: ["allLoans"],
  crate_event: ["allLoans"],
  crate_count: ["allLoans"],
  loan: ["allLoans"],
  loan_line: ["allLoans"],
  suitability_run: ["allLoans", "suitabilityReasons"],
  decision: ["allLoans", "suitabilityReasons"],
  claim: ["allLoans"],
  claim_event: ["allLoans", "replacementCost"],
  rule_override: ["allLoans", "suitabilityReasons"],
  cover: ["allLoans"],
  plan_step: ["allLoans"],
  extension: ["allLoans"],
  recall: ["allLoans"],
  message: ["allLoans"],
  reminder: ["allLoans"],
  calendar_feed: ["accounts"],
  mandate: ["mandates"],
  agreement: ["allLoans"],
  signature: ["allLoans"],
  fee_scale: ["feeScale"],
  costing: ["allLoans", "costings"],
  costing_answer: ["allLoans", "costings"],
  payment: ["allLoans", "costings"],
  customs_discharge: ["allLoans"],
  issued_paper: ["allLoans"],
} as const satisfies Record<string, readonly Sight[]>;
export type AuditedTable = keyof typeof auditedTables;

/** Columns that are guarded more strictly than their table. */
const guardedColumns: Readonly<Record<string, Readonly<Record<string, Sight>>>> = {
  specimen: {
    sex: "personFacts",
    age_band: "personFacts",
    death_period: "personFacts",
    replacement_cost_minor: "replacementCost",
    replacement_cost_currency: "replacementCost",
    replacement_cost_basis: "replacementCost",
    replacement_cost_on: "replacementCost",
    replacement_cost_by: "replacementCost",
  },
  cover: { amount_minor: "replacementCost", currency: "replacementCost" },
  agreement: { terms: "replacementCost" },
  issued_paper: { content: "replacementCost" },
  account: { email: "accounts" },
};

/** The tables whose entries the viewer may read. */
export function tablesShownTo(viewer: Viewer): AuditedTable[] {
  return (Object.entries(auditedTables) as [AuditedTable, readonly Sight[]][])
    .filter(([, sights]) => sights.every((sight) => maySee(viewer, sight)))
    .map(([table]) => table);
}

const isPlainObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const deepest = 4;

/** Columns with their values; an object inside a column gives a dotted name for each of its own. */
function flatten(row: Row | null, prefix = "", depth = 0): Map<string, unknown> {
  const flat = new Map<string, unknown>();
  for (const [name, value] of Object.entries(row ?? {})) {
    if (isPlainObject(value) && depth < deepest) {
      for (const [inner, innerValue] of flatten(value, `${prefix}${name}.`, depth + 1))
        flat.set(inner, innerValue);
    } else flat.set(`${prefix}${name}`, value);
  }
  return flat;
}

const isEmpty = (value: unknown) =>
  value === null || value === undefined || value === "" || (Array.isArray(value) && value.length === 0);
const sameValue = (first: unknown, second: unknown) =>
  (isEmpty(first) && isEmpty(second)) || JSON.stringify(first) === JSON.stringify(second);

/** What names a row to a person, from the most telling column to the least. */
const namingColumns = [
  "accession_number",
  "number",
  "code",
  "name",
  "title",
  "scope",
  "substance",
  "step",
  "term",
];

/** What names the row to a person; null when none of its columns does. */
export function labelOf({ before, after }: Pick<StoredEntry, "before" | "after">): string | null {
  const row = after ?? before;
  for (const column of namingColumns) {
    const value = row?.[column];
    if ((typeof value === "string" && value !== "") || typeof value === "number") return String(value);
  }
  return null;
}

/** Columns that change with every write, or never, and tell a reader nothing. */
const bookkeeping = new Set(["id", "version", "sequence"]);

/** Columns that changed, the naming ones first, then by name. */
export function changesOf(
  entry: Pick<StoredEntry, "tableName" | "before" | "after">,
  viewer: Viewer,
): Change[] {
  const before = flatten(entry.before);
  const after = flatten(entry.after);
  const guarded = guardedColumns[entry.tableName] ?? {};
  const order = (field: string) => {
    const place = namingColumns.indexOf(field);
    return place < 0 ? namingColumns.length : place;
  };
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((field) => !bookkeeping.has(field) && !sameValue(before.get(field), after.get(field)))
    .sort((first, second) => order(first) - order(second) || (first < second ? -1 : 1))
    .map((field) => {
      const sight = guarded[field.split(".")[0] ?? field];
      const withheld = sight !== undefined && !maySee(viewer, sight);
      return withheld
        ? { field, before: null, after: null, withheld }
        : { field, before: before.get(field) ?? null, after: after.get(field) ?? null, withheld };
    });
}

/** The record on whose page a row stands. */
export type RecordKey = {
  kind: "specimen" | "series" | "institution" | "venue" | "loan" | "donor" | "account" | "settings";
  key: string;
};

/** Columns that say to which record a row belongs, the nearest first. */
const owners: readonly [column: string, kind: RecordKey["kind"]][] = [
  ["specimen_id", "specimen"],
  ["loan_id", "loan"],
  ["donor_code", "donor"],
  ["series_id", "series"],
  ["institution_id", "institution"],
  ["venue_id", "venue"],
];
const ownKinds: Readonly<Record<string, RecordKey["kind"]>> = {
  specimen: "specimen",
  series: "series",
  institution: "institution",
  loan: "loan",
  donor: "donor",
  donor_identity: "donor",
  donor_look: "donor",
  account: "account",
  setting: "settings",
};

export function recordOf(
  entry: Pick<StoredEntry, "tableName" | "rowKey" | "before" | "after">,
): RecordKey | null {
  const own = ownKinds[entry.tableName];
  if (own) return { kind: own, key: entry.rowKey };
  const row = entry.after ?? entry.before;
  for (const [column, kind] of owners) {
    const key = row?.[column];
    if (typeof key === "string") return { kind, key };
  }
  return null;
}

/** Whether the viewer has a page of such records; the audit leads to no page that is shut. */
export function hasPageOf(viewer: Viewer, { kind }: RecordKey): boolean {
  switch (kind) {
    case "account":
      return maySee(viewer, "accounts");
    case "donor":
      return maySee(viewer, "donorCode");
    case "institution":
      return maySee(viewer, "facilityFacts");
    case "venue":
      return maySee(viewer, "facilityFacts");
    case "loan":
      return maySee(viewer, "loanFile");
    default:
      return true;
  }
}

/** What one act wrote in one transaction. */
export type Deed<Entry> = { key: string; at: Date; actor: string; act: string; entries: Entry[] };

/** After a restore the database may name many transactions alike; an act is never longer than this. */
const longestActMs = 60_000;

/** Neighbours by the same person, act and transaction are one deed. */
export function deedsOf<Entry extends Pick<StoredEntry, "id" | "transaction" | "at" | "actor" | "act">>(
  entries: readonly Entry[],
): Deed<Entry>[] {
  const deeds: Deed<Entry>[] = [];
  for (const entry of entries) {
    const deed = deeds.at(-1);
    const first = deed?.entries[0];
    const goesOn =
      first !== undefined &&
      first.actor === entry.actor &&
      first.act === entry.act &&
      first.transaction === entry.transaction &&
      Math.abs(first.at.getTime() - entry.at.getTime()) <= longestActMs;
    if (deed && goesOn) deed.entries.push(entry);
    else deeds.push({ key: entry.id, at: entry.at, actor: entry.actor, act: entry.act, entries: [entry] });
  }
  return deeds;
}

/**
 * Where a page of entries ends that does not part a deed: at the most allowed, or
 * before the deed that goes on beyond it. A deed longer than a page is parted.
 * @param entries one more than allowed where there are more
 */
export function pageEnd(entries: readonly Pick<StoredEntry, "transaction">[], most: number): number {
  const beyond = entries[most]?.transaction;
  if (beyond === undefined) return Math.min(entries.length, most);
  let end = most;
  while (end > 0 && entries[end - 1]?.transaction === beyond) end -= 1;
  return end === 0 ? most : end;
}
