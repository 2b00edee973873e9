import { describe, expect, test } from "vitest";
import type { PreparationCode } from "#lib/environment/schema.ts";
import {
  limitsOfSpecimen,
  type PreparedSpecimen,
  preparationCodeOf,
} from "#lib/environment/specimen-limits.ts";

const organ: PreparedSpecimen = {
  kind: "organ",
  preparation: "silicone-impregnated",
  fluidName: null,
  light: "ordinary",
};

describe("the row of limits of a specimen", () => {
  test.each<[Partial<PreparedSpecimen>, PreparationCode]>([
    [{ kind: "whole body" }, "silicone-body"],
    [{ kind: "body region" }, "silicone-body"],
    [{ kind: "organ" }, "silicone-organ"],
    [{ kind: "organ system" }, "silicone-organ"],
    [{ kind: "sheet", preparation: "epoxy sheet" }, "epoxy-sheet"],
    [{ kind: "sheet", preparation: "polyester sheet" }, "polyester-sheet"],
    [{ preparation: "fluid-preserved", fluidName: "ethanol" }, "alcohol-jar"],
    [{ preparation: "fluid-preserved", fluidName: "isopropanol" }, "alcohol-jar"],
    [{ preparation: "fluid-preserved", fluidName: "formaldehyde solution" }, "aqueous-jar"],
    [{ preparation: "fluid-preserved", fluidName: "glycerol" }, "aqueous-jar"],
    [{ kind: "cast", preparation: "corrosion cast" }, "corrosion-cast"],
    [{ kind: "skeleton or bone", preparation: "mounted skeleton" }, "bone"],
    [{ kind: "skeleton or bone", preparation: "dry" }, "bone"],
    [{ preparation: "dry" }, "dry"],
    [{ kind: "histological slide", preparation: "slide" }, "slide"],
  ])("%o is %s", (part, code) => expect(preparationCodeOf({ ...organ, ...part })).toBe(code));

  test.each(["other fluid", null] as const)("with the fluid %s it is the stricter jar", (fluidName) =>
    expect(preparationCodeOf({ ...organ, preparation: "fluid-preserved", fluidName })).toBe("alcohol-jar"),
  );
});

test("a light-sensitive cast counts as dyed, other light-sensitive specimens as colour-preserved", () => {
  const cast = limitsOfSpecimen({
    ...organ,
    kind: "cast",
    preparation: "corrosion cast",
    light: "sensitive",
  });
  const jar = limitsOfSpecimen({
    ...organ,
    preparation: "fluid-preserved",
    fluidName: "ethanol",
    light: "sensitive",
  });
  expect(cast.lightLxHoursPerYear.max).toBe(150_000);
  expect(jar.lightLxHoursPerYear.max).toBe(15_000);
  expect(limitsOfSpecimen(organ).lightLxHoursPerYear.max).toBe(150_000);
});
