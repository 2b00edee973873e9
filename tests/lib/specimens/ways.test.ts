/** Which ways lead into a list, in which order, and what stands in their statements. */
import { describe, expect, test } from "vitest";
import { Prisma } from "#.generated/prisma/client.ts";
import {
  leadsOn,
  plainWay,
  type Spoken,
  walkStatement,
  wayStatement,
  waysInto,
} from "#lib/specimens/ways.ts";

const sql = (text: string) => Prisma.raw(text);
const spoken: Spoken = {
  itself: sql("itself"),
  itselfOften: false,
  all: sql("everything"),
  each: sql("each"),
  often: false,
};
const nothing = { well: null, barely: null };
const page = { key: null, backwards: false, limit: 41 };
const id = "01920000-0000-7000-8000-0000000000aa";
const ranksOf = (ways: ReturnType<typeof waysInto>) => ways.map(({ ranks }) => ranks);

describe("the ways", () => {
  test("go from the specimen's own words over the structure to mere beginnings", () => {
    expect(ranksOf(waysInto({ well: sql("well"), barely: sql("barely") }, spoken))).toEqual([
      [0, 0],
      [1, 8],
      [9, 9],
    ]);
    expect(ranksOf(waysInto(nothing, { ...spoken, often: true }))).toEqual([
      [1, 4],
      [5, 8],
    ]);
    expect(waysInto(nothing, null)).toEqual([]);
  });

  test("each leave out what came before", () => {
    const [own, structure, begun] = waysInto({ well: sql("well"), barely: sql("barely") }, spoken);
    expect(own?.where.sql).toBe("well");
    expect(structure?.where.sql).toContain("NOT well");
    expect(begun?.where.sql).toContain("NOT well");
    expect(begun?.where.sql).toContain("everything");
    const [, below] = waysInto(nothing, { ...spoken, often: true });
    expect(below?.where.sql).toContain("itself");
  });

  test("are walked only where very many rows speak of the structure", () => {
    const walked = (said: Partial<Spoken>) =>
      waysInto(nothing, { ...spoken, ...said }).map((way) => walkStatement(way, [], page) !== null);
    expect(walked({})).toEqual([false]);
    expect(walked({ often: true })).toEqual([false, true]);
    expect(walked({ often: true, itselfOften: true })).toEqual([true, true]);
  });
});

describe("behind a key", () => {
  const key = (rank: number) => ({ rank, accessionNumber: "x'; DROP TABLE specimen; --", id });
  const [below] = waysInto(nothing, { ...spoken, often: true }).slice(1);
  if (!below) throw new Error("There is a way to what follows from a structure.");

  test("only ways of its rank and of later ones lead on, backwards only earlier ones", () => {
    const forwards = (rank: number) => leadsOn(below, key(rank), false);
    expect([4, 5, 8, 9].map(forwards)).toEqual([true, true, true, false]);
    const backwards = (rank: number) => leadsOn(below, key(rank), true);
    expect([4, 5, 8, 9].map(backwards)).toEqual([false, true, true, true]);
    expect(leadsOn(below, null, false)).toBe(true);
  });

  test("the key stands beside the statement", () => {
    for (const statement of [
      wayStatement(below, [], { ...page, key: key(6) }),
      wayStatement(plainWay(sql("TRUE")), [], { ...page, key: key(0) }),
      walkStatement(below, [], { ...page, key: key(6) }),
    ]) {
      expect(statement?.sql).not.toContain("DROP");
      expect(statement?.values).toContain("x'; DROP TABLE specimen; --");
    }
  });

  test("a walk goes on in the rank of the key, else begins with the nearest rank of its way", () => {
    const rank = (part: object) => walkStatement(below, [], { ...page, ...part })?.values[0];
    expect(rank({ key: key(6) })).toBe(6);
    expect(rank({ key: key(2) })).toBe(5);
    expect(rank({ key: key(9), backwards: true })).toBe(8);
    expect(rank({ backwards: true })).toBe(8);
  });

  test("a walk is as long as is sensible for what is wanted", () => {
    const longest = (limit: number) => walkStatement(below, [], { ...page, limit })?.values.slice(1, 2);
    expect(longest(41)).toEqual([4_100]);
    expect(longest(201)).toEqual([10_000]);
  });
});
