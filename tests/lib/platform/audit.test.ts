/**
 * What the database itself refuses and records, tried as the role of the
 * application, past every command: audit entries, append-only chains, custody,
 * the moves of a loan line, signatures.
 */
import crypto from "node:crypto";
import pg from "pg";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { lineMoveRows } from "#lib/loans/transitions.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { database, databasePool } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { inTransaction, refusalFromDatabase } from "#lib/platform/transaction.ts";
import { aLoanOf, aSpecimen, inWork } from "#tests/support/builders.ts";
import { fitting, ofType } from "#tests/support/chain-rows.ts";
import { testDatabase } from "#tests/support/database.ts";

const chains = [
  "public.audit_entry",
  "sealed.donor_look",
  "public.move",
  "public.custody_event",
  "public.condition_check",
  "public.finding",
  "public.crate_event",
  "public.crate_count",
  "public.suitability_run",
  "public.decision",
  "public.agreement",
  "public.signature",
  "public.facility_report",
  "public.climate_record",
  "public.message",
  "public.recall",
  "public.fee_scale",
  "public.costing",
  "public.costing_answer",
  "public.payment",
  "public.customs_discharge",
  "public.claim",
  "public.claim_event",
  "public.reminder",
  "public.issued_paper",
  "public.rule_override",
];

/** Tables whose rows are no act of a person: the audit itself, sign-in, receipts, numbers, reference data, letters. */
const unaudited = [
  "audit_entry",
  "command_receipt",
  "counter",
  "loan_line_move",
  "loan_to_judge",
  "mail",
  "message_seen",
  "sign_in_failure",
  "structure",
  "structure_ancestor",
  "structure_link",
  "structure_name",
];

let owner: pg.Client;
beforeAll(async () => {
  const { url } = await testDatabase();
  owner = new pg.Client({ connectionString: url });
  await owner.connect();
  for (const { fromState, toState } of lineMoveRows)
    await owner.query("INSERT INTO loan_line_move VALUES ($1, $2) ON CONFLICT DO NOTHING", [
      fromState,
      toState,
    ]);
});
afterAll(async () => {
  await owner.end();
});

/** One statement as the application, in the name of somebody. */
async function asApplication(statement: string, values: unknown[] = [], actor = "somebody"): Promise<void> {
  const client = await databasePool().connect();
  try {
    await client.query("BEGIN");
    await client.query(
      "SELECT set_config('anatheca.actor', $1, true), set_config('anatheca.act', 'test', true)",
      [actor],
    );
    await client.query(statement, values);
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    throw error;
  } finally {
    client.release();
  }
}
const entriesOf = async (tableName: string, rowKey: string) =>
  await database().auditEntry.findMany({ where: { tableName, rowKey }, orderBy: { id: "asc" } });
const insertPlace = (id: string, code: string) =>
  `INSERT INTO place (id, code, name, kind) VALUES ('${id}', '${code}', 'Shelf', 'shelf')`;

describe("every change", () => {
  test("of every table that people change is audited, and no table was forgotten", async () => {
    const { rows } = await owner.query(`
      SELECT n.nspname AS schema, c.relname AS name,
        EXISTS (SELECT 1 FROM pg_trigger t WHERE t.tgrelid = c.oid AND t.tgname = 'audited' AND t.tgenabled = 'O') AS audited
      FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
      WHERE n.nspname IN ('public', 'sealed') AND c.relkind = 'r' AND c.relname !~ '^(_prisma|auth_)'`);
    const left = rows.filter((row) => !row.audited).map((row) => row.name as string);
    expect(left.sort()).toEqual([...unaudited].sort());
    expect(rows.filter((row) => row.audited).length).toBeGreaterThan(35);
  });

  test("makes one entry with who, by which act, before and after", async () => {
    const id = newId();
    await asApplication(insertPlace(id, "AU-1"), [], "account 1");
    await asApplication("UPDATE place SET name = 'Shelf, lower' WHERE id = $1", [id], "account 2");
    await asApplication("UPDATE place SET name = 'Shelf, lower' WHERE id = $1", [id], "account 3");
    await asApplication("DELETE FROM place WHERE id = $1", [id], "account 4");
    const row = { id, code: "AU-1", name: "Shelf", kind: "shelf", parent_id: null, venue_id: null };
    const renamed = { ...row, name: "Shelf, lower" };
    expect(await entriesOf("place", id)).toMatchObject([
      { actor: "account 1", act: "test", operation: "insert", before: null, after: row },
      { actor: "account 2", act: "test", operation: "update", before: row, after: renamed },
      { actor: "account 4", act: "test", operation: "delete", before: renamed, after: null },
    ]);
  });

  test("and its entry stand or fall together", async () => {
    const id = newId();
    const attempt = inTransaction(programViewer, "test", async (transaction) => {
      await transaction.place.create({ data: { id, code: "AU-2", name: "Shelf", kind: "shelf" } });
      expect(await transaction.auditEntry.count({ where: { tableName: "place", rowKey: id } })).toBe(1);
      throw new Refusal("conflict", "place.code-taken");
    });
    await expect(attempt).rejects.toMatchObject({ reason: "place.code-taken" });
    expect(await database().place.findUnique({ where: { id } })).toBeNull();
    expect(await entriesOf("place", id)).toEqual([]);
  });

  test("without a person or an act behind it is refused", async () => {
    const id = newId();
    await expect(databasePool().query(insertPlace(id, "AU-3"))).rejects.toThrow("anatheca:audit.no-actor");
    await expect(asApplication(insertPlace(id, "AU-3"), [], "")).rejects.toThrow("anatheca:audit.no-actor");
    const refused = await database()
      .place.create({ data: { id, code: "AU-3", name: "Shelf", kind: "shelf" } })
      .catch((error: unknown) => refusalFromDatabase(error));
    expect(refused).toMatchObject({ kind: "conflict", reason: "audit.no-actor" });
    expect(await database().place.findUnique({ where: { id } })).toBeNull();
  });

  test("names its person for one transaction only", async () => {
    const client = await databasePool().connect();
    try {
      await client.query("BEGIN");
      await client.query(
        "SELECT set_config('anatheca.actor', 'somebody', true), set_config('anatheca.act', 'test', true)",
      );
      await client.query("COMMIT");
      await expect(client.query(insertPlace(newId(), "AU-4"))).rejects.toThrow("anatheca:audit.no-actor");
    } finally {
      client.release();
    }
  });

  test("keeps large and secret columns out of the entry", async () => {
    const { id } = await aSpecimen();
    const [entry] = await entriesOf("specimen", id);
    expect(entry?.after).toMatchObject({ id });
    expect(entry?.after).not.toHaveProperty("search_key");
  });
});

async function standARow(chain: string): Promise<void> {
  const [schema, table] = chain.split(".") as [string, string];
  const { rows: columns } = await owner.query(
    `SELECT column_name AS name, udt_name AS type FROM information_schema.columns
     WHERE table_schema = $1 AND table_name = $2 AND is_nullable = 'NO' AND column_default IS NULL`,
    [schema, table],
  );
  const values = columns.map(({ name, type }) => fitting[table]?.[name] ?? ofType[type]?.());
  const names = columns.map(({ name }) => name).join(", ");
  await owner.query("BEGIN");
  // Past foreign keys and triggers, as only the owner can; the row is there to be protected.
  await owner.query("SET LOCAL session_replication_role = replica");
  await owner.query(
    `INSERT INTO ${chain} (${names}) VALUES (${columns.map((_, at) => `$${at + 1}`).join(", ")})`,
    values,
  );
  await owner.query("COMMIT");
}

describe.each(chains)("%s", (chain) => {
  beforeAll(async () => {
    await standARow(chain);
  });

  test("refuses the application every change, removal and emptying", async () => {
    const { rows } = await owner.query(`SELECT count(*)::int AS count FROM ${chain}`);
    const { rows: columns } = await owner.query(
      "SELECT column_name AS name FROM information_schema.columns WHERE table_schema || '.' || table_name = $1 ORDER BY ordinal_position",
      [chain],
    );
    const column = columns[0].name as string;
    for (const statement of [
      `UPDATE ${chain} SET ${column} = ${column}`,
      `DELETE FROM ${chain}`,
      `TRUNCATE ${chain} CASCADE`,
      `ALTER TABLE ${chain} DISABLE TRIGGER ALL`,
      `DROP TABLE ${chain} CASCADE`,
    ])
      await expect(asApplication(statement)).rejects.toThrow(/permission denied|must be owner/);
    const after = await owner.query(`SELECT count(*)::int AS count FROM ${chain}`);
    expect(after.rows).toEqual(rows);
    expect(rows[0].count).toBeGreaterThan(0);
  });

  test("refuses them to the owner as well", async () => {
    const { rows: columns } = await owner.query(
      "SELECT column_name AS name FROM information_schema.columns WHERE table_schema || '.' || table_name = $1 AND is_generated = 'NEVER' ORDER BY ordinal_position",
      [chain],
    );
    const column = columns[0].name as string;
    for (const statement of [
      `UPDATE ${chain} SET ${column} = ${column}`,
      `DELETE FROM ${chain}`,
      `TRUNCATE ${chain} CASCADE`,
    ])
      await expect(owner.query(statement)).rejects.toThrow("anatheca:record.append-only");
  });
});

test("no audit entry is written by hand, and no table of the application can be emptied at once", async () => {
  await expect(
    asApplication(
      "INSERT INTO audit_entry (actor, act, table_name, row_key, operation) VALUES ('a', 'b', 'c', 'd', 'insert')",
    ),
  ).rejects.toThrow("permission denied");
  const { rows } = await owner.query("SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'");
  for (const { name } of rows)
    await expect(asApplication(`TRUNCATE "${name}"`)).rejects.toThrow("permission denied");
  await expect(asApplication("SET session_replication_role = replica")).rejects.toThrow("permission denied");
});

describe("custody in the database", () => {
  const link = async (
    specimenId: string,
    sequence: number,
    from: string | null,
    to: string,
    at = "2027-01-15T09:00:00Z",
  ) =>
    await asApplication(
      `INSERT INTO custody_event (id, specimen_id, sequence, from_party, to_party, handed_over_at, released_by, received_by, reason)
       VALUES ($1, $2, $3, $4, $5, $6, 'a', 'b', 'c')`,
      [newId(), specimenId, sequence, from, to, at],
    );

  test("begins at one, from nobody", async () => {
    const { id } = await aSpecimen();
    await expect(link(id, 2, null, "House")).rejects.toThrow("anatheca:custody.broken-chain");
    await expect(link(id, 1, "A museum", "House")).rejects.toThrow("anatheca:custody.broken-chain");
    await link(id, 1, null, "House");
  });

  test("goes on where it ended, by the next number, never back in time", async () => {
    const { id } = await aSpecimen();
    await link(id, 1, null, "House");
    await expect(link(id, 3, "House", "Carrier")).rejects.toThrow("anatheca:custody.broken-chain");
    await expect(link(id, 1, "House", "Carrier")).rejects.toThrow("anatheca:custody.broken-chain");
    await expect(link(id, 2, "Carrier", "School")).rejects.toThrow("anatheca:custody.broken-chain");
    await expect(link(id, 2, null, "School")).rejects.toThrow("anatheca:custody.broken-chain");
    await expect(link(id, 2, "House", "Carrier", "2027-01-14T09:00:00Z")).rejects.toThrow(
      "anatheca:custody.broken-chain",
    );
    await link(id, 2, "House", "Carrier");
  });

  test("never has two links of one number, however many write at once", async () => {
    const { id } = await aSpecimen();
    await link(id, 1, null, "House");
    const results = await Promise.allSettled(
      Array.from({ length: 10 }, (_, at) => link(id, 2, "House", `Carrier ${at}`)),
    );
    expect(results.filter((result) => result.status === "fulfilled")).toHaveLength(1);
  });
});

describe("a loan line in the database", () => {
  const aLine = async () => (await aLoanOf([await aSpecimen()])).lineIds[0] as string;
  const moveTo = (line: string, state: string) =>
    asApplication("UPDATE loan_line SET state = $2 WHERE id = $1", [line, state]);

  test("moves by the table and no other way", async () => {
    const line = await aLine();
    for (const state of ["accepted", "packed", "closed", "anything"])
      await expect(moveTo(line, state)).rejects.toThrow("anatheca:loan.move-not-allowed");
    for (const state of ["requested", "accepted", "packed", "travelling out"]) await moveTo(line, state);
    for (const state of ["requested", "at venue", "withdrawn"])
      await expect(moveTo(line, state)).rejects.toThrow("anatheca:loan.move-not-allowed");
  });

  test("begins on the slip, keeps its specimen, and is removed from the slip only", async () => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    const [line, other] = [loan.lineIds[0] as string, await aSpecimen()];
    const insert = "INSERT INTO loan_line (id, loan_id, specimen_id, state) VALUES ($1, $2, $3, $4)";
    await expect(asApplication(insert, [newId(), loan.id, other.id, "at venue"])).rejects.toThrow(
      "anatheca:loan.line-starts-noted",
    );
    await expect(
      asApplication("UPDATE loan_line SET specimen_id = $2 WHERE id = $1", [line, other.id]),
    ).rejects.toThrow("anatheca:loan.line-fixed");
    await moveTo(line, "requested");
    await expect(asApplication("DELETE FROM loan_line WHERE id = $1", [line])).rejects.toThrow(
      "anatheca:loan.line-kept",
    );
    const slip = await aLine();
    await asApplication("DELETE FROM loan_line WHERE id = $1", [slip]);
    expect(await database().loanLine.findUnique({ where: { id: slip } })).toBeNull();
  });

  test("cannot be given another table by the application", async () => {
    for (const statement of [
      "INSERT INTO loan_line_move VALUES ('noted', 'closed')",
      "UPDATE loan_line_move SET to_state = 'closed'",
      "DELETE FROM loan_line_move",
    ])
      await expect(asApplication(statement)).rejects.toThrow("permission denied");
  });
});

describe("a signature in the database", () => {
  const hashOf = (terms: string) => crypto.createHash("sha256").update(terms).digest("hex");
  const anAgreement = async (loanId: string, version: number, terms: string, sha256 = hashOf(terms)) => {
    const id = newId();
    await inWork(({ transaction }) =>
      transaction.agreement.create({
        data: { id, loanId, version, terms, sha256, drawnUpBy: "somebody", drawnUpAt: new Date() },
      }),
    );
    return id;
  };
  const sign = (agreementId: string, party: string, sha256: string) =>
    asApplication(
      `INSERT INTO signature (id, agreement_id, party, signer_name, signer_role, account_id, signed_at, sha256)
       VALUES ($1, $2, $3, 'S. Signer', 'registrar', 'somebody', now(), $4)`,
      [newId(), agreementId, party, sha256],
    );

  test("stands under the very terms, of the newest version, once for each party", async () => {
    const { id: loanId } = await aLoanOf([await aSpecimen()]);
    const first = await anAgreement(loanId, 1, "first terms");
    await expect(sign(first, "lender", hashOf("other terms"))).rejects.toThrow(
      "anatheca:agreement.other-terms",
    );
    await sign(first, "lender", hashOf("first terms"));
    await expect(sign(first, "lender", hashOf("first terms"))).rejects.toThrow(
      "signature_agreement_id_party_key",
    );
    await expect(sign(first, "witness", hashOf("first terms"))).rejects.toThrow("signature_party_set");
    const second = await anAgreement(loanId, 2, "second terms");
    await expect(sign(first, "borrower", hashOf("first terms"))).rejects.toThrow(
      "anatheca:agreement.superseded",
    );
    await sign(second, "borrower", hashOf("second terms"));
  });

  test("cannot be had for a hash that is not the terms' own", async () => {
    const { id: loanId } = await aLoanOf([await aSpecimen()]);
    await expect(anAgreement(loanId, 1, "terms", hashOf("other terms"))).rejects.toThrow("agreement_hash");
  });
});
