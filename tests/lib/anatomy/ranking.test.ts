import { describe, expect, test } from "vitest";
import { type Candidate, meantBy, rankCandidates } from "#lib/anatomy/ranking.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";

const name = (structureId: string, text: string, said: Partial<Candidate> = {}): Candidate => ({
  structureId,
  text,
  kind: "preferred",
  searchKey: searchKey(text),
  likeness: 0.4,
  animal: false,
  ...said,
});

const names = [
  name("thigh", "femur", { kind: "synonym" }),
  name("head-of-femur", "head of femur"),
  name("femur", "femur"),
  name("femur", "os femoris", { kind: "synonym" }),
  name("trapezium-bone", "trapezium"),
  name("trapezius", "trapezius"),
  name("vagus-nerve", "nervus vagus"),
  name("vagus-nerve", "X", { kind: "synonym" }),
  name("superior-ganglion-of-vagus-nerve", "superior ganglion of vagus nerve"),
];

const order = (text: string) =>
  rankCandidates(text, names, 20).map(({ row, tier }) => [row.structureId, tier]);

describe("the order of finds", () => {
  test("the preferred name comes before another's synonym, and a longer name behind", () =>
    expect(order("femur")).toEqual([
      ["femur", "preferred name"],
      ["thigh", "other name"],
      ["head-of-femur", "beginning"],
    ]));

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
    const alike = (likeness: number) => rankCandidates("zzzz", [name("femur", "femur", { likeness })], 5);
    expect(alike(0.49)).toEqual([]);
    expect(alike(0.5).map(({ tier }) => tier)).toEqual(["likeness"]);
  });

  test("an animal's structure comes behind a human one of the same rank", () => {
    const both = [name("rumen", "stomach pouch", { animal: true }), name("fundus", "stomach pouch")];
    expect(rankCandidates("stomach pouch", both, 5).map(({ row }) => row.structureId)).toEqual([
      "fundus",
      "rumen",
    ]);
  });

  test("no more come than were asked for, each structure once", () => {
    expect(rankCandidates("femur", names, 2)).toHaveLength(2);
    expect(new Set(order("femur").map(([id]) => id)).size).toBe(order("femur").length);
  });
});

describe("what a text means", () => {
  const meant = (text: string) => meantBy(rankCandidates(text, names, 20)).map(({ row }) => row.structureId);

  test("only the best tier", () => {
    expect(meant("femur")).toEqual(["femur"]);
    expect(meant("trapezius")).toEqual(["trapezius"]);
    expect(meant("trapez")).toEqual(["trapezius", "trapezium-bone"].sort());
  });

  test("of typing errors only the nearest", () => expect(meant("vagsu")).toEqual(["vagus-nerve"]));

  test("never mere likeness, and nothing for nothing", () => {
    expect(meantBy(rankCandidates("zzzz", [name("femur", "femur", { likeness: 0.9 })], 5))).toEqual([]);
    expect(meantBy([])).toEqual([]);
  });
});
