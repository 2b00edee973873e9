/** Loading the reference data: once, again, changed, and wrong. */
import pg from "pg";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { searchStructures } from "#lib/anatomy/queries.ts";
import type { VocabularyFile } from "#lib/anatomy/vocabulary.ts";
import { lineMoveRows } from "#lib/loans/transitions.ts";
import { loadReference, ReferenceFailure, readVocabularyFiles } from "#seed/reference.ts";
import { aSpecimen, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aShown } from "#tests/support/specimen-records.ts";

let url = "";
let client: pg.Client;

beforeAll(async () => {
  ({ url } = await testDatabase("tables"));
  client = new pg.Client({ connectionString: url });
  await client.connect();
});
afterAll(async () => {
  await client.end();
});

const count = async (table: string) =>
  Number((await client.query(`SELECT count(*) FROM ${table}`)).rows[0].count);
const files = readVocabularyFiles();
const withLine = (name: string, line: string): VocabularyFile[] =>
  files.map((file) => (file.name === name ? { ...file, text: `${file.text.trimEnd()}\n${line}\n` } : file));
const newLine = "test-structure\ttest structure\t\t\t\thand\tnervous-system\tno\t\t";

describe("loading", () => {
  test("fills every table, and a second time changes nothing", async () => {
    const first = await loadReference(url);
    expect(first.changed).toBe(true);
    expect(await count("structure")).toBe(first.structures);
    expect(await count("structure_name")).toBe(first.names);
    expect(await count("structure_ancestor")).toBe(first.ancestors);
    expect(await count("loan_line_move")).toBe(lineMoveRows.length);
    const entries = await count("audit_entry");
    expect(await loadReference(url)).toEqual({ ...first, changed: false });
    expect(await count("audit_entry")).toBe(entries);
  });

  test("two at the same moment do it once", async () => {
    const changed = withLine("limbs.tsv", newLine);
    const both = await Promise.all([loadReference(url, changed), loadReference(url, changed)]);
    expect(both.map((result) => result.changed).sort()).toEqual([false, true]);
    expect(await count("structure WHERE id = 'test-structure'")).toBe(1);
  });

  test("a search that has read the names before knows the new ones", async () => {
    const found = async () =>
      (await searchStructures(aViewer("curator"), "test structure")).map(({ id }) => id);
    await loadReference(url);
    expect(await found()).not.toContain("test-structure");
    await loadReference(url, withLine("limbs.tsv", newLine));
    expect(await found()).toEqual(["test-structure"]);
  });

  test("takes away what is no longer in the files", async () => {
    await loadReference(url);
    expect(await count("structure WHERE id = 'test-structure'")).toBe(0);
  });

  test("writes who loaded it and the hash of what it loaded into the audit", async () => {
    const { rows } = await client.query(
      "SELECT DISTINCT actor, act FROM audit_entry WHERE row_key = 'reference.content-hash'",
    );
    expect(rows).toEqual([{ actor: "program", act: "loadReference" }]);
  });
});

describe("what is refused leaves the database as it was", () => {
  const refused = async (files: VocabularyFile[], sentence: RegExp) => {
    const before = await count("structure_ancestor");
    const thrown = await loadReference(url, files).catch((error: unknown) => error);
    expect(thrown).toBeInstanceOf(ReferenceFailure);
    expect(String(thrown)).toMatch(sentence);
    expect(await count("structure_ancestor")).toBe(before);
  };

  test("an unknown id", async () =>
    await refused(
      withLine("limbs.tsv", newLine.replace("hand", "hnad")),
      /limbs\.tsv, line \d+: test-structure names "hnad" as region, which no row has\./,
    ));

  test("an id that stands twice", async () =>
    await refused(
      withLine("trunk.tsv", newLine.replace("test-structure", "femur")),
      /femur stands already in limbs\.tsv, line \d+/,
    ));

  test("no files at all", async () => await refused([], /There is no vocabulary/));

  test("a structure that a specimen shows", async () => {
    await loadReference(url, withLine("limbs.tsv", newLine));
    const { id: specimenId } = await aSpecimen();
    await inWork(({ transaction }) =>
      transaction.shown.create({ data: { specimenId, ...aShown("test-structure") } }),
    );
    await refused(files, /specimens of this collection show: test-structure \(1\)/);
  });
});
