import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type GroupMember, groupLimits } from "#lib/environment/group-limits.ts";
import { limitsFor } from "#lib/environment/limits.ts";
import { type Band, type PreparationCode, preparationCodes } from "#lib/environment/schema.ts";

const member = (preparation: PreparationCode, id: string = preparation): GroupMember => ({
  id,
  limits: limitsFor(preparation),
});

describe("the limits of several specimens", () => {
  // Pairs worked beside the table of limits.
  test.each<[PreparationCode, PreparationCode, Band]>([
    ["polyester-sheet", "wax", { low: 0.45, high: 0.5 }],
    ["slide", "teeth", { low: 0.45, high: 0.5 }],
  ])("%s with %s leaves a humidity of %o", (first, second, band) =>
    expect(groupLimits([member(first), member(second)]).limits.humidity.target).toEqual(band),
  );

  test("the light of a polyester sheet governs a mixed case and is named", () => {
    const { limits, figures } = groupLimits([
      member("silicone-body"),
      member("polyester-sheet"),
      member("bone"),
    ]);
    expect(limits.illuminanceLx.max).toBe(50);
    expect(figures.find((figure) => figure.quantity === "illuminanceLx")?.setBy).toEqual(["polyester-sheet"]);
  });

  test("a figure that two specimens share names both and keeps their grounds", () => {
    const { figures } = groupLimits([
      member("bone", "left hand"),
      member("bone", "right hand"),
      member("silicone-body"),
    ]);
    const low = figures.find(
      (figure) => figure.quantity === "humidity" && figure.level === "target" && figure.side === "low",
    );
    expect(low).toMatchObject({ value: 0.45, setBy: ["left hand", "right hand"] });
    expect(low?.ground).toEqual(limitsFor("bone").humidity.ground);
  });

  test("one specimen keeps its own limits", () => {
    const own = limitsFor("dry");
    const { limits, conflicts } = groupLimits([member("dry")]);
    expect(conflicts).toEqual([]);
    expect(limits.temperatureC).toEqual({
      target: own.temperatureC.target,
      warn: own.temperatureC.warn,
      alarm: own.temperatureC.alarm,
    });
    expect(limits.lightLxHoursPerYear.max).toBe(own.lightLxHoursPerYear.max);
  });

  test("without a common band the level is empty and every excluding pair is named", () => {
    const damp = member("wax", "wax head");
    damp.limits.humidity.target = { low: 0.52, high: 0.55 };
    const { limits, figures, conflicts } = groupLimits([
      member("slide", "slide"),
      damp,
      member("dry", "dried heart"),
    ]);
    expect(limits.humidity.target).toBeNull();
    expect(limits.humidity.warn).toEqual({ low: 0.42, high: 0.55 });
    expect(figures.some((figure) => figure.quantity === "humidity" && figure.level === "target")).toBe(false);
    expect(conflicts).toEqual([
      {
        quantity: "humidity",
        level: "target",
        pairs: [
          { needsAtLeast: "wax head", atLeast: 0.52, allowsAtMost: "slide", atMost: 0.5 },
          { needsAtLeast: "wax head", atLeast: 0.52, allowsAtMost: "dried heart", atMost: 0.5 },
        ],
      },
    ]);
  });

  test("no specimen is refused", () => expect(() => groupLimits([])).toThrow(RangeError));
});

/** A preparation whose humidity is moved, so that some groups have nothing in common. */
const anyMember = fc
  .record({
    preparation: fc.constantFrom(...preparationCodes),
    id: fc.uuid(),
    shift: fc.integer({ min: -20, max: 30 }).map((percent) => percent / 100),
  })
  .map(({ preparation, id, shift }) => {
    const limits = limitsFor(preparation);
    for (const level of ["target", "warn", "alarm"] as const) {
      limits.humidity[level].low += shift;
      limits.humidity[level].high += shift;
    }
    return { id, limits };
  });
const anyGroup = fc.uniqueArray(anyMember, { minLength: 1, maxLength: 8, selector: (one) => one.id });
const levels = ["target", "warn", "alarm"] as const;

describe("whatever the specimens", () => {
  test("a common band lies inside every specimen's band, and its ends are some specimen's", () => {
    fc.assert(
      fc.property(anyGroup, (group) => {
        const { limits } = groupLimits(group);
        for (const level of levels) {
          const band = limits.humidity[level];
          if (band === null) continue;
          for (const { limits: own } of group) {
            expect(band.low).toBeGreaterThanOrEqual(own.humidity[level].low);
            expect(band.high).toBeLessThanOrEqual(own.humidity[level].high);
          }
          expect(group.some(({ limits: own }) => own.humidity[level].low === band.low)).toBe(true);
          expect(group.some(({ limits: own }) => own.humidity[level].high === band.high)).toBe(true);
        }
      }),
    );
  });

  test("a level is empty exactly when it has a conflict, whose pairs really exclude each other", () => {
    fc.assert(
      fc.property(anyGroup, (group) => {
        const { limits, conflicts } = groupLimits(group);
        for (const level of levels) {
          const conflict = conflicts.find((one) => one.quantity === "humidity" && one.level === level);
          expect(conflict !== undefined).toBe(limits.humidity[level] === null);
          for (const pair of conflict?.pairs ?? []) {
            const two = group.filter(({ id }) => id === pair.needsAtLeast || id === pair.allowsAtMost);
            expect(two).toHaveLength(2);
            expect(groupLimits(two).limits.humidity[level]).toBeNull();
          }
          if (conflict) expect(conflict.pairs.length).toBeGreaterThan(0);
        }
      }),
    );
  });

  test("the order of the specimens changes no limit", () => {
    fc.assert(
      fc.property(anyGroup, (group) => {
        expect(groupLimits([...group].reverse()).limits).toEqual(groupLimits(group).limits);
      }),
    );
  });

  test("one specimen more never widens anything", () => {
    fc.assert(
      fc.property(anyGroup, anyMember, (group, added) => {
        const before = groupLimits(group).limits;
        const after = groupLimits([...group, added]).limits;
        expect(after.illuminanceLx.max).toBeLessThanOrEqual(before.illuminanceLx.max);
        expect(after.shockG.alarm).toBeLessThanOrEqual(before.shockG.alarm);
        for (const level of levels) {
          const [narrow, wide] = [after.humidity[level], before.humidity[level]];
          if (narrow === null) continue;
          expect(wide).not.toBeNull();
          expect(narrow.low).toBeGreaterThanOrEqual(wide?.low ?? 1);
          expect(narrow.high).toBeLessThanOrEqual(wide?.high ?? 0);
        }
      }),
    );
  });

  test("every figure names at least one specimen of the group", () => {
    fc.assert(
      fc.property(anyGroup, (group) => {
        const ids = new Set(group.map(({ id }) => id));
        for (const { setBy } of groupLimits(group).figures) {
          expect(setBy.length).toBeGreaterThan(0);
          expect(setBy.every((id) => ids.has(id))).toBe(true);
        }
      }),
    );
  });
});
