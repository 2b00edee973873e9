import { describe, expect, it } from "vitest";
import { drawFootArteries, drawFootSection } from "#lib/specimens/drawing/foot-parts.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("the foot sawn and cast", {
  drawFootSection,
  drawFootArteries,
});

describe("a cast of the arteries of the foot", () => {
  it("holds arteries and the broken outline of the foot, nothing else", () => {
    const tones = drawFootArteries(variation("AN 1")).shapes.map(({ fill, stroke }) => fill ?? stroke);
    expect(new Set(tones)).toEqual(new Set(["hidden", "artery-twig", "artery"]));
  });
});
