import fc from "fast-check";
import { expect, test } from "vitest";
import { groupBy, rangesOf } from "#lib/papers/row-groups.ts";

test.each([
  [[], ""],
  [[4], "4"],
  [[1, 2], "1, 2"],
  [[1, 2, 3, 5, 7, 8], "1–3, 5, 7, 8"],
])("%j is written as “%s”", (numbers, written) => {
  expect(rangesOf(numbers)).toBe(written);
});

test("ranges name every number and no other", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 80 })), (some) => {
      const numbers = [...some].sort((first, second) => first - second);
      const read = rangesOf(numbers)
        .split(", ")
        .filter((part) => part !== "")
        .flatMap((part) => {
          const [first = 0, last = first] = part.split("–").map(Number);
          return Array.from({ length: last - first + 1 }, (_none, index) => first + index);
        });
      expect(read).toEqual(numbers);
    }),
  );
});

test("every row is in the group of its key, under its number, in order", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom("a", "b", "c")), (rows) => {
      const groups = groupBy(rows, (row) => row);
      expect(groups.map(({ first }) => first)).toEqual([...new Set(rows)]);
      expect(groups.flatMap(({ numbers }) => numbers).sort((one, other) => one - other)).toEqual(
        rows.map((_row, index) => index + 1),
      );
      for (const group of groups) {
        expect(group.rows).toEqual(group.numbers.map((number) => rows[number - 1]));
        expect(new Set(group.rows)).toEqual(new Set([group.first]));
      }
    }),
  );
});
