/** A large collection, in small: rows that fit together, numbers of the pattern, a database that is as guarded as before. */
import fc from "fast-check";
import pg from "pg";
import { beforeAll, describe, expect, test } from "vitest";
import { followsPattern } from "#lib/specimens/accession-number.ts";
import { specimenSearchKey } from "#lib/specimens/search-text.ts";
import { fillLarge } from "#seed/large/fill.ts";
import { accessionNumbers, idMaker, spread } from "#seed/large/numbers.ts";
import { checksEach, shownEach } from "#seed/large/rows.ts";
import { centre } from "#seed/scenario/centre.ts";
import { testDatabase } from "#tests/support/database.ts";

describe("numbers", () => {
  test("accession numbers follow the pattern, differ, and avoid those that are taken", () => {
    const taken = new Set(["AN 1900.0000", "AN 2019.0001", "AN 2024.9999"]);
    for (const count of [1, 124, 1_000, 30_000]) {
      const numbers = accessionNumbers(count, taken);
      expect(numbers).toHaveLength(count);
      expect(new Set(numbers).size).toBe(count);
      expect(numbers.some((number) => taken.has(number))).toBe(false);
      expect(numbers.every((number) => followsPattern(number, centre.accessionPattern))).toBe(true);
    }
  });

  test("more numbers than the pattern has are refused", () => {
    expect(() => accessionNumbers(1_250_001, new Set())).toThrow(RangeError);
    expect(accessionNumbers(1_250_000, new Set())).toHaveLength(1_250_000);
  });

  test("ids are UUIDs of version 7 that rise and differ by kind", () => {
    const [one, other] = [idMaker(1_790_000_000_000, 1), idMaker(1_790_000_000_000, 2)];
    fc.assert(
      fc.property(fc.nat(3_000_000), (index) => {
        expect(one(index)).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}$/);
        expect(one(index) < one(index + 1)).toBe(true);
        expect(one(index)).not.toBe(other(index));
      }),
    );
  });

  test("the spread stays within its bounds and reaches every value", () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(100), fc.integer({ min: 1, max: 5_000 }), (index, salt, below) => {
        const value = spread(index, salt, below);
        expect(Number.isInteger(value) && value >= 0 && value < below).toBe(true);
      }),
    );
    expect(new Set(Array.from({ length: 500 }, (_, index) => spread(index, 3, 30))).size).toBe(30);
  });
});

describe("a filled database", () => {
  const count = 400;
  let client: pg.Client;
  let indexesBefore: string[];

  const indexes = async () =>
    (await client.query<{ indexdef: string }>("SELECT indexdef FROM pg_indexes ORDER BY indexname")).rows.map(
      ({ indexdef }) => indexdef,
    );
  const number = async (sql: string) => Number((await client.query<{ count: string }>(sql)).rows[0]?.count);

  beforeAll(async () => {
    const { url } = await testDatabase("vocabularies");
    client = new pg.Client({ connectionString: url });
    await client.connect();
    indexesBefore = await indexes();
    await fillLarge(url, count);
    return async () => await client.end();
  }, 120_000);

  test("holds what was asked for", async () => {
    expect(await number("SELECT count(*) FROM specimen")).toBe(count);
    expect(await number("SELECT count(*) FROM shown")).toBe(count * shownEach);
    expect(await number("SELECT count(*) FROM condition_check")).toBe(count * checksEach);
    expect(await number("SELECT count(*) FROM finding")).toBeGreaterThan(count);
  });

  test("refers only to what there is", async () => {
    const { rows } = await client.query<{ name: string; table: string; definition: string }>(
      `SELECT conname AS name, conrelid::regclass::text AS table, pg_get_constraintdef(oid) AS definition
       FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace`,
    );
    expect(rows.length).toBeGreaterThan(10);
    await client.query("BEGIN");
    for (const { name, table, definition } of rows)
      await client.query(
        `ALTER TABLE ${table} DROP CONSTRAINT "${name}", ADD CONSTRAINT "${name}" ${definition}`,
      );
    await client.query("ROLLBACK");
  });

  test("is searched like what is typed in", async () => {
    const { rows } = await client.query<{
      accession_number: string;
      title: string;
      latin_title: string;
      search_key: string;
    }>("SELECT accession_number, title, latin_title, search_key FROM specimen ORDER BY id LIMIT 50");
    for (const row of rows)
      expect(row.search_key).toBe(
        specimenSearchKey({
          accessionNumber: row.accession_number,
          formerNumbers: [],
          title: row.title,
          latinTitle: row.latin_title,
        }),
      );
  });

  test("has its indexes and its guards again, and one entry in the audit for all rows", async () => {
    expect(await indexes()).toEqual(indexesBefore);
    expect(await number("SELECT count(*) FROM audit_entry WHERE table_name = 'specimen'")).toBe(1);
    await expect(client.query("UPDATE specimen SET note = 'x'")).rejects.toThrow("anatheca:audit.no-actor");
    await expect(client.query("DELETE FROM move")).rejects.toThrow("anatheca:record.append-only");
  });

  test("is left as it was when the number makes no sense", async () => {
    const url = process.env.DATABASE_URL ?? "";
    for (const wrong of [0, -1, 1.5, Number.NaN, 1_000_001])
      await expect(fillLarge(url, wrong)).rejects.toThrow("Say how many specimens");
    expect(await number("SELECT count(*) FROM specimen")).toBe(count);
  });
});
