/** A search as it stands in an address: what is known is read, what is not is refused. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SpecimenFilter, SpecimenPage } from "#lib/specimens/filter.ts";
import { readSearchQuery } from "#lib/specimens/search-query.ts";

const read = (query: string) => readSearchQuery(new URLSearchParams(query));

describe("what is known", () => {
  test("is read as what it is", () => {
    const { filter, page } = read(
      "text=upper+limb&human=true&withoutSheets=false&size=7&kind=organ&after=abc",
    );
    expect(filter).toEqual({ text: "upper limb", human: true, withoutSheets: false, kind: "organ" });
    expect(page).toEqual({ size: 7, after: "abc" });
    expect(SpecimenFilter.parse(filter)).toMatchObject(filter);
    expect(SpecimenPage.parse(page)).toEqual(page);
  });

  test("counts as not given where it is empty", () =>
    expect(read("text=&size=&human=&after=")).toEqual({ filter: {}, page: {} }));
});

describe("what is refused", () => {
  test("an unknown name, and the known ones are named", () => {
    expect(() => read("animal=1&text=heart&limit=3&animal=2")).toThrow(
      expect.objectContaining({
        kind: "invalid",
        reason: "filter.unknown-parameter",
        parameters: { known: expect.stringContaining("text, structureId") },
        issues: [
          { path: "animal", message: "filter.no-such-parameter" },
          { path: "limit", message: "filter.no-such-parameter" },
        ],
      }),
    );
  });

  test.each(["yes", "1", "TRUE", "no"])("%j for true or false", (text) =>
    expect(() => read(`human=${text}`)).toThrow(
      expect.objectContaining({ issues: [{ path: "human", message: "filter.true-or-false" }] }),
    ),
  );

  test("a name that stands twice", () =>
    expect(() => read("kind=organ&kind=sheet")).toThrow(
      expect.objectContaining({ issues: [{ path: "kind", message: "filter.parameter-twice" }] }),
    ));

  test("a size that is no number, by the schema", () =>
    expect(SpecimenPage.safeParse(read("size=many").page).success).toBe(false));
});

test("whatever stands in the address, it is read or refused with an issue", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.string(), fc.string()), { maxLength: 4 }), (pairs) => {
      try {
        expect(readSearchQuery(pairs)).toHaveProperty("filter");
      } catch (error) {
        expect(error).toMatchObject({ kind: "invalid", issues: expect.any(Array) });
        expect((error as { issues: unknown[] }).issues.length).toBeGreaterThan(0);
      }
    }),
  );
});
