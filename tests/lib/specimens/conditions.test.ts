/** What stands in the statement and what goes beside it: nothing that was typed is ever part of the statement. */
import { describe, expect, test } from "vitest";
import { Prisma } from "#.generated/prisma/client.ts";
import {
  keyCondition,
  likeTextCondition,
  oftenStatement,
  plainConditions,
  showsCondition,
  textCondition,
} from "#lib/specimens/conditions.ts";
import { SpecimenFilter } from "#lib/specimens/filter.ts";

const hostile = "x'; DROP TABLE specimen; --";
const moment = new Date("2027-01-01T00:00:00Z");
const id = "01920000-0000-7000-8000-0000000000aa";

describe("typed text", () => {
  test("stands beside the statement, without any sign of punctuation", () => {
    const condition = textCondition(hostile);
    expect(condition?.sql).not.toMatch(/drop|--/i);
    for (const value of condition?.values ?? []) expect(value).toMatch(/^% [a-z]+ ?%$/);
    expect(likeTextCondition(hostile).values).toEqual(["x drop table specimen"]);
  });

  test("without a word is no condition", () => expect(textCondition("…")).toBeNull());
});

describe("structures", () => {
  test("are looked for as recorded or as implied by something above them", () => {
    for (const often of [true, false]) {
      expect(showsCondition([hostile], "recorded", often).sql).not.toContain("DROP");
      expect(showsCondition([hostile], "recorded", often).values).toEqual([[hostile]]);
      expect(showsCondition(["femur"], "implied", often).sql).toContain("NOT EXISTS");
      expect(showsCondition(["femur"], "recorded", often).sql.includes("MATERIALIZED")).toBe(!often);
    }
  });

  test("are counted no further than needed", () => {
    const { sql, values } = oftenStatement([hostile], "recorded");
    expect(sql).toMatch(/LIMIT/);
    expect(values).toEqual([5_000, [hostile], 5_000]);
  });
});

test("each asked filter is one condition, and none is none", () => {
  const parse = (filter: object) => plainConditions(SpecimenFilter.parse(filter), moment);
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
  expect(free?.values).toEqual(Array.from({ length: 3 }, () => ["2027-04-01", "2027-03-01", moment]).flat());
  expect(parse({ placeId: id })[0]?.values).toEqual([id]);
});

test("a page goes on behind its key, or back before it", () => {
  const key = { accessionNumber: hostile, id };
  expect(keyCondition(key, false).sql).toContain(" > ");
  expect(keyCondition(key, true).sql).toContain(" < ");
  expect(keyCondition(key, true).values).toEqual([hostile, id]);
  expect(keyCondition(key, true)).toBeInstanceOf(Prisma.sql`x`.constructor);
});
