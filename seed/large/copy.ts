/**
 * Filling tables by COPY. Indexes that only serve reading are taken away first and
 * made again from the finished tables, all in one transaction: a fill that is cut
 * short leaves the database as it was.
 */
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import type pg from "pg";
import { from } from "pg-copy-streams";
import type { Table } from "#seed/large/rows.ts";

/** Lines are handed over in pieces of about this size. */
const pieceBytes = 256 * 1024;

function* pieces(lines: Iterable<string>, onLine: () => void): Generator<Buffer> {
  let text = "";
  for (const line of lines) {
    text += line;
    onLine();
    if (text.length >= pieceBytes) {
      yield Buffer.from(text);
      text = "";
    }
  }
  if (text !== "") yield Buffer.from(text);
}

/** @returns how many rows were written */
export async function copyTable(
  client: pg.ClientBase,
  { name, columns, lines }: Table,
  tell: (rows: number) => void,
): Promise<number> {
  let rows = 0;
  const source = Readable.from(
    pieces(lines(), () => {
      rows += 1;
      if (rows % 100_000 === 0) tell(rows);
    }),
  );
  await pipeline(source, client.query(from(`COPY ${name} (${columns.join(", ")}) FROM STDIN`)));
  return rows;
}

/** Takes away the indexes that no constraint needs. @returns the statements that make them again */
export async function dropReadingIndexes(
  client: pg.ClientBase,
  tables: readonly string[],
): Promise<string[]> {
  const { rows } = await client.query<{ name: string; definition: string }>(
    `SELECT index.relname AS name, pg_get_indexdef(index.oid) AS definition
     FROM pg_index JOIN pg_class index ON index.oid = pg_index.indexrelid
     JOIN pg_class owner ON owner.oid = pg_index.indrelid
     JOIN pg_namespace space ON space.oid = owner.relnamespace
     WHERE space.nspname = 'public' AND owner.relname = ANY($1::text[]) AND NOT pg_index.indisunique
       AND NOT pg_index.indisprimary
       AND NOT EXISTS (SELECT 1 FROM pg_constraint WHERE conindid = index.oid)
     ORDER BY 1`,
    [tables],
  );
  for (const { name } of rows) await client.query(`DROP INDEX ${name}`);
  return rows.map(({ definition }) => definition);
}
