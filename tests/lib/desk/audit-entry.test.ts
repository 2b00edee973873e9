/** What one viewer reads of the audit: tables, columns, names, and which entries are one deed. */
import fs from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  auditedTables,
  changesOf,
  deedsOf,
  hasPageOf,
  labelOf,
  pageEnd,
  recordOf,
  type StoredEntry,
  tablesShownTo,
} from "#lib/desk/audit-entry.ts";
import { maySee } from "#lib/people/permission.ts";
import { type Role, roles, type Viewer } from "#lib/people/viewer.ts";

const viewerAs = (...held: Role[]): Viewer => ({
  accountId: "a",
  name: "A",
  email: "a@example.org",
  roles: held,
  institutionId: null,
});
const collectionManager = viewerAs("collection manager");

const anEntry = (said: Partial<StoredEntry>): StoredEntry => ({
  id: "1",
  transaction: "700",
  at: new Date("2027-01-15T09:00:00Z"),
  actor: "a",
  act: "reviseSpecimen",
  tableName: "specimen",
  rowKey: "s",
  operation: "update",
  before: null,
  after: null,
  ...said,
});

describe("tables", () => {
  test("every table with an audit trigger is listed, and no other", () => {
    const migrations = path.resolve(import.meta.dirname, "../../../prisma/migrations");
    const lists = fs
      .readdirSync(migrations, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => fs.readFileSync(path.join(migrations, name, "migration.sql"), "utf8"))
      .map((migration) => /audited text\[\]\[\] := ARRAY\[([\s\S]*?)\n {2}\];/.exec(migration)?.[1] ?? "");
    const audited = lists.flatMap((list) =>
      [...list.matchAll(/'(?:public|sealed)\.(\w+)'/g)].map((match) => match[1]),
    );
    expect(audited.length).toBeGreaterThan(30);
    expect(Object.keys(auditedTables).sort()).toEqual(audited.sort());
  });

  test("nobody without sight of donors reads an entry about one", () => {
    for (const role of roles) {
      const shown = tablesShownTo(viewerAs(role));
      const ofDonors = ["donor", "consent", "consent_answer", "specimen_donor", "donor_identity"] as const;
      if (!maySee(viewerAs(role), "donorCode")) {
        for (const table of ofDonors) expect(shown).not.toContain(table);
      }
      if (!maySee(viewerAs(role), "sealedLooks")) expect(shown).not.toContain("donor_look");
    }
    expect(tablesShownTo(viewerAs("administrator"))).not.toContain("consent");
    expect(tablesShownTo(viewerAs("donor officer"))).toContain("donor_look");
  });

  test("accounts are the administrator's, and the inspector's to see who holds which role", () => {
    const readers = roles.filter((role) => tablesShownTo(viewerAs(role)).includes("account"));
    expect(readers.sort()).toEqual(["administrator", "inspector"]);
  });
});

describe("changes", () => {
  test("of a revised row are the columns that differ", () => {
    const entry = anEntry({
      before: { id: "s", title: "Heart", note: "", mass_kg: 0.4 },
      after: { id: "s", title: "Heart, opened", note: "", mass_kg: 0.4 },
    });
    expect(changesOf(entry, collectionManager)).toEqual([
      { field: "title", before: "Heart", after: "Heart, opened", withheld: false },
    ]);
  });

  test("of a new row are its columns that hold something, the naming ones first", () => {
    const entry = anEntry({
      operation: "insert",
      after: { accession_number: "AN 1", age_band: null, kind: "organ", note: "", version: 1 },
    });
    expect(changesOf(entry, collectionManager).map(({ field }) => field)).toEqual([
      "accession_number",
      "kind",
    ]);
  });

  test("inside an object are named by their path", () => {
    const entry = anEntry({
      tableName: "setting",
      before: { key: "centre", value: { name: "Old", city: "Northmere" } },
      after: { key: "centre", value: { name: "New", city: "Northmere" } },
    });
    expect(changesOf(entry, collectionManager)).toEqual([
      { field: "value.name", before: "Old", after: "New", withheld: false },
    ]);
  });

  test("of a guarded column are told without their values", () => {
    const entry = anEntry({
      before: { replacement_cost_minor: 100, sex: "female" },
      after: { replacement_cost_minor: 200, sex: "unknown" },
    });
    expect(changesOf(entry, viewerAs("curator"))).toEqual([
      { field: "replacement_cost_minor", before: null, after: null, withheld: true },
      { field: "sex", before: "female", after: "unknown", withheld: false },
    ]);
    expect(changesOf(entry, viewerAs("administrator")).map(({ withheld }) => withheld)).toEqual([true, true]);
    expect(changesOf(entry, collectionManager).some(({ withheld }) => withheld)).toBe(false);
  });

  test("of an account tell an inspector the name and the roles, and not the address", () => {
    const entry = anEntry({
      tableName: "account",
      before: { name: "Rowan Tidemark", email: "old@example.org", roles: ["registrar"] },
      after: { name: "Rowan Tidemark", email: "new@example.org", roles: ["registrar", "curator"] },
    });
    const roleChange = {
      field: "roles",
      before: ["registrar"],
      after: ["registrar", "curator"],
      withheld: false,
    };
    expect(changesOf(entry, viewerAs("inspector"))).toEqual([
      { field: "email", before: null, after: null, withheld: true },
      roleChange,
    ]);
    expect(changesOf(entry, viewerAs("administrator"))).toEqual([
      { field: "email", before: "old@example.org", after: "new@example.org", withheld: false },
      roleChange,
    ]);
  });

  test("are none between two equal rows, whatever they hold", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (row) => {
        expect(changesOf(anEntry({ before: row, after: structuredClone(row) }), collectionManager)).toEqual(
          [],
        );
      }),
    );
  });
});

describe("names", () => {
  test("a row is called by its most telling column, of the state after the change", () => {
    expect(labelOf({ before: { title: "Old" }, after: { title: "Heart", accession_number: "AN 1" } })).toBe(
      "AN 1",
    );
    expect(labelOf({ before: { scope: "export" }, after: null })).toBe("export");
    expect(labelOf({ before: null, after: { answer: "granted" } })).toBeNull();
  });

  test("a row belongs to the record whose page it stands on", () => {
    expect(recordOf(anEntry({ rowKey: "s" }))).toEqual({ kind: "specimen", key: "s" });
    expect(recordOf(anEntry({ tableName: "donor_look", rowKey: "D-4K7QX" }))).toEqual({
      kind: "donor",
      key: "D-4K7QX",
    });
    expect(recordOf(anEntry({ tableName: "shown", before: { specimen_id: "s" } }))).toEqual({
      kind: "specimen",
      key: "s",
    });
    expect(recordOf(anEntry({ tableName: "passage", after: { venue_id: "v" } }))).toEqual({
      kind: "venue",
      key: "v",
    });
    expect(recordOf(anEntry({ tableName: "consent_answer", after: { scope: "export" } }))).toBeNull();
  });

  test.each([
    ["account", ["administrator"]],
    ["donor", ["curator", "conservator", "collection manager", "donor officer", "inspector"]],
    [
      "venue",
      [
        "registrar",
        "curator",
        "conservator",
        "collection manager",
        "donor officer",
        "inspector",
        "borrower registrar",
      ],
    ],
    ["settings", [...roles]],
  ] as const)("the page of a record of the kind %s is open to its readers alone", (kind, readers) => {
    const open = roles.filter((role) => hasPageOf(viewerAs(role), { kind, key: "x" }));
    expect(open.sort()).toEqual([...readers].sort());
  });
});

describe("deeds", () => {
  const at = (seconds: number) => new Date(Date.UTC(2027, 0, 15, 9, 0, seconds));

  test("neighbours by the same person, act and transaction are one", () => {
    const entries = [
      anEntry({ id: "5", at: at(30), transaction: "701" }),
      anEntry({ id: "4", at: at(30), transaction: "701" }),
      anEntry({ id: "3", at: at(30) }),
      anEntry({ id: "2", at: at(20), act: "recordShown" }),
      anEntry({ id: "1", at: at(20), actor: "b", act: "recordShown" }),
    ];
    expect(deedsOf(entries).map((deed) => deed.entries.map(({ id }) => id))).toEqual([
      ["5", "4"],
      ["3"],
      ["2"],
      ["1"],
    ]);
  });

  test("transactions that are named alike are told apart by their time", () => {
    const entries = [anEntry({ id: "2", at: at(59) }), anEntry({ id: "1", at: new Date(0) })];
    expect(deedsOf(entries)).toHaveLength(2);
  });

  test("no entry is lost and none is told twice", () => {
    const entry = fc.record({
      id: fc.uuid(),
      transaction: fc.constantFrom("700", "701"),
      at: fc.date({ noInvalidDate: true }),
      actor: fc.constantFrom("a", "b"),
      act: fc.constantFrom("reviseSpecimen", "recordShown"),
    });
    fc.assert(
      fc.property(fc.array(entry), (entries) => {
        expect(deedsOf(entries).flatMap((deed) => deed.entries)).toEqual(entries);
      }),
    );
  });
});

describe("a page", () => {
  const of = (transactions: string) => [...transactions].map((transaction) => ({ transaction }));

  test.each([
    ["aabb", 4, 4],
    ["aabbc", 4, 4],
    ["aabbb", 4, 2],
    ["aaaaa", 4, 4],
    ["aaaab", 4, 4],
    ["a", 4, 1],
    ["", 4, 0],
  ])("of %j with room for %d ends after %d", (transactions, most, end) => {
    expect(pageEnd(of(transactions), most)).toBe(end);
  });

  test("always leads on", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[abc]+$/), fc.integer({ min: 1, max: 9 }), (transactions, most) => {
        const end = pageEnd(of(transactions), most);
        expect(end).toBeGreaterThan(0);
        expect(end).toBeLessThanOrEqual(Math.min(most, transactions.length));
      }),
    );
  });
});
