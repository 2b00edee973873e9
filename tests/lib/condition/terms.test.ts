import { describe, expect, test } from "vitest";
import {
  findingGroupNames,
  findingGroups,
  findingTerms,
  findingWord,
  groupOf,
  groupsFor,
  termsFor,
} from "#lib/condition/terms.ts";
import { preparationCodes } from "#lib/environment/schema.ts";

test("every term belongs to a group and has a word, no word means two things", () => {
  for (const term of findingTerms) {
    expect(findingGroups).toContain(groupOf(term));
    expect(term).toMatch(/^[a-z]+\.[a-z-]+$/);
  }
  const words = findingTerms.map(findingWord);
  const repeated = words.filter((word, index) => words.indexOf(word) !== index);
  expect(repeated).toEqual([]);
});

test("every group has terms and a name", () => {
  for (const group of findingGroups) {
    expect(findingTerms.some((term) => groupOf(term) === group)).toBe(true);
    expect(findingGroupNames[group].length).toBeGreaterThan(0);
  }
});

describe("which words are asked of which preparation", () => {
  test.each(preparationCodes)("%s is asked something, each term once", (code) => {
    const terms = termsFor(code);
    expect(terms.length).toBeGreaterThan(5);
    expect(new Set(terms).size).toBe(terms.length);
    expect(new Set(terms.map(groupOf))).toEqual(new Set(groupsFor(code)));
  });

  test("a sheet is asked for yellowing, a jar for its level, a slide for neither", () => {
    expect(termsFor("epoxy-sheet")).toContain("sheet.yellowing");
    expect(termsFor("alcohol-jar")).toContain("fluid.level-low");
    expect(termsFor("slide").map(groupOf)).not.toContain("sheet");
    expect(termsFor("slide").map(groupOf)).not.toContain("fluid");
  });

  test("every group is asked of some preparation", () => {
    const asked = new Set(preparationCodes.flatMap((code) => groupsFor(code)));
    expect(asked).toEqual(new Set(findingGroups));
  });
});
