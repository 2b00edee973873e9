import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, rangesOverlap } from "#lib/platform/dates.ts";
import { bookingRows, type Wanted } from "#lib/whereabouts/booking-rows.ts";

const wanted = (
  specimenId: string,
  loanLineId: string | null = null,
  startsOn = "2027-03-01",
  endsOn = "2027-04-01",
): Wanted => ({
  specimenId,
  loanLineId,
  period: { startsOn, endsOn },
  purpose: "loan",
  strength: "firm",
  expiresAt: null,
});
const tree = new Map([
  ["w", ["w", "p1", "p2"]],
  ["p1", ["p1"]],
]);
const read = (rows: ReturnType<typeof bookingRows>) =>
  rows.map((row) => [row.specimenId, row.askedFor.specimenId]);

describe("the rows of a booking", () => {
  test("are one for the whole and one for each part", () => {
    expect(read(bookingRows([wanted("w")], tree))).toEqual([
      ["p1", "w"],
      ["p2", "w"],
      ["w", "w"],
    ]);
  });
  test("of a part are its own only", () => {
    expect(read(bookingRows([wanted("p1")], tree))).toEqual([["p1", "p1"]]);
  });
  test("belong to the part's own line where it is asked for by itself as well", () => {
    const rows = bookingRows([wanted("w", "line w"), wanted("p1", "line p1")], tree);
    expect(rows.map((row) => [row.specimenId, row.loanLineId])).toEqual([
      ["p1", "line p1"],
      ["p2", "line w"],
      ["w", "line w"],
    ]);
  });
  test("are refused for the same specimen twice on the same days", () => {
    expect(() => bookingRows([wanted("p1"), wanted("p1")], tree)).toThrow("booking.asked-twice");
  });
  test("are refused for a part on fewer days than its whole", () => {
    expect(() => bookingRows([wanted("w"), wanted("p1", null, "2027-03-10", "2027-03-12")], tree)).toThrow(
      "booking.asked-twice",
    );
  });
  test("may name the same specimen on other days", () => {
    const rows = bookingRows([wanted("p1"), wanted("p1", null, "2027-05-01", "2027-06-01")], tree);
    expect(rows).toHaveLength(2);
  });

  test("never meet, lose nothing and stand in order, whatever is asked for", () => {
    const anyWanted = fc
      .record({
        specimenId: fc.constantFrom("a", "b", "c", "d"),
        from: fc.nat(60),
        days: fc.integer({ min: 1, max: 30 }),
      })
      .map(({ specimenId, from, days }) =>
        wanted(specimenId, null, addDays("2027-01-01", from), addDays("2027-01-01", from + days)),
      );
    const anyTree = new Map([
      ["a", ["a", "b", "c"]],
      ["b", ["b", "c"]],
      ["c", ["c"]],
      ["d", ["d"]],
    ]);
    fc.assert(
      fc.property(fc.array(anyWanted, { minLength: 1, maxLength: 4 }), (asked) => {
        let rows: ReturnType<typeof bookingRows>;
        try {
          rows = bookingRows(asked, anyTree);
        } catch {
          return;
        }
        const ids = rows.map((row) => row.specimenId);
        expect(ids).toEqual([...ids].sort());
        rows.forEach((row, at) => {
          for (const other of rows.slice(at + 1))
            expect(row.specimenId === other.specimenId && rangesOverlap(row.period, other.period)).toBe(
              false,
            );
        });
        for (const one of asked) {
          for (const member of anyTree.get(one.specimenId) ?? []) {
            expect(
              rows.some(
                (row) =>
                  row.specimenId === member &&
                  row.period.startsOn <= one.period.startsOn &&
                  row.period.endsOn >= one.period.endsOn,
              ),
            ).toBe(true);
          }
        }
      }),
    );
  });
});
