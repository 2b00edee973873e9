import { describe, expect, it } from "vitest";
import { type BodySystem, drawBody, drawNervousSystem, drawSeatedBody } from "#lib/specimens/drawing/body.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("the whole body", {
  "its outline": (vary) => drawBody(vary, []),
  "its muscles": (vary) => drawBody(vary, ["muscles"]),
  "its arteries": (vary) => drawBody(vary, ["arteries"]),
  "its nerves": (vary) => drawBody(vary, ["nerves"]),
  sitting: (vary) => drawSeatedBody(vary, false),
  "sitting, with nerves": (vary) => drawSeatedBody(vary, true),
  drawNervousSystem,
});

describe("the body's outline", () => {
  it("names nothing, and each system names its own", () => {
    const names = (...shown: BodySystem[]) => namedBy(drawBody(variation("AN 1"), shown));
    expect(names()).toEqual([]);
    expect(names("nerves")).toContain("sciatic-nerve");
    expect(names("muscles", "arteries")).toEqual(expect.arrayContaining(["deltoid", "femoral-artery"]));
  });
});
