/**
 * The shipped vocabulary itself: large enough, whole, without rings, and giving
 * the answers an anatomist gives. The pairs of structure and region are school
 * anatomy, from memory; each region is asked for what lies in it and for what
 * lies only beside it.
 */
import { describe, expect, test } from "vitest";
import { findRing } from "#lib/anatomy/closure.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";
import { readVocabulary, tablesOf } from "#lib/anatomy/vocabulary.ts";
import { readVocabularyFiles } from "#seed/reference.ts";

const { rows, problems } = readVocabulary(readVocabularyFiles());
const tables = tablesOf(rows);
const byId = new Map(rows.map((row) => [row.id, row]));
const under = new Set(
  tables.ancestors.map(({ ancestorId, descendantId }) => `${descendantId}/${ancestorId}`),
);

test("the files have no problem: no unknown id, no id twice, none without region or system", () =>
  expect(problems).toEqual([]));

test("there are at least 1,200 human structures beside regions, systems, classes and animals", () => {
  const human = rows.filter(({ kind, animal }) => kind === "structure" && !animal);
  expect(human.length).toBeGreaterThanOrEqual(1_200);
  expect(rows.filter(({ animal }) => animal).length).toBeGreaterThanOrEqual(100);
});

test("the relations form no ring", () => expect(findRing(rows)).toBeNull());

test("every structure lies in the body", () => {
  for (const { id } of rows) expect(under.has(`${id}/body`), id).toBe(true);
});

test("every preferred English name is one structure's only", () => {
  const names = rows.map(({ english }) => english.toLowerCase());
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
});

test("nearly every human structure has a Latin name, and no two human structures the same", () => {
  const human = rows.filter(({ kind, animal }) => kind === "structure" && !animal);
  const latin = human.map((row) => row.latin).filter((name) => name !== "");
  expect(latin.length / human.length).toBeGreaterThan(0.97);
  expect(latin.filter((name, index) => latin.indexOf(name) !== index)).toEqual([]);
});

test("each name has a key", () => expect(tables.names.filter((name) => name.searchKey === "")).toEqual([]));

describe("what a region implies", () => {
  test.each([
    ["brachial-plexus", "upper-limb"],
    ["musculocutaneous-nerve", "upper-limb"],
    ["brachial-artery", "upper-limb"],
    ["radial-artery", "forearm"],
    ["deltoid", "shoulder"],
    ["serratus-anterior", "thorax"],
    ["median-nerve", "hand"],
    ["median-nerve", "arm"],
    ["sciatic-nerve", "lower-limb"],
    ["sciatic-nerve", "gluteal-region"],
    ["obturator-nerve", "thigh"],
    ["femoral-artery", "thigh"],
    ["popliteal-artery", "knee"],
    ["sartorius", "lower-limb"],
    ["tibia", "leg"],
    ["calcaneus", "foot"],
    ["trachea", "thorax"],
    ["trachea", "neck"],
    ["thymus", "mediastinum"],
    ["azygos-vein", "thorax"],
    ["phrenic-nerve", "thorax"],
    ["thoracic-duct", "thorax"],
    ["vagus-nerve", "neck"],
    ["vagus-nerve", "abdomen"],
    ["stomach", "abdomen"],
    ["pancreas", "abdomen"],
    ["abdominal-aorta", "abdomen"],
    ["hepatic-portal-vein", "abdomen"],
    ["urinary-bladder", "pelvis"],
    ["rectum", "pelvis"],
    ["uterus", "trunk"],
    ["prostate", "pelvis"],
    ["brain", "head"],
    ["tongue", "head"],
    ["temporal-bone", "head"],
    ["thyroid-gland", "neck"],
    ["larynx", "neck"],
    ["hyoid-bone", "neck"],
    ["heart", "mediastinum"],
    ["kidney", "retroperitoneum"],
  ])("%s lies in %s", (structure, region) => {
    expect(byId.has(structure), structure).toBe(true);
    expect(under.has(`${structure}/${region}`)).toBe(true);
  });

  test.each([
    ["brachial-plexus", "lower-limb"],
    ["brachial-artery", "forearm"],
    ["radial-artery", "thigh"],
    ["deltoid", "forearm"],
    ["median-nerve", "trunk"],
    ["sciatic-nerve", "upper-limb"],
    ["femoral-artery", "foot"],
    ["popliteal-artery", "foot"],
    ["sartorius", "foot"],
    ["tibia", "thigh"],
    ["calcaneus", "hand"],
    ["trachea", "abdomen"],
    ["thymus", "pelvis"],
    ["azygos-vein", "neck"],
    ["phrenic-nerve", "pelvis"],
    ["vagus-nerve", "upper-limb"],
    ["vagus-nerve", "lower-limb"],
    ["stomach", "thorax"],
    ["pancreas", "pelvis"],
    ["abdominal-aorta", "thorax"],
    ["hepatic-portal-vein", "pelvis"],
    ["urinary-bladder", "thorax"],
    ["rectum", "lower-limb"],
    ["prostate", "lower-limb"],
    ["brain", "neck"],
    ["tongue", "thorax"],
    ["temporal-bone", "trunk"],
    ["thyroid-gland", "head"],
    ["larynx", "thorax"],
    ["hyoid-bone", "trunk"],
    ["heart", "abdomen"],
    ["kidney", "thorax"],
    ["recurrent-laryngeal-nerve", "abdomen"],
    ["hand", "lower-limb"],
  ])("%s does not lie in %s", (structure, region) => {
    expect(byId.has(structure), structure).toBe(true);
    expect(under.has(`${structure}/${region}`)).toBe(false);
  });
});

describe("what a whole, a kind and a system imply", () => {
  test.each([
    ["recurrent-laryngeal-nerve", "vagus-nerve"],
    ["vagus-nerve", "cranial-nerve"],
    ["vagus-nerve", "nerve"],
    ["vagus-nerve", "peripheral-nervous-system"],
    ["vagus-nerve", "nervous-system"],
    ["femoral-artery", "artery"],
    ["femoral-artery", "cardiovascular-system"],
    ["tibia", "bone"],
    ["deltoid", "muscle"],
    ["head-of-femur", "femur"],
    ["left-ventricle", "heart"],
  ])("%s lies under %s", (structure, above) => {
    expect(byId.has(structure), structure).toBe(true);
    expect(under.has(`${structure}/${above}`)).toBe(true);
  });

  test.each([
    ["vagus-nerve", "recurrent-laryngeal-nerve"],
    ["vagus-nerve", "spinal-nerve"],
    ["femur", "head-of-femur"],
    ["tibia", "muscle"],
    ["femoral-artery", "vein"],
  ])("%s does not lie under %s", (structure, above) =>
    expect(under.has(`${structure}/${above}`)).toBe(false),
  );
});

test("each cranial nerve answers to its number and to nobody else's", () => {
  const nerves = [
    "olfactory-nerve",
    "optic-nerve",
    "oculomotor-nerve",
    "trochlear-nerve",
    "trigeminal-nerve",
    "abducent-nerve",
    "facial-nerve",
    "vestibulocochlear-nerve",
    "glossopharyngeal-nerve",
    "vagus-nerve",
    "accessory-nerve",
    "hypoglossal-nerve",
  ];
  for (const [index, nerve] of nerves.entries()) {
    const found = new Set(
      tables.names.filter((name) => name.searchKey === `cn${index + 1}`).map((name) => name.structureId),
    );
    expect([...found]).toEqual([nerve]);
  }
});

test("a Latin name is found by its abbreviation", () => {
  const found = (text: string) =>
    new Set(
      tables.names.filter((name) => name.searchKey === searchKey(text)).map((name) => name.structureId),
    );
  expect([...found("n. medianus")]).toEqual(["median-nerve"]);
  expect([...found("m. deltoideus")]).toEqual(["deltoid"]);
  expect([...found("a. femoralis")]).toEqual(["femoral-artery"]);
  expect([...found("lig. cruciatum ant.")]).toEqual(["anterior-cruciate-ligament"]);
});

describe("German names", () => {
  const german = tables.names.filter(({ language }) => language === "de");
  const preferred = german.filter(({ kind }) => kind === "preferred");

  test("stand for what is most often asked", () => {
    expect(preferred.length).toBeGreaterThanOrEqual(800);
    for (const id of [
      "heart",
      "kidney",
      "brain",
      "arm",
      "liver",
      "brachial-plexus",
      "femur",
      "skull",
      "lung",
    ])
      expect(
        preferred.some(({ structureId }) => structureId === id),
        id,
      ).toBe(true);
    const regions = rows.filter(({ kind }) => kind === "region").map(({ id }) => id);
    expect(regions.filter((id) => !preferred.some(({ structureId }) => structureId === id))).toEqual([]);
  });

  test("no preferred one is a name of something else", () => {
    const others = new Map<string, Set<string>>();
    for (const { text, structureId } of tables.names) {
      const once = text.toLowerCase();
      others.set(once, (others.get(once) ?? new Set()).add(structureId));
    }
    expect(
      preferred.map(({ text }) => text).filter((text) => (others.get(text.toLowerCase())?.size ?? 0) > 1),
    ).toEqual([]);
  });
});
