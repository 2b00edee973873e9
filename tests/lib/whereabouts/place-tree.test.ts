import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { idsInside, inTreeOrder, type TreePlace, totalsInside } from "#lib/whereabouts/place-tree.ts";

const place = (id: string, parentId: string | null = null, code = id): TreePlace => ({
  id,
  code,
  name: `Place ${id}`,
  parentId,
});
const house = [
  place("bay-10", "dry", "H-DRY.10"),
  place("wet", "house", "H-WET"),
  place("bay-2", "dry", "H-DRY.2"),
  place("house", null, "H"),
  place("dry", "house", "H-DRY"),
  place("annexe", null, "A"),
];

describe("the tree", () => {
  test("puts a place before what lies in it, and counts in codes as people count", () => {
    expect(inTreeOrder(house).map(({ id, depth }) => [id, depth])).toEqual([
      ["annexe", 0],
      ["house", 0],
      ["dry", 1],
      ["bay-2", 2],
      ["bay-10", 2],
      ["wet", 1],
    ]);
  });

  test("says what each place lies in, the largest first", () => {
    expect(inTreeOrder(house).find(({ id }) => id === "bay-2")?.within).toEqual(["Place house", "Place dry"]);
  });

  test("loses nothing whose larger place is not there, or that lies in itself", () => {
    const odd = [place("a", "gone"), place("b", "c"), place("c", "b"), place("d", "d")];
    expect(inTreeOrder(odd).map(({ id }) => id)).toEqual(["a", "b", "c", "d"]);
  });

  const trees = fc
    .array(fc.option(fc.nat(30), { nil: null }), { maxLength: 30 })
    .map((parents) => parents.map((parent, at) => place(`p${at}`, parent === null ? null : `p${parent}`)));

  test("holds every place once, whatever the rows say", () => {
    fc.assert(
      fc.property(trees, (places) => {
        const ids = inTreeOrder(places).map(({ id }) => id);
        expect([...ids].sort()).toEqual(places.map(({ id }) => id).sort());
      }),
    );
  });

  test("has one depth between a place and what lies directly in it", () => {
    const grown = fc
      .array(fc.nat(), { maxLength: 30 })
      .map((parents) => parents.map((parent, at) => place(`p${at}`, at === 0 ? null : `p${parent % at}`)));
    fc.assert(
      fc.property(grown, (places) => {
        const ordered = inTreeOrder(places);
        const depthOf = new Map(ordered.map(({ id, depth }) => [id, depth]));
        for (const { parentId, depth } of ordered)
          expect(depth).toBe(parentId === null ? 0 : (depthOf.get(parentId) ?? Number.NaN) + 1);
        const hereOf = new Map(places.map(({ id }, at) => [id, at]));
        const totals = totalsInside(places, hereOf);
        for (const { id } of places) {
          const sum = [...idsInside(places, id)].reduce((all, inner) => all + (hereOf.get(inner) ?? 0), 0);
          expect(totals.get(id)).toBe(sum);
        }
      }),
    );
  });
});

test("what lies inside a place is the place itself and everything below it", () => {
  expect([...idsInside(house, "dry")].sort()).toEqual(["bay-10", "bay-2", "dry"]);
  expect([...idsInside(house, "annexe")]).toEqual(["annexe"]);
});

test("what stands inside a place is counted with what stands at it", () => {
  const totals = totalsInside(
    house,
    new Map([
      ["house", 1],
      ["bay-2", 3],
      ["bay-10", 4],
    ]),
  );
  expect(Object.fromEntries(totals)).toEqual({
    annexe: 0,
    house: 8,
    dry: 7,
    "bay-2": 3,
    "bay-10": 4,
    wet: 0,
  });
});
