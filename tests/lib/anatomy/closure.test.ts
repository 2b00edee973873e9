/** What follows from stated relations, on small vocabularies that can be followed by eye. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ancestorsOf, findRing, linksOf, type StatedRow } from "#lib/anatomy/closure.ts";
import type { AncestorPath } from "#lib/anatomy/schema.ts";

const row = (id: string, said: Partial<StatedRow> = {}): StatedRow => ({
  id,
  kind: "structure",
  partOf: [],
  isA: [],
  regions: [],
  system: "",
  ...said,
});

const small: StatedRow[] = [
  row("body", { kind: "region", regions: ["body"] }),
  row("upper-limb", { kind: "region", partOf: ["body"], regions: ["body"] }),
  row("arm", { kind: "region", partOf: ["upper-limb"], regions: ["upper-limb"] }),
  row("hand", { kind: "region", partOf: ["upper-limb"], regions: ["upper-limb"] }),
  row("nervous", { kind: "system", regions: ["body"], system: "nervous" }),
  row("peripheral", { kind: "system", partOf: ["nervous"], regions: ["body"], system: "nervous" }),
  row("nerve", { kind: "class", regions: ["body"], system: "nervous" }),
  row("limb-nerve", {
    kind: "class",
    partOf: ["peripheral"],
    isA: ["nerve"],
    regions: ["body"],
    system: "nervous",
  }),
  row("median-nerve", { isA: ["limb-nerve"], regions: ["arm", "hand"], system: "nervous" }),
  row("palmar-branch", { partOf: ["median-nerve"], regions: ["hand"], system: "nervous" }),
];

const pairs = ancestorsOf(small);
const has = (descendantId: string, ancestorId: string, via?: AncestorPath) =>
  pairs.some(
    (pair) =>
      pair.descendantId === descendantId && pair.ancestorId === ancestorId && (!via || pair.via === via),
  );

describe("what follows", () => {
  test.each([
    ["median-nerve", "median-nerve", "part"],
    ["median-nerve", "arm", "region"],
    ["median-nerve", "upper-limb", "region"],
    ["median-nerve", "body", "region"],
    ["median-nerve", "limb-nerve", "kind"],
    ["median-nerve", "nerve", "kind"],
    ["median-nerve", "peripheral", "part"],
    ["median-nerve", "nervous", "system"],
    ["palmar-branch", "median-nerve", "part"],
    ["palmar-branch", "nerve", "part"],
    ["palmar-branch", "hand", "region"],
    ["arm", "body", "part"],
  ] as const)("%s lies under %s by %s", (descendant, ancestor, via) =>
    expect(has(descendant, ancestor, via)).toBe(true),
  );

  test.each([
    ["palmar-branch", "arm"],
    ["arm", "hand"],
    ["nerve", "median-nerve"],
    ["median-nerve", "palmar-branch"],
  ])("%s does not lie under %s", (descendant, ancestor) => expect(has(descendant, ancestor)).toBe(false));

  test("a branch is no kind of nerve just because its whole is one", () =>
    expect(has("palmar-branch", "nerve", "kind")).toBe(false));

  test("each structure is under itself once, as a part", () => {
    for (const { id } of small)
      expect(
        pairs.filter((pair) => pair.ancestorId === id && pair.descendantId === id).map(({ via }) => via),
      ).toEqual(["part"]);
  });

  test("no pair stands twice", () => {
    const once = new Set(pairs.map((pair) => `${pair.ancestorId}/${pair.descendantId}/${pair.via}`));
    expect(once.size).toBe(pairs.length);
  });
});

test("stated relations become links, without the region that names itself", () => {
  expect(linksOf(small).filter(({ childId }) => childId === "body")).toEqual([]);
  expect(linksOf(small).filter(({ childId }) => childId === "palmar-branch")).toEqual([
    { childId: "palmar-branch", relation: "part-of", parentId: "median-nerve" },
    { childId: "palmar-branch", relation: "in-region", parentId: "hand" },
    { childId: "palmar-branch", relation: "in-system", parentId: "nervous" },
  ]);
});

describe("what is refused", () => {
  const ring = [
    row("a", { partOf: ["b"] }),
    row("b", { isA: ["c"] }),
    row("c", { partOf: ["a"] }),
    row("d", { partOf: ["a"] }),
  ];

  test("a ring is named", () => {
    expect(findRing(ring)).toEqual(["a", "b", "c", "a"]);
    expect(() => ancestorsOf(ring)).toThrow(
      expect.objectContaining({ reason: "anatomy.ring", parameters: { ring: "a → b → c → a" } }),
    );
  });

  test("a structure that is its own part is a ring", () =>
    expect(findRing([row("a", { partOf: ["a"] })])).toEqual(["a", "a"]));

  test("an id that no row has is named", () =>
    expect(() => ancestorsOf([row("a", { partOf: ["nowhere"] })])).toThrow(
      expect.objectContaining({ reason: "anatomy.unknown-structure", parameters: { id: "nowhere" } }),
    ));

  test("two ways to one whole are no ring", () =>
    expect(
      findRing([
        row("a", { partOf: ["b", "c"] }),
        row("b", { partOf: ["d"] }),
        row("c", { partOf: ["d"] }),
        row("d"),
      ]),
    ).toBeNull());
});

/** A graph whose edges only ever lead to earlier rows has no ring. */
const layered = fc
  .array(
    fc.record({ parts: fc.array(fc.nat(), { maxLength: 3 }), kinds: fc.array(fc.nat(), { maxLength: 2 }) }),
    {
      minLength: 1,
      maxLength: 25,
    },
  )
  .map((rows) =>
    rows.map(({ parts, kinds }, index) =>
      row(`s${index}`, {
        partOf: index === 0 ? [] : [...new Set(parts.map((at) => `s${at % index}`))],
        isA: index === 0 ? [] : [...new Set(kinds.map((at) => `s${at % index}`))],
      }),
    ),
  );

test("what lies under what lies under something lies under it too, and nothing lies under each other", () => {
  fc.assert(
    fc.property(layered, (rows) => {
      expect(findRing(rows)).toBeNull();
      const under = new Set(
        ancestorsOf(rows).map(({ ancestorId, descendantId }) => `${descendantId}/${ancestorId}`),
      );
      for (const low of rows)
        for (const middle of rows) {
          if (!under.has(`${low.id}/${middle.id}`)) continue;
          if (low !== middle) expect(under.has(`${middle.id}/${low.id}`)).toBe(false);
          for (const high of rows)
            if (under.has(`${middle.id}/${high.id}`)) expect(under.has(`${low.id}/${high.id}`)).toBe(true);
        }
    }),
    { numRuns: 60 },
  );
});
