/** The vocabulary as it is searched, on the shipped files. */
import { beforeAll, describe, expect, test } from "vitest";
import {
  descendantsOf,
  getStructure,
  listRegionsAndSystems,
  searchStructures,
  structureLabels,
  structuresMeant,
  structuresMeantForgiving,
} from "#lib/anatomy/queries.ts";
import { database } from "#lib/platform/database.ts";
import { aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const lecturer = aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa");

beforeAll(async () => {
  await testDatabase("vocabularies");
}, 120_000);

const first = async (text: string) => (await searchStructures(lecturer, text, 5))[0];
const meant = async (text: string) => (await structuresMeant(lecturer, text)).map(({ id }) => id);

describe("the first find", () => {
  test.each([
    ["vagus", "vagus-nerve"],
    ["nervus vagus", "vagus-nerve"],
    ["n. vagus", "vagus-nerve"],
    ["X", "vagus-nerve"],
    ["CN X", "vagus-nerve"],
    ["tenth cranial nerve", "vagus-nerve"],
    ["nervus vagus [X]", "vagus-nerve"],
    ["n medianus", "median-nerve"],
    ["upper limb", "upper-limb"],
    ["membrum superius", "upper-limb"],
    ["esophagus", "oesophagus"],
    ["brachial plexus", "brachial-plexus"],
    ["plexus brachialis", "brachial-plexus"],
    ["femur", "femur"],
    ["left kidney", "kidney"],
    ["a. thyr. sup.", "superior-thyroid-artery"],
    ["sciatic nerv", "sciatic-nerve"],
  ])("of %j is %s", async (text, id) => expect((await first(text))?.id).toBe(id));

  test.each([
    ["vagsu", "vagus-nerve"],
    ["avgus", "vagus-nerve"],
    ["nervus vaggus", "vagus-nerve"],
    ["brachal plexus", "brachial-plexus"],
    ["brachail plexsu", "brachial-plexus"],
    ["uper limb", "upper-limb"],
    ["kidny", "kidney"],
    ["scaitic nerve", "sciatic-nerve"],
    ["stomack", "stomach"],
    ["hearrt", "heart"],
  ])("of the typing error %j is %s", async (text, id) =>
    expect(await first(text)).toMatchObject({ id, tier: "typing error" }),
  );
});

describe("suggestions", () => {
  test("say by which name and how they were found", async () => {
    expect(await first("X")).toMatchObject({
      english: "vagus nerve",
      latin: "nervus vagus",
      name: "X",
      tier: "other name",
      kind: "structure",
    });
  });

  test("come from the beginnings of words, each structure once", async () => {
    const found = await searchStructures(lecturer, "brach art", 20);
    expect(found[0]?.id).toBe("brachial-artery");
    expect(new Set(found.map(({ id }) => id)).size).toBe(found.length);
  });

  test("are no more than asked for", async () => {
    expect(await searchStructures(lecturer, "nerve", 7)).toHaveLength(7);
    expect((await searchStructures(lecturer, "nerve", 100_000)).length).toBeLessThanOrEqual(100);
    expect(await searchStructures(lecturer, "nerve", -1)).toHaveLength(1);
  });

  test("offer a typing error beside few beginnings", async () => {
    expect((await searchStructures(lecturer, "hart", 5)).map(({ id }) => id)).toContain("heart");
  });

  test.each([
    "",
    "   ",
    "…",
    "%",
    "_",
    "xyzzy qwerty",
    "constructor",
    "\u0000",
    "\ud800",
    "'; DROP TABLE structure; --",
    "[[[((",
    "\\m(",
    "x".repeat(5_000),
  ])("nothing breaks on %j", async (text) =>
    expect(await searchStructures(lecturer, text)).toBeInstanceOf(Array),
  );
});

describe("what a text means", () => {
  test("is one structure where one has the name", async () => {
    expect(await meant("upper limb")).toEqual(["upper-limb"]);
    expect(await meant("femur")).toEqual(["femur"]);
  });

  test("is every structure whose name begins so, where none has it", async () => {
    expect(await meant("ischiadicus")).toContain("sciatic-nerve");
  });

  test("is nothing for a mistyped name, unless forgiven", async () => {
    expect(await meant("vagsu")).toEqual([]);
    expect((await structuresMeantForgiving(lecturer, "vagsu")).map(({ id }) => id)).toEqual(["vagus-nerve"]);
    expect(await structuresMeantForgiving(lecturer, "xyzzy qwerty")).toEqual([]);
  });
});

describe("one structure", () => {
  test("comes with its names and nearest relations", async () => {
    const vagus = await getStructure(lecturer, "vagus-nerve");
    expect(vagus.names.slice(0, 2)).toEqual([
      { language: "en", text: "vagus nerve", kind: "preferred" },
      { language: "la", text: "nervus vagus", kind: "preferred" },
    ]);
    expect(vagus.parents).toContainEqual({
      id: "cranial-nerve",
      english: "cranial nerve",
      latin: "nervus cranialis",
      kind: "class",
      relation: "is-a",
    });
    expect(vagus.parents.filter(({ relation }) => relation === "in-region").map(({ id }) => id)).toContain(
      "neck",
    );
    expect(vagus.children.map(({ id }) => id)).toContain("recurrent-laryngeal-nerve");
  });

  test.each(["no-such-thing", "", "a\u0000b", "x".repeat(500)])("%j is not found", async (id) =>
    expect(getStructure(lecturer, id)).rejects.toMatchObject({ kind: "not-found" }),
  );
});

test("what follows from a structure by any way, itself included", async () => {
  const below = await descendantsOf(database(), ["upper-limb"]);
  expect(below).toEqual(
    expect.arrayContaining(["upper-limb", "brachial-plexus", "median-nerve", "hand", "humerus"]),
  );
  expect(below).not.toContain("femur");
});

test("labels are given for known ids only", async () => {
  const labels = await structureLabels(database(), ["femur", "no-such-thing", "femur"]);
  expect([...labels.keys()]).toEqual(["femur"]);
});

test("regions and systems are listed for filters", async () => {
  const list = await listRegionsAndSystems(lecturer);
  expect(list.filter(({ kind }) => kind === "region").length).toBeGreaterThan(30);
  expect(list.filter(({ kind }) => kind === "system").map(({ id }) => id)).toContain("nervous-system");
});

test("the application's role cannot change the vocabulary", async () => {
  await expect(
    database().structure.create({
      data: { id: "x", english: "x", latin: "x", kind: "structure", paired: false },
    }),
  ).rejects.toThrow(/permission denied/);
});
