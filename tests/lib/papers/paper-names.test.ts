import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperName } from "#lib/papers/paper-names.ts";

test("every kind of paper has a name of its own", () => {
  const names = paperKinds.map((kind) => paperName(kind, englishPaper));
  expect(new Set(names).size).toBe(paperKinds.length);
  expect(names).toContain("Cost statement");
});
