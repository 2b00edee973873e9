import { expect, test } from "vitest";
import { crateState, mayHappen, needsNewSeal, notBeforeOf, sealHolds } from "#lib/shipments/crate-state.ts";
import { type CrateEventKind, crateEventKinds, crateStates } from "#lib/shipments/schema.ts";

const happened = (...kinds: CrateEventKind[]) => kinds.map((kind) => ({ kind, notBefore: null }));

test.each([
  [[], "planned"],
  [["packed"], "packed"],
  [["packed", "sealed"], "sealed"],
  [["packed", "sealed", "handed over"], "with the carrier"],
  [["packed", "sealed", "handed over", "arrived"], "resting closed"],
  [["packed", "sealed", "handed over", "arrived", "opened"], "opened"],
  [["packed", "sealed", "handed over", "arrived", "opened", "emptied"], "empty"],
  [["packed", "sealed", "handed over", "arrived", "opened", "packed", "sealed"], "sealed"],
] as const)("after %j a crate is %s", (kinds, state) => {
  expect(crateState(happened(...kinds))).toBe(state);
});

test("a crate rests until the moment of its last arrival, and only while it rests", () => {
  const arrived = { kind: "arrived", notBefore: "2027-03-01T10:00:00.000Z" } as const;
  expect(notBeforeOf([...happened("sealed"), arrived])).toBe("2027-03-01T10:00:00.000Z");
  expect(notBeforeOf([arrived, ...happened("opened")])).toBeNull();
  expect(notBeforeOf([])).toBeNull();
});

test("a crate is opened only after it arrived, and travels only sealed", () => {
  const allowed = (kind: CrateEventKind) => crateStates.filter((state) => mayHappen(state, kind));
  expect(allowed("opened")).toEqual(["resting closed"]);
  expect(allowed("handed over")).toEqual(["sealed", "with the carrier", "resting closed"]);
});

test("every event is possible in some state, and every state lets something follow", () => {
  for (const kind of crateEventKinds)
    expect(
      crateStates.some((state) => mayHappen(state, kind)),
      kind,
    ).toBe(true);
  for (const state of crateStates)
    expect(
      crateEventKinds.some((kind) => mayHappen(state, kind)),
      state,
    ).toBe(true);
});

test("a seal holds only if every look since it was set says so", () => {
  const look = (sealIntact: boolean | null) => ({ kind: "arrived", sealIntact }) as const;
  const sealed = { kind: "sealed", sealIntact: null } as const;
  expect(sealHolds([sealed])).toBeNull();
  expect(sealHolds([sealed, look(true), look(null)])).toBe(true);
  expect(sealHolds([sealed, look(true), look(false)])).toBe(false);
  expect(sealHolds([sealed, look(false), sealed, look(true)])).toBe(true);
});

test("a crate that is closed travels on under its seal, one that is open wants a new one", () => {
  expect(crateStates.filter((state) => !needsNewSeal(state))).toEqual(["with the carrier", "resting closed"]);
});
