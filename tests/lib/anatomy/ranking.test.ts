import { describe, expect, test } from "vitest";
import { type Candidate, indexNames, readTyped } from "#lib/anatomy/name-index.ts";
import { isLiteral, isSure, meantBy, rankNames } from "#lib/anatomy/ranking.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";

const name = (structureId: string, text: string, said: Partial<Candidate> = {}): Candidate => ({
  structureId,
  text,
  kind: "preferred",
  searchKey: searchKey(text),
  animal: false,
  ...said,
});

const names = [
  name("thigh", "femur", { kind: "synonym" }),
  name("head-of-femur", "head of femur"),
  name("femur", "femur"),
  name("femur", "os femoris", { kind: "synonym" }),
  name("femoral-artery", "femoral artery"),
  name("deep-artery-of-thigh", "arteria profunda femoris"),
  name("trapezium-bone", "trapezium"),
  name("trapezius", "trapezius"),
  name("vagus-nerve", "nervus vagus"),
  name("vagus-nerve", "X", { kind: "synonym" }),
  name("superior-ganglion-of-vagus-nerve", "superior ganglion of vagus nerve"),
];

const rank = (text: string, among: readonly Candidate[] = names, limit = 20) =>
  rankNames(readTyped(text), indexNames(among).all, limit);
const order = (text: string) => rank(text).map(({ row, tier }) => [row.structureId, tier]);

describe("the order of finds", () => {
  test("the preferred name comes before another's synonym, and a longer name behind", () =>
    expect(order("femur")).toEqual([
      ["femur", "preferred name"],
      ["thigh", "other name"],
      ["head-of-femur", "beginning"],
      ["deep-artery-of-thigh", "typing error"],
    ]));

  test("a noun comes to the name that has its adjective", () =>
    expect(order("femoris artery").slice(0, 2)).toEqual([
      ["femoral-artery", "other form"],
      ["deep-artery-of-thigh", "loose beginning"],
    ]));

  test("a whole name with one slip comes before the beginning of a longer name", () => {
    const hart = [
      name("gallbladder-neck", "Hartmann pouch"),
      name("heart", "heart"),
      name("hard", "harter Gaumen"),
    ];
    expect(rank("hart", hart).map(({ row, tier }) => [row.structureId, tier])).toEqual([
      ["heart", "near name"],
      ["hard", "loose beginning"],
      ["gallbladder-neck", "loose beginning"],
    ]);
  });

  test("a whole word of a longer name, in any ending, comes before a whole name with a slip", () => {
    const both = [name("median-nerve", "nervus medianus"), name("other", "medianum", { kind: "synonym" })];
    expect(rank("mediani", [both[0] as Candidate, name("near", "medianix")])[0]?.tier).toBe("beginning");
    expect(rank("mediani", both)[0]?.tier).toBe("other ending");
  });

  test("the same words come before the same stem", () =>
    expect(order("trapezius")).toEqual([
      ["trapezius", "preferred name"],
      ["trapezium-bone", "other ending"],
    ]));

  test("the number of a cranial nerve is one of its names", () =>
    expect(order("CN X")).toEqual([["vagus-nerve", "other name"]]));

  test("a typing error finds the name with the fewest strange words first", () =>
    expect(order("vagsu")).toEqual([
      ["vagus-nerve", "typing error"],
      ["superior-ganglion-of-vagus-nerve", "typing error"],
    ]));

  test("mere likeness counts only when it is strong", () => {
    const alike = (text: string) => rank(text, [name("carpal-tunnel", "carpal tunnel syndrome")]);
    expect(alike("carpal tunnel release").map(({ tier }) => tier)).toEqual(["likeness"]);
    expect(alike("cubital release")).toEqual([]);
  });

  test("an animal's structure comes behind a human one of the same rank", () => {
    const both = [name("rumen", "stomach pouch", { animal: true }), name("fundus", "stomach pouch")];
    expect(rank("stomach pouch", both).map(({ row }) => row.structureId)).toEqual(["fundus", "rumen"]);
  });

  test("no more come than were asked for, each structure once", () => {
    expect(rank("femur", names, 2)).toHaveLength(2);
    expect(new Set(order("femur").map(([id]) => id)).size).toBe(order("femur").length);
  });
});

describe("what a text means", () => {
  const meant = (text: string) => meantBy(rank(text)).map(({ row }) => row.structureId);

  test("only the best tier", () => {
    expect(meant("femur")).toEqual(["femur"]);
    expect(meant("trapezius")).toEqual(["trapezius"]);
    expect(meant("trapez")).toEqual(["trapezius", "trapezium-bone"].sort());
  });

  test("of typing errors only the nearest", () => expect(meant("vagsu")).toEqual(["vagus-nerve"]));

  test("of two names with one slip the preferred one, and the human one", () => {
    const both = [name("tail", "kidnei", { kind: "synonym" }), name("kidney", "kidney")];
    expect(meantBy(rank("kidny", both)).map(({ row }) => row.structureId)).toEqual(["kidney"]);
    const animals = [name("hoof", "sole", { animal: true }), name("foot", "solo")];
    expect(meantBy(rank("solx", animals)).map(({ row }) => row.structureId)).toEqual(["foot"]);
  });

  test("never mere likeness, and nothing for nothing", () => {
    const alike = rank("carpal tunnel release", [name("carpal-tunnel", "carpal tunnel syndrome")]);
    expect(alike).toHaveLength(1);
    expect(isSure(alike)).toBe(false);
    expect(meantBy(alike)).toEqual([]);
    expect(meantBy([])).toEqual([]);
  });

  test("a slip of the hand is not literal, an ending is", () => {
    expect(rank("vagsu").some(isLiteral)).toBe(false);
    expect(rank("nervi vagi").some(isLiteral)).toBe(true);
  });
});
