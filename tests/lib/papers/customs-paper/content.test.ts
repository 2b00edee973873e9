import { describe, expect, test } from "vitest";
import {
  CustomsContent,
  crossesBorder,
  customsContent,
  customsSubjects,
} from "#lib/papers/customs-paper/content.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 3, crates: 1 });
const atHome = { ...paperCase, venue: { ...paperCase.venue, countryCode: paperCase.house.countryCode } };

test.each(["pro-forma invoice", "carnet list"] as const)("a %s reads back as it was written", (kind) => {
  const content = customsContent(kind, paperCase, stageIds.out, someHead());
  expect(CustomsContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
});

describe("a tariff code", () => {
  test("is what somebody decided for a country, and open where nobody did", () => {
    const { decisions, undecided } = customsContent("pro-forma invoice", paperCase, stageIds.out, someHead());
    expect(decisions).toEqual([
      {
        countryCode: "NO",
        code: "9705.21.00",
        decidedBy: "Harbour Brokers",
        decidedOn: "2026-11-18",
        note: "",
        numbers: [2, 3],
      },
    ]);
    expect(undecided).toEqual([
      { countryCode: "DE", numbers: [1, 2, 3] },
      { countryCode: "NO", numbers: [1] },
    ]);
  });

  test("of the way out is none of the way home", () => {
    expect(customsContent("pro-forma invoice", paperCase, stageIds.home, someHead()).decisions).toEqual([]);
  });

  test("is no matter of a carnet's list", () => {
    const { decisions, undecided } = customsContent("carnet list", paperCase, stageIds.out, someHead());
    expect([...decisions, ...undecided]).toEqual([]);
  });
});

test("a value is the replacement cost with its basis, or nothing", () => {
  const [first, ...others] = paperCase.specimens;
  if (!first) throw new RangeError("There is a specimen.");
  const without = {
    ...paperCase,
    specimens: [{ ...first, goods: { ...first.goods, cost: null } }, ...others],
  };
  const { goods } = customsContent("carnet list", without, stageIds.out, someHead());
  expect(goods.map(({ value }) => value?.minor ?? null)).toEqual([null, 250_100, 250_200]);
  expect(goods[1]?.value?.basis).toBe("cost to replace");
});

describe("papers for customs are for ways", () => {
  test("that leave the country, a carnet's list for the way out only", () => {
    expect(customsSubjects(["out", "home"])(paperCase)).toEqual([stageIds.out, stageIds.home]);
    expect(customsSubjects(["out"])(paperCase)).toEqual([stageIds.out]);
  });

  test("also where only the road leaves it", () => {
    expect(crossesBorder(atHome, [])).toBe(false);
    expect(crossesBorder(atHome, ["DK"])).toBe(true);
    expect(customsSubjects(["out", "home"])(atHome)).toEqual([stageIds.out]);
  });
});
