/** The vocabulary as it is searched, on the shipped files. */
import { beforeAll, describe, expect, test } from "vitest";
import {
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
});

/** As hurried hands write them: a letter wrong, missing, doubled, changed about, or the spelling of another language. */
const misspelt = [
  ["vegus", "vagus-nerve"],
  ["vagsu", "vagus-nerve"],
  ["avgus", "vagus-nerve"],
  ["nervus vaggus", "vagus-nerve"],
  ["hart", "heart"],
  ["hearrt", "heart"],
  ["brachal plexus", "brachial-plexus"],
  ["brachail plexsu", "brachial-plexus"],
  ["femoris artery", "femoral-artery"],
  ["radius artery", "radial-artery"],
  ["uper limb", "upper-limb"],
  ["kidny", "kidney"],
  ["scaitic nerve", "sciatic-nerve"],
  ["n. ischiaticus", "sciatic-nerve"],
  ["stomack", "stomach"],
  ["oesphagus", "oesophagus"],
  ["tracea", "trachea"],
  ["larinx", "larynx"],
  ["humerous", "humerus"],
  ["skapula", "scapula"],
  ["clavical", "clavicle"],
  ["patela", "patella"],
  ["tibea", "tibia"],
  ["medain nerve", "median-nerve"],
  ["ulner nerve", "ulnar-nerve"],
  ["aorata", "aorta"],
  ["dura matter", "dura-mater"],
  ["cerebelum", "cerebellum"],
  ["hipocampus", "hippocampus"],
  ["pitutary gland", "pituitary-gland"],
  ["thyriod gland", "thyroid-gland"],
  ["pancrease", "pancreas"],
  ["duodenem", "duodenum"],
  ["apendix", "vermiform-appendix"],
  ["galbladder", "gallbladder"],
  ["uretor", "ureter"],
  ["utrus", "uterus"],
  ["prostrate", "prostate"],
  ["diafram", "diaphragm"],
  ["gastrocnemeus", "gastrocnemius"],
  ["achiles tendon", "calcaneal-tendon"],
  ["trapazius", "trapezius"],
  ["medulla oblongota", "medulla-oblongata"],
  ["Hertz", "heart"],
  ["Nire", "kidney"],
  ["Ruckenmark", "spinal-cord"],
] as const;

describe("a misspelt word", () => {
  test.each(misspelt)("%j means %s, and is suggested first", async (text, id) => {
    expect((await first(text))?.id).toBe(id);
    const written = await meant(text);
    const forgiven = (await structuresMeantForgiving(lecturer, text)).map((one) => one.id);
    expect(written.length > 0 ? written : forgiven).toEqual([id]);
  });

  test("says that it is near a name", async () => {
    expect(await first("vegus")).toMatchObject({ id: "vagus-nerve", tier: "near name", name: "vagus" });
    expect(await first("brachail plexsu")).toMatchObject({ tier: "typing error" });
  });
});

describe("a German name", () => {
  test.each([
    ["Herz", "heart"],
    ["Niere", "kidney"],
    ["Nieren", "kidney"],
    ["Leber", "liver"],
    ["Gehirn", "brain"],
    ["Oberarm", "arm"],
    ["Oberarmknochen", "humerus"],
    ["Armgeflecht", "brachial-plexus"],
    ["obere Extremität", "upper-limb"],
    ["Schläfenbein", "temporal-bone"],
    ["Schlaefenbein", "temporal-bone"],
    ["SCHLÄFENBEIN", "temporal-bone"],
    ["Rückenmark", "spinal-cord"],
    ["Fuß", "foot"],
    ["Fuss", "foot"],
    ["großer Brustmuskel", "pectoralis-major"],
    ["Schenkelhals", "neck-of-femur"],
    ["Halsschlagader", "common-carotid-artery"],
    ["Körper der Bauchspeicheldrüse", "body-of-pancreas"],
    ["X. Hirnnerv", "vagus-nerve"],
    ["Zwerchfell", "diaphragm"],
  ])("%j means %s", async (text, id) => expect(await meant(text)).toEqual([id]));

  test("with a word of side means the structure without it", async () => {
    for (const text of ["linke Niere", "Niere links", "rechte Niere"])
      expect(
        (await structuresMeantForgiving(lecturer, text)).map(({ id }) => id),
        text,
      ).toEqual(["kidney"]);
  });

  test("does not take the place of an English or Latin one", async () => {
    for (const [text, id] of [
      ["arm", "arm"],
      ["hand", "hand"],
      ["crus", "leg"],
      ["liver", "liver"],
    ] as const)
      expect(await meant(text), text).toEqual([id]);
  });
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
