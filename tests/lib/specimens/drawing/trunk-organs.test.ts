import { describe, expect, it } from "vitest";
import { belly, chest } from "#lib/specimens/drawing/trunk-organs.ts";
import { girthAt } from "#lib/specimens/drawing/trunk-wall.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";

const groundAt = (level: number) => ({ level, ...girthAt(level), vary: variation("SR 03") });
const namesOf = (part: { callouts: readonly { text: string }[] }) =>
  part.callouts.map((callout) => callout.text);

describe("the organs of the trunk", () => {
  it("has lungs and heart in the chest and neither in the belly", () => {
    expect(namesOf(chest(groundAt(0.3)))).toEqual(expect.arrayContaining(["pulmo dexter", "cor"]));
    expect(namesOf(chest(groundAt(0.7)))).not.toContain("cor");
  });

  it("has liver and spleen under the diaphragm, and bowel alone further down", () => {
    expect(namesOf(belly(groundAt(0.48)))).toEqual(expect.arrayContaining(["hepar", "splen", "gaster"]));
    expect(namesOf(belly(groundAt(0.75)))).toEqual(["ileum", "colon descendens"]);
    expect(belly(groundAt(0.2)).shapes).toEqual([]);
  });
});
