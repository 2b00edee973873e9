import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keptTogether, paginate, type Strip, withoutWidows } from "#lib/papers/strips.ts";

/** Strips are told apart by the place of the rule on them. */
const strip = (name: number, said: Partial<Strip> = {}): Strip => ({
  heightPt: 10,
  gapPt: 0,
  keepWithNext: false,
  items: [{ kind: "rule", xPt: name, toXPt: name, yPt: 0, weightPt: 1, ink: "ink" }],
  ...said,
});
const some = (count: number, said: Partial<Strip> = {}) =>
  Array.from({ length: count }, (_none, index) => strip(index + 1, said));
const nameOf = ({ items: [item] }: Strip) => item?.xPt ?? 0;
const pagesOf = (strips: readonly Strip[], bodyPt: number) =>
  paginate(strips, bodyPt).map((page) => page.map((placed) => nameOf(placed.strip)));

describe("pages", () => {
  test("are filled in order", () => {
    expect(pagesOf(some(5), 20)).toEqual([[1, 2], [3, 4], [5]]);
  });
  test("are one where there is nothing to print", () => {
    expect(pagesOf([], 20)).toEqual([[]]);
  });
  test("begin without the space before their first strip", () => {
    const placed = paginate(some(3, { gapPt: 5 }), 25);
    expect(placed.map((page) => page.map(({ topPt }) => topPt))).toEqual([[0, 15], [0]]);
  });
  test("begin where a break says so, once", () => {
    expect(pagesOf([strip(1), strip(2, { startsPage: true }), strip(3)], 100)).toEqual([[1], [2, 3]]);
    expect(pagesOf([strip(1, { startsPage: true }), strip(2)], 100)).toEqual([[1, 2]]);
  });
  test("begin with a table's header where they begin with its row", () => {
    const header = [strip(90)];
    expect(pagesOf([strip(90), ...some(5, { header })], 30)).toEqual([
      [90, 1, 2],
      [90, 3, 4],
      [90, 5],
    ]);
  });
  test("hold no line that is taller than they are", () => {
    expect(() => paginate([strip(1, { heightPt: 31 })], 30)).toThrow(RangeError);
  });
});

describe("what is kept together", () => {
  test("moves to the next page as one", () => {
    expect(pagesOf([strip(1), strip(2), ...keptTogether([strip(3), strip(4)])], 30)).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
  test("goes on where it is taller than a page", () => {
    expect(pagesOf([strip(9), ...keptTogether(some(5))], 30)).toEqual([[9], [1, 2, 3], [4, 5]]);
  });
  test("keeps a heading with what it heads", () => {
    expect(pagesOf([...some(2), strip(8, { keepWithNext: true }), strip(9)], 30)).toEqual([
      [1, 2],
      [8, 9],
    ]);
  });
});

test("a paragraph leaves neither its first nor its last line alone", () => {
  const four = withoutWidows(some(4));
  expect(pagesOf([strip(9), ...four], 20)).toEqual([[9], [1, 2], [3, 4]]);
  expect(pagesOf(four, 30)).toEqual([
    [1, 2],
    [3, 4],
  ]);
  const three = withoutWidows(some(3));
  expect(pagesOf([strip(9), ...three], 30)).toEqual([[9], [1, 2, 3]]);
});

const anyStrips = fc
  .array(
    fc.record({
      heightPt: fc.integer({ min: 1, max: 30 }),
      gapPt: fc.integer({ min: 0, max: 12 }),
      keepWithNext: fc.boolean(),
      startsPage: fc.boolean(),
      hasHeader: fc.boolean(),
    }),
    { maxLength: 60 },
  )
  .map((said) =>
    said.map(({ hasHeader, ...rest }, index) =>
      strip(index + 1, { ...rest, ...(hasHeader ? { header: [strip(-1, { heightPt: 8 })] } : {}) }),
    ),
  );

test("every strip stands on exactly one page, in order", () => {
  fc.assert(
    fc.property(anyStrips, fc.integer({ min: 50, max: 120 }), (strips, bodyPt) => {
      const names = pagesOf(strips, bodyPt)
        .flat()
        .filter((name) => name > 0);
      expect(names).toEqual(strips.map(nameOf));
    }),
  );
});

test("no strip stands below the end of its page or on another", () => {
  fc.assert(
    fc.property(anyStrips, fc.integer({ min: 50, max: 120 }), (strips, bodyPt) => {
      for (const page of paginate(strips, bodyPt)) {
        let endPt = 0;
        for (const { strip: placed, topPt } of page) {
          expect(topPt).toBeGreaterThanOrEqual(endPt);
          endPt = topPt + placed.heightPt;
        }
        expect(endPt).toBeLessThanOrEqual(bodyPt);
      }
    }),
  );
});

test("only what is taller than a page is divided", () => {
  fc.assert(
    fc.property(anyStrips, fc.integer({ min: 50, max: 120 }), (strips, bodyPt) => {
      const pages = pagesOf(strips, bodyPt);
      const pageOf = (name: number) => pages.findIndex((page) => page.includes(name));
      let first = 0;
      strips.forEach((current, index) => {
        const next = strips[index + 1];
        const isEnd = !current.keepWithNext || next === undefined || next.startsPage === true;
        if (!isEnd) return;
        const group = strips.slice(first, index + 1);
        first = index + 1;
        const heightPt = group.reduce((sum, { heightPt: own, gapPt }) => sum + own + gapPt, 8);
        if (heightPt <= bodyPt) expect(new Set(group.map((one) => pageOf(nameOf(one)))).size).toBe(1);
      });
    }),
  );
});
