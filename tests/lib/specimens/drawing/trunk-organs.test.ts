import { describe, expect, it } from "vitest";
import { belly, chest } from "#lib/specimens/drawing/trunk-organs.ts";
import { girthAt } from "#lib/specimens/drawing/trunk-wall.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { namedBy } from "./looking.ts";

const groundAt = (level: number) => ({ level, ...girthAt(level), vary: variation("SR 03") });

describe("the organs of the trunk", () => {
  it("has lungs and heart in the chest and neither in the belly", () => {
    expect(namedBy(chest(groundAt(0.3)))).toEqual(expect.arrayContaining(["right-lung", "heart"]));
    expect(namedBy(chest(groundAt(0.7)))).not.toContain("heart");
  });

  it("has liver and spleen under the diaphragm, and bowel alone further down", () => {
    expect(namedBy(belly(groundAt(0.48)))).toEqual(expect.arrayContaining(["liver", "spleen", "stomach"]));
    expect(namedBy(belly(groundAt(0.75)))).toEqual(["jejunum", "ileum", "descending-colon"]);
    expect(belly(groundAt(0.2)).shapes).toEqual([]);
  });
});
