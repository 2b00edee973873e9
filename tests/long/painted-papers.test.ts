/** Every paper of 300 specimens with the longest names, on each sheet and in each language, judged from its painted file. */
import { describe, expect, test } from "vitest";
import { paperLanguages } from "#lib/papers/languages.ts";
import { paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { longestPaper } from "#tests/lib/papers/longest-papers.ts";

describe.each(paperKinds)("%s", (kind) => {
  describe.each(paperLanguages)("in %s", (language) => {
    test.each(paperSizes)(
      "on %s is clipped, orphaned and overprinted nowhere, and loses no letter",
      async (size) => {
        const { faults, lost } = await longestPaper(kind, language, size);
        expect(faults).toEqual([]);
        expect(lost).toEqual([]);
      },
    );
  });
});
