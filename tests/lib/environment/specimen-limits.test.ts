import { describe, expect, test } from "vitest";
import { type PreparationCode, preparationCodes } from "#lib/environment/schema.ts";
import {
  limitsOfSpecimen,
  type PreparedSpecimen,
  preparationCodeOf,
} from "#lib/environment/specimen-limits.ts";
import { fragilityClassOf } from "#lib/specimens/classes.ts";
import { fluids, preparations, specimenKinds } from "#lib/specimens/schema.ts";
import { fragility } from "#lib/transport/fragility.ts";

const organ: PreparedSpecimen = {
  kind: "organ",
  preparation: "silicone-impregnated",
  fluidName: null,
  light: "ordinary",
  partsAtRisk: "",
  hasTeeth: false,
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
    [{ kind: "skeleton or bone", preparation: "mounted skeleton", hasTeeth: true }, "teeth"],
    [{ kind: "skeleton or bone", preparation: "dry", hasTeeth: true }, "teeth"],
    [{ kind: "body region", hasTeeth: true }, "silicone-body"],
    [{ kind: "cast", preparation: "dry" }, "wax"],
    [{ preparation: "dry" }, "dry"],
    [{ kind: "histological slide", preparation: "slide" }, "slide"],
  ])("%o is %s", (part, code) => expect(preparationCodeOf({ ...organ, ...part })).toBe(code));

  test.each(["other fluid", null] as const)("with the fluid %s it is the stricter jar", (fluidName) =>
    expect(preparationCodeOf({ ...organ, preparation: "fluid-preserved", fluidName })).toBe("alcohol-jar"),
  );
});

/** Whatever the catalogue can say of how a specimen is prepared. */
const everyRecord = specimenKinds.flatMap((kind) =>
  preparations.flatMap((preparation) =>
    [null, ...fluids].flatMap((fluidName) =>
      [false, true].flatMap((hasTeeth) =>
        ["", "Free nerve ends"].map(
          (partsAtRisk): PreparedSpecimen => ({
            kind,
            preparation,
            fluidName,
            hasTeeth,
            partsAtRisk,
            light: "ordinary",
          }),
        ),
      ),
    ),
  ),
);

test("no row of limits is out of reach of the catalogue", () => {
  const reached = new Set(everyRecord.map(preparationCodeOf));
  expect([...reached].sort()).toEqual([...preparationCodes].sort());
});

test("the shock that a specimen bears is the shock that its crate is designed for", () => {
  for (const record of everyRecord)
    expect(limitsOfSpecimen(record).shockG.alarm).toBe(
      fragility({ fragilityClass: fragilityClassOf(record) }).peakG,
    );
});

test("teeth and parts at risk never make a limit of shock milder", () => {
  for (const record of everyRecord) {
    const sturdy = { ...record, hasTeeth: false, partsAtRisk: "" };
    expect(limitsOfSpecimen(record).shockG.alarm).toBeLessThanOrEqual(limitsOfSpecimen(sturdy).shockG.alarm);
  }
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
