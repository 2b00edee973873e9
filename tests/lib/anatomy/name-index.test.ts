/** Which names are worth weighing for a typed text. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Candidate, indexNames, literalNames, nearNames, readTyped } from "#lib/anatomy/name-index.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";

const name = (text: string): Candidate => ({
  structureId: text,
  text,
  kind: "preferred",
  searchKey: searchKey(text),
  animal: false,
});
const texts = [
  "vagus nerve",
  "nervus medianus",
  "femoral artery",
  "arteria femoralis",
  "Schläfenbein",
  "heart",
  "X",
];
const index = indexNames(texts.map(name));
const literal = (text: string) => literalNames(index, readTyped(text)).map(({ row }) => row.text);
const near = (text: string) => nearNames(index, readTyped(text)).map(({ row }) => row.text);

describe("as it is written", () => {
  test.each([
    ["n. medianus", ["nervus medianus"]],
    ["femoris artery", ["femoral artery", "arteria femoralis"]],
    ["fem", ["femoral artery", "arteria femoralis"]],
    ["fem art", ["femoral artery", "arteria femoralis"]],
    ["Schlaefenbein", ["Schläfenbein"]],
    ["X", ["X"]],
    ["hart", []],
    ["artery nerve", []],
    ["…", []],
  ])("%j meets %j", (text, found) => expect(literal(text).sort()).toEqual([...found].sort()));
});

describe("with slips of the hand", () => {
  test.each([
    ["hart", "heart"],
    ["vegus nrve", "vagus nerve"],
    ["Schlafenbein", "Schläfenbein"],
    ["femorla", "femoral artery"],
  ])("%j meets %j", (text, found) => expect(near(text)).toContain(found));

  test.each(["hip", "kidney", "heart nerve", ""])("%j meets nothing", (text) =>
    expect(near(text)).toEqual([]),
  );
});

test("every name is found by itself, and with one letter of a long word left out", () => {
  fc.assert(
    fc.property(fc.constantFrom(...texts.filter((text) => text.length > 4)), fc.nat(), (text, seed) => {
      expect(literal(text)).toContain(text);
      const word = Math.max(0, text.lastIndexOf(" ") + 1);
      const at = word + (seed % (text.length - word));
      expect(near(text.slice(0, at) + text.slice(at + 1))).toContain(text);
    }),
  );
});
