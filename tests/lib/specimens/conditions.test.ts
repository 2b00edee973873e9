/** What stands in the statement and what goes beside it: nothing that was typed is ever part of the statement. */
import { describe, expect, test } from "vitest";
import { Prisma } from "#.generated/prisma/client.ts";
import {
  keyCondition,
  likeTextCondition,
  oftenStatement,
  plainConditions,
  showsCondition,
  speaking,
  speakingOfEach,
  speakingOfItself,
  textCondition,
} from "#lib/specimens/conditions.ts";
import { SpecimenFilter } from "#lib/specimens/filter.ts";
import { searchPatterns } from "#lib/specimens/search-text.ts";

const hostile = "x'; DROP TABLE specimen; --";
const at = { now: new Date("2027-01-01T00:00:00Z"), today: "2027-01-01" };
const id = "01920000-0000-7000-8000-0000000000aa";

describe("typed text", () => {
  test("stands beside the statement, without any sign of punctuation", () => {
    const condition = textCondition(searchPatterns(hostile));
    expect(condition?.sql).not.toMatch(/drop|--/i);
    for (const value of condition?.values ?? []) expect(value).toMatch(/^% [a-z]+ ?%$/);
    expect(likeTextCondition(hostile).values).toEqual(["x drop table specimen"]);
  });

  test("without a word is no condition", () => expect(textCondition(searchPatterns("…"))).toBeNull());
});

describe("structures", () => {
  test("are looked for as recorded or as implied by something above them", () => {
    for (const often of [true, false]) {
      expect(showsCondition([hostile], "recorded", often).sql).not.toContain("DROP");
      expect(showsCondition([hostile], "recorded", often).values).toEqual([[hostile]]);
      expect(showsCondition(["femur"], "implied", often).sql).toContain("NOT IN");
      expect(showsCondition(["femur"], "recorded", often).sql.includes("MATERIALIZED")).toBe(!often);
    }
  });

  test("are counted no further than needed", () => {
    const { sql, values } = oftenStatement(speaking([hostile], "recorded"));
    expect(sql).toMatch(/LIMIT/);
    expect(values).toEqual([5_000, [hostile], 5_000]);
  });

  test("stand beside the statement however they are asked for", () => {
    for (const rows of [
      speaking([hostile], "recorded"),
      speakingOfEach([hostile]),
      speakingOfItself([hostile]),
    ]) {
      expect(rows.sql).not.toContain("DROP");
      expect(rows.values).toEqual([[hostile]]);
    }
  });
});

test("each asked filter is one condition, and none is none", () => {
  const parse = (filter: object) => plainConditions(SpecimenFilter.parse(filter), at);
  expect(parse({})).toEqual([]);
  expect(
    parse({
      kind: "organ",
      preparation: "dry",
      use: "handling",
      human: false,
      seriesId: id,
      withoutSheets: true,
    }),
  ).toHaveLength(6);
  const [free] = parse({ freeFrom: "2027-03-01", freeUntil: "2027-04-01" });
  expect(free?.values).toEqual([at.now, "2027-04-01", "2027-03-01", "2027-04-01", "2027-03-01", at.today]);
  const [around] = parse({
    freeFrom: "2027-03-01",
    freeUntil: "2027-04-01",
    around: [{ kind: "organ", upToKg: 25, before: 14, after: 7 }],
  });
  // The calendar is asked for the widest days, each specimen for its own.
  expect(around?.values.slice(0, 3)).toEqual([at.now, "2027-04-08", "2027-02-15"]);
  expect(around?.values.slice(3)).toEqual([
    "2027-04-01",
    "organ",
    25,
    7,
    "2027-03-01",
    "organ",
    25,
    14,
    at.today,
  ]);
  expect(parse({ placeId: id })[0]?.values).toEqual([id]);
});

test("a page goes on behind its key, or back before it", () => {
  const key = { accessionNumber: hostile, id };
  expect(keyCondition(key, false).sql).toContain(" > ");
  expect(keyCondition(key, true).sql).toContain(" < ");
  expect(keyCondition(key, true).values).toEqual([hostile, id]);
  expect(keyCondition(key, true)).toBeInstanceOf(Prisma.sql`x`.constructor);
});
