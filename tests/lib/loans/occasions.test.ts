/** On which occasion a specimen of a loan is checked, and from which day on. */
import { describe, expect, test } from "vitest";
import { occasions } from "#lib/condition/schema.ts";
import { type CheckedLine, checkedLineOf, occasionFloor, occasionsFor } from "#lib/loans/occasions.ts";
import { lineStates } from "#lib/loans/schema.ts";

test("the house looks before it leaves and after it came home", () => {
  expect(occasionsFor("packed", false)[0]).toBe("out");
  expect(occasionsFor("resting at home", false)[0]).toBe("home");
});

test("who borrows looks at arrival, before departure and after an incident, and nowhere else", () => {
  expect(occasionsFor("at venue", true)).toEqual(["arrival", "departure", "incident"]);
  for (const state of lineStates)
    expect(occasionsFor(state, true).every((one) => ["arrival", "departure", "incident"].includes(one))).toBe(
      true,
    );
});

test("who borrows looks only at what is with them", () => {
  for (const state of ["accepted", "packed", "travelling out", "travelling home", "resting at home"] as const)
    expect(occasionsFor(state, true)).toEqual([]);
});

test("what lies in a closed crate has not arrived and is not home yet", () => {
  expect(occasionsFor("resting at venue", true)).toEqual(["incident"]);
  expect(occasionsFor("resting at venue", false)).toEqual(["incident"]);
  expect(occasionsFor("resting at home", false, true)).toEqual(["incident"]);
});

test("no check belongs to a loan that has not been decided or has ended", () => {
  for (const state of ["noted", "requested", "declined", "withdrawn", "closed", "missing"] as const)
    expect(occasionsFor(state, false)).toEqual([]);
});

describe("where a line stands", () => {
  const crate = (code: string, ...events: ["arrived" | "opened" | "sealed", string][]) => ({
    code,
    state: events.at(-1)?.[0] === "opened" ? ("opened" as const) : ("resting closed" as const),
    notBefore: "2026-03-09T10:00:00.000Z",
    contents: [{ specimenId: "hand" }],
    events: events.map(([kind, day]) => ({ kind, at: `2026-${day}T10:00:00.000Z` })),
  });
  const line = { specimenId: "hand", state: "resting at home", stateSince: "2026-05-01T09:00:00Z" } as const;
  const decisions = [
    { office: "donor officer", outcome: "accept", decidedAt: "2026-01-02T09:00:00Z" },
    { office: "curator", outcome: "accept", decidedAt: "2026-01-05T09:00:00Z" },
    { office: "conservator", outcome: "accept", decidedAt: "2026-01-20T09:00:00Z" },
  ];

  test("is told by its crate and by the curator's word", () => {
    const crates = [crate("1", ["arrived", "03-02"], ["opened", "03-04"], ["arrived", "05-01"])];
    expect(checkedLineOf(line, crates, decisions)).toEqual({
      state: "resting at home",
      stateSince: new Date("2026-05-01T09:00:00Z"),
      acceptedAt: new Date("2026-01-05T09:00:00Z"),
      arrivedAt: new Date("2026-05-01T10:00:00Z"),
      openedAt: new Date("2026-03-04T10:00:00Z"),
      closedCrate: { code: "1", notBefore: "2026-03-09T10:00:00.000Z" },
    });
  });

  test("is no longer in a closed crate once that was opened", () => {
    const crates = [crate("1", ["arrived", "05-01"], ["opened", "05-03"])];
    expect(checkedLineOf(line, crates, decisions)).toMatchObject({
      closedCrate: null,
      openedAt: new Date("2026-05-03T10:00:00Z"),
    });
  });

  test("is in no crate of others", () => {
    const other = { ...crate("2", ["arrived", "05-01"]), contents: [{ specimenId: "foot" }] };
    expect(checkedLineOf(line, [other], [])).toMatchObject({
      acceptedAt: null,
      arrivedAt: null,
      openedAt: null,
      closedCrate: null,
    });
  });
});

describe("the first day for an occasion", () => {
  const line: CheckedLine = {
    state: "at venue",
    stateSince: new Date("2026-03-04T10:00:00Z"),
    acceptedAt: new Date("2026-01-05T09:00:00Z"),
    arrivedAt: new Date("2026-03-02T10:00:00Z"),
    openedAt: new Date("2026-03-04T10:00:00Z"),
    closedCrate: null,
  };
  test.each([
    ["out", false, "2026-01-05", "check.before-accepted"],
    ["incident", false, "2026-01-05", "check.before-accepted"],
    ["incident", true, "2026-03-02", "check.before-arrived"],
    ["arrival", true, "2026-03-04", "check.before-opened"],
    ["departure", true, "2026-03-04", "check.before-opened"],
    ["home", false, "2026-03-04", "check.before-counted"],
  ] as const)("%s, by who borrows: %s", (occasion, byBorrower, day, code) =>
    expect(occasionFloor(occasion, line, byBorrower)).toEqual({ day, code }),
  );

  test("of what a loan does not give is not the loan's to say", () =>
    expect(occasionFloor("periodic", line, false)).toBeNull());

  test("is the day since when it stands there, where nothing else is known", () => {
    const bare = { ...line, acceptedAt: null, arrivedAt: null, openedAt: null };
    for (const occasion of occasions.filter((one) => one !== "periodic"))
      expect(occasionFloor(occasion, bare, true)?.day).toBe("2026-03-04");
  });
});
