import fc from "fast-check";
import { expect, test } from "vitest";
import {
  listChanges,
  repeatedAt,
  type SpecimenRow,
  toColumns,
  toReplacementCost,
  toSpecimenInput,
} from "#lib/specimens/record.ts";
import { deathPeriods, madePeriods, type SpecimenInput, speciesAppendices } from "#lib/specimens/schema.ts";
import { aRecord } from "#tests/support/specimen-records.ts";

const asStored = (input: SpecimenInput) =>
  ({
    ...toColumns(input),
    id: "",
    version: 1,
    recordedAt: new Date(0),
    seriesId: null,
    numberInSeries: null,
    sheetThicknessMm: null,
    pictureId: null,
  }) as unknown as SpecimenRow;
const there = (input: SpecimenInput) =>
  toSpecimenInput({
    ...asStored(input),
    components: input.components.map((row) => ({ id: "", specimenId: "", ...row })),
    formerNumbers: input.formerNumbers.map((row) => ({ id: "", specimenId: "", ...row })),
    hazards: input.hazards.map((row) => ({ specimenId: "", ...row })),
  });

const size = fc.option(
  fc.record({
    lengthMm: fc.integer({ min: 1 }),
    widthMm: fc.integer({ min: 1 }),
    heightMm: fc.integer({ min: 1 }),
  }),
);
const day = fc
  .integer({ min: 0, max: 60_000 })
  .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10));
const cost = fc.option(
  fc.record({
    minor: fc.integer({ min: 1, max: 100_000_000_000 }),
    currency: fc.constant("EUR"),
    basis: fc.constantFrom("preparation cost" as const, "cost to replace" as const),
    statedOn: day,
    statedBy: fc.string({ minLength: 1 }),
  }),
);

const yesNo = fc.option(fc.boolean());
const legal = fc.record({
  containsCells: yesNo,
  wholeBody: yesNo,
  originCountry: fc.constantFrom(null, "NO", "GB"),
  imported: yesNo,
  heldSince: fc.option(day),
  deathPeriod: fc.constantFrom(null, ...deathPeriods),
  deathPapers: yesNo,
  anatomicalExamination: yesNo,
  speciesAppendix: fc.constantFrom(null, ...speciesAppendices),
  madePeriod: fc.constantFrom(null, ...madePeriods),
  freeFluidMl: fc.option(fc.integer({ min: 0, max: 1_000_000 })),
});

test("what was typed comes back as it was typed", () => {
  const typed = fc.record({
    size,
    mountedSize: size,
    replacementCost: cost,
    preparedOn: fc.option(day),
    acquiredOn: fc.option(day),
    title: fc.string(),
    legal,
  });
  fc.assert(
    fc.property(typed, (said) => {
      const input = aRecord({
        ...said,
        components: [{ name: "stand", count: 1, detachable: true }],
        formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "lid" }],
        hazards: [{ substance: "mercury", percent: null, note: "" }],
      });
      expect(there(input)).toEqual(input);
    }),
  );
});

test("a cost without its day is no cost", () => {
  const row = asStored(
    aRecord({
      replacementCost: {
        minor: 5,
        currency: "EUR",
        basis: "cost to replace",
        statedOn: "2026-01-01",
        statedBy: "a",
      },
    }),
  );
  expect(toReplacementCost({ ...row, replacementCostOn: null })).toBeNull();
});

test("the searched line is part of the row", () => {
  const { searchKey } = toColumns(
    aRecord({
      accessionNumber: "AN 1",
      title: "Heart",
      formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "" }],
    }),
  );
  for (const word of ["an1", "b17", "heart"]) expect(searchKey).toContain(` ${word} `);
});

test("changes of a list are told apart", () => {
  const before = [
    { name: "a", count: 1 },
    { name: "b", count: 1 },
    { name: "c", count: 1 },
  ];
  const after = [
    { name: "a", count: 1 },
    { name: "c", count: 2 },
    { name: "d", count: 1 },
  ];
  expect(listChanges(before, after, ({ name }) => name)).toEqual({
    added: [{ name: "d", count: 1 }],
    changed: [{ name: "c", count: 2 }],
    removed: [{ name: "b", count: 1 }],
  });
});

test("nothing changes between a list and itself", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.string()), (names) => {
      const rows = names.map((name) => ({ name }));
      expect(listChanges(rows, rows, ({ name }) => name)).toEqual({ added: [], changed: [], removed: [] });
    }),
  );
});

test("what stands twice is told by the place of the second", () =>
  expect(repeatedAt(["a", "b", "a", "a"], (row) => row)).toEqual([2, 3]));
