import { expect, test } from "vitest";
import { ruleSources } from "#lib/loans/rules/rule-sources.ts";

test("every source says how well it is known", () => {
  for (const [rule, source] of Object.entries(ruleSources)) {
    expect(source, rule).toMatch(
      /read|from memory|no source|worked out|Worked out|curator's word|names its own source/,
    );
  }
});
