import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { newId } from "#lib/platform/identity.ts";
import {
  parseSearch,
  readPageKey,
  SpecimenFilter,
  SpecimenPage,
  writePageKey,
} from "#lib/specimens/filter.ts";

describe("a filter", () => {
  test("may be empty, and parsing it again changes nothing", () => {
    const parsed = SpecimenFilter.parse({});
    expect(parsed).toEqual({ evidence: "recorded", withoutSheets: false, around: [] });
    expect(SpecimenFilter.parse(parsed)).toEqual(parsed);
  });

  test.each([
    [{ freeFrom: "2027-01-01" }, "filter.both-days"],
    [{ freeUntil: "2027-01-01" }, "filter.both-days"],
    [{ freeFrom: "2027-02-01", freeUntil: "2027-02-01" }, "filter.days-reversed"],
    [{ structureId: "a\u0000b" }, "structure.unknown"],
    [{ structureId: "' or 1=1" }, "structure.unknown"],
  ])("%j is refused", (filter, message) =>
    expect(SpecimenFilter.safeParse(filter).error?.issues.map((issue) => issue.message)).toEqual([message]),
  );

  test.each([
    { kind: "soup" },
    { text: "x".repeat(201) },
    { placeId: "here" },
    { freeFrom: "2027-02-30", freeUntil: "2027-03-01" },
  ])("%j is refused too", (filter) => expect(SpecimenFilter.safeParse(filter).success).toBe(false));

  test("that cannot be read is refused as a search, not as a form that saves", () => {
    expect(() => parseSearch(SpecimenFilter, { kind: "soup" })).toThrow(
      expect.objectContaining({
        kind: "invalid",
        reason: "filter.unreadable",
        issues: [expect.objectContaining({ path: "kind" })],
      }),
    );
    expect(() => parseSearch(SpecimenFilter, { text: "\ud800" })).toThrow(
      expect.objectContaining({
        reason: "filter.unreadable",
        issues: [{ path: "text", message: "text.not-storable" }],
      }),
    );
    expect(parseSearch(SpecimenFilter, { text: " heart " }).text).toBe("heart");
  });

  test("a page has at most two hundred rows", () => {
    expect(SpecimenPage.parse({}).size).toBe(40);
    expect(SpecimenPage.safeParse({ size: 201 }).success).toBe(false);
    expect(SpecimenPage.safeParse({ size: 0 }).success).toBe(false);
  });
});

describe("the key of a page", () => {
  test("is read as it was written", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Za-zäöü0-9 ./'"-]{1,40}$/), (accessionNumber) => {
        const key = { accessionNumber, id: newId() };
        expect(readPageKey(writePageKey(key))).toEqual({ ...key, rank: 0 });
        expect(readPageKey(writePageKey({ ...key, rank: 7 }))).toEqual({ ...key, rank: 7 });
      }),
    );
  });

  test.each([
    "",
    "nonsense",
    "e30",
    Buffer.from('["A","not an id"]').toString("base64url"),
    Buffer.from(`["A","${newId()}",10]`).toString("base64url"),
    Buffer.from(`["A","${newId()}",1.5]`).toString("base64url"),
    Buffer.from(`["A","${newId()}",1,1]`).toString("base64url"),
    Buffer.from(`["\\u0000","${newId()}"]`).toString("base64url"),
  ])("%j is refused", (text) =>
    expect(() => readPageKey(text)).toThrow(
      expect.objectContaining({ kind: "invalid", reason: "page.key-unknown" }),
    ),
  );
});
