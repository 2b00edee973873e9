import { describe, expect, test } from "vitest";
import { DaysAround, daysAroundOf, mostDaysAround } from "#lib/specimens/days-around.ts";

const lines: DaysAround[] = [
  { kind: "whole body", before: 60, after: 50 },
  { upToKg: 25, before: 14, after: 10 },
  { before: 30, after: 20 },
];
const organ = { kind: "organ", massKg: 3, mountedMassKg: null } as const;

describe("the days around a specimen", () => {
  test.each([
    ["its kind", { ...organ, kind: "whole body" }, 60],
    ["its mass", organ, 14],
    ["a mass on the line", { ...organ, massKg: 25 }, 14],
    ["its mass with mount, which counts before the mass without", { ...organ, mountedMassKg: 26 }, 30],
    ["nothing but the last line, where nobody has weighed it", { ...organ, massKg: null }, 30],
  ] as const)("follow from %s", (_what, specimen, before) =>
    expect(daysAroundOf(specimen, lines).before).toBe(before),
  );

  test("are none where no line fits", () => {
    expect(daysAroundOf(organ, [])).toEqual({ before: 0, after: 0 });
    expect(daysAroundOf(organ, [{ kind: "sheet", before: 5, after: 5 }])).toEqual({ before: 0, after: 0 });
  });

  test("are at most those of the longest line", () => {
    expect(mostDaysAround(lines)).toEqual({ before: 60, after: 50 });
    expect(mostDaysAround([])).toEqual({ before: 0, after: 0 });
  });
});

test.each([{ before: -1, after: 0 }, { before: 1.5, after: 0 }, { before: 0, after: 400 }, { before: 1 }])(
  "%j are no days around",
  (line) => expect(DaysAround.safeParse(line).success).toBe(false),
);
