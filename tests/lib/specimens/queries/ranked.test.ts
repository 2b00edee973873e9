/** The order of the list: best answers first, the same by every way of looking, and each row says why it is there. */
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { Prisma } from "#.generated/prisma/client.ts";
import { database } from "#lib/platform/database.ts";
import { speaking, speakingOfEach, speakingOfItself, textCondition } from "#lib/specimens/conditions.ts";
import type { PageKey } from "#lib/specimens/filter.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { searchPatterns } from "#lib/specimens/search-text.ts";
import { leadsOn, type Way, walkStatement, wayStatement, waysInto } from "#lib/specimens/ways.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

const curator = aViewer("curator");
const grades = ["fully exposed", "partly exposed", "in section", "landmark only"] as const;

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
  // Recorded from the worst answer to the best, so that accession numbers alone would give the wrong order.
  for (const seen of [...grades].reverse())
    await aRecorded({ accessionNumber: `R ${grades.indexOf(seen)} part`, title: "Preparation" }, [
      aShown("left-ventricle", { seen }),
      aShown("femur", { seen: "fully exposed" }),
    ]);
  for (const seen of [...grades].reverse())
    await aRecorded({ accessionNumber: `R ${grades.indexOf(seen)} whole`, title: "Preparation" }, [
      aShown("heart", { seen }),
      aShown("right-atrium", { seen: "fully exposed" }),
    ]);
  await aRecorded({ accessionNumber: "Z 1", title: "Heart in a glass" }, ["femur"]);
  await aRecorded({ accessionNumber: "Z 2", title: "Heart and lungs" }, [
    aShown("heart", { seen: "landmark only" }),
  ]);
  await aRecorded({ accessionNumber: "A 1", title: "Heartwood for comparison" }, []);
  await aRecorded(
    {
      accessionNumber: "A 2",
      title: "Skull",
      formerNumbers: [{ number: "X 12", kind: "jar", markedOn: "" }],
    },
    [],
  );
  await aRecorded({ accessionNumber: "A 3", title: "Neck" }, ["vagus-nerve"]);
}, 120_000);

const list = async (
  filter: Parameters<typeof listSpecimens>[1],
  page: Parameters<typeof listSpecimens>[2] = {},
) => await listSpecimens(curator, filter, page);
const numbers = ({ rows }: { rows: { accessionNumber: string }[] }) => rows.map((row) => row.accessionNumber);

const best = [
  "Z 1",
  "Z 2",
  "R 0 whole",
  "R 1 whole",
  "R 2 whole",
  "R 3 whole",
  "R 0 part",
  "R 1 part",
  "R 2 part",
  "R 3 part",
  "A 1",
];

describe("the order", () => {
  test("is title first, then the structure itself, then its parts, each better seen first, then mere beginnings", async () => {
    expect(numbers(await list({ text: "heart" }))).toEqual(best);
  });

  test("is the same for a structure that was chosen, without the titles", async () => {
    expect(numbers(await list({ structureId: "heart" }))).toEqual([
      "R 0 whole",
      "R 1 whole",
      "R 2 whole",
      "R 3 whole",
      "Z 2",
      "R 0 part",
      "R 1 part",
      "R 2 part",
      "R 3 part",
    ]);
  });

  test("is that of the accession numbers where nothing is searched", async () => {
    const all = numbers(await list({}));
    expect(all).toEqual([...all].sort());
  });

  test("of a misspelt word puts the structure before titles that look like it", async () => {
    expect(numbers(await list({ text: "haert" })).slice(0, 2)).toEqual(["R 0 whole", "R 1 whole"]);
  });

  test("does not take a single letter of some number for the tenth cranial nerve", async () => {
    expect(numbers(await list({ text: "X" }))).toEqual(["A 3", "A 2"]);
  });
});

describe("each row says why it is there", () => {
  test("by its title, by what it shows, or by both", async () => {
    const { rows } = await list({ text: "heart" });
    const row = (number: string) => rows.find(({ accessionNumber }) => accessionNumber === number);
    expect(row("Z 1")).toMatchObject({ hit: { by: "title" }, shows: [] });
    expect(row("Z 2")).toMatchObject({
      hit: { by: "title" },
      shows: [{ id: "heart", seen: "landmark only" }],
    });
    expect(row("R 1 whole")).toMatchObject({
      hit: null,
      shows: [
        { id: "heart", seen: "partly exposed" },
        { id: "right-atrium", seen: "fully exposed" },
      ],
    });
    for (const { hit, shows } of rows) expect(hit !== null || shows.length > 0).toBe(true);
  });

  test("by the number that holds the text", async () => {
    const { rows } = await list({ text: "X" });
    expect(rows[1]).toMatchObject({
      accessionNumber: "A 2",
      hit: { by: "number", number: "X 12" },
      shows: [],
    });
    expect((await list({ text: "A 3" })).rows[0]?.hit).toEqual({ by: "number", number: "A 3" });
  });

  test("by the larger whole that it shows, where the structure is only implied", async () => {
    await aRecorded({ accessionNumber: "B 1", kind: "body region", title: "Thigh" }, ["thigh"]);
    const { rows } = await list({ structureId: "sartorius", evidence: "implied" });
    expect(rows).toMatchObject([{ accessionNumber: "B 1", shows: [{ id: "thigh" }], hit: null }]);
  });
});

describe("pages", () => {
  test("of any size, forwards and back, lose nothing and repeat nothing", async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 12 }), async (size) => {
        const pages = [await list({ text: "heart" }, { size })];
        for (let next = pages[0]?.next; next; next = pages.at(-1)?.next)
          pages.push(await list({ text: "heart" }, { size, after: next }));
        expect(pages.flatMap(numbers)).toEqual(best);
        for (let at = pages.length - 1; at > 0; at -= 1) {
          const before = await list({ text: "heart" }, { size, before: pages[at]?.previous ?? "" });
          expect(numbers(before)).toEqual(numbers(pages[at - 1] ?? { rows: [] }));
        }
        expect(pages[0]?.previous).toBeNull();
      }),
      { numRuns: 8 },
    );
  });

  test("are the same by a walk along the specimens as gathered", async () => {
    type Row = PageKey & { accessionNumber: string };
    const ids = ["heart"];
    const spoken = (often: boolean) => ({
      itself: speakingOfItself(ids),
      itselfOften: often,
      all: speaking(ids, "recorded"),
      each: speakingOfEach(ids),
      often,
    });
    const text = { well: textCondition(searchPatterns("heart", "whole words")), barely: null };
    const read = async (ways: readonly Way[], walks: boolean, backwards: boolean, size: number) => {
      const found: Row[] = [];
      let key: PageKey | null = null;
      for (;;) {
        const rows: Row[] = [];
        for (const way of backwards ? [...ways].reverse() : ways) {
          if (rows.length === size || !leadsOn(way, key, backwards)) continue;
          const part = { key, backwards, limit: size - rows.length };
          const walk = walks ? walkStatement(way, [Prisma.sql`TRUE`], part) : null;
          const walked = walk ? await database().$queryRaw<Row[]>(walk) : [];
          rows.push(
            ...(walked.length === part.limit
              ? walked
              : await database().$queryRaw<Row[]>(wayStatement(way, [Prisma.sql`TRUE`], part))),
          );
        }
        found.push(...rows);
        key = rows.at(-1) ?? null;
        if (rows.length < size) return found.map((row) => [row.rank, row.accessionNumber]);
      }
    };
    const gathered = await read(waysInto(text, spoken(false)), false, false, 100);
    expect(gathered.map(([, number]) => number)).toEqual(best.slice(0, -1));
    for (const size of [1, 2, 3, 5])
      for (const backwards of [false, true]) {
        const walked = await read(waysInto(text, spoken(true)), true, backwards, size);
        expect(backwards ? walked.reverse() : walked).toEqual(gathered);
      }
  });
});
