/** The least severity that a measurement calls for. Common practice but for the colour difference. */
import { expect, test } from "vitest";
import { measuredSeverities } from "#lib/condition/measured-severities.ts";
import { severityFigure } from "#lib/condition/schema.ts";
import { groupsFor } from "#lib/condition/terms.ts";
import { preparationCodes } from "#lib/environment/schema.ts";

const measuresOf = (...groups: Parameters<typeof measuredSeverities>[0]) =>
  measuredSeverities(groups).map(({ measure }) => measure);

test("colour bears on everything, the others on what can shrink, lose fluid or yellow", () => {
  expect(measuresOf("bone", "structure")).toEqual(["colour-difference"]);
  expect(measuresOf("sheet")).toEqual(["colour-difference", "yellowness-rise"]);
  expect(measuresOf("fluid", "tissue")).toEqual([
    "colour-difference",
    "shrinkage-a-year",
    "shrinkage-a-year",
    "fluid-loss-a-year",
  ]);
});

test.each(preparationCodes)("of %s, more of a measure never calls for less", (preparation) => {
  const rows = measuredSeverities(groupsFor(preparation));
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows)
    for (const other of rows)
      if (row.measure === other.measure && row.above > other.above)
        expect(severityFigure(row.severity)).toBeGreaterThan(severityFigure(other.severity));
});
