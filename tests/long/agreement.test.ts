/** The agreement of 300 specimens with every clause at its longest, in one language and in two, judged from its painted file. */
import { describe, expect, test } from "vitest";
import { clauseIds } from "#lib/agreements/clauses/library.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { judgeAgreement, longestTerms } from "#tests/lib/papers/longest-agreement.ts";

describe.each([[["en"]], [["de"]], [["fr"]], [["en", "de"]], [["de", "fr"]], [["fr", "en"]]] as const)(
  "in %j",
  (languages) => {
    const terms = longestTerms(languages);

    test("holds every clause of the library and every specimen", () => {
      expect(terms.clauses).toHaveLength(clauseIds.length);
      expect(terms.schedule).toHaveLength(300);
    });

    test.each(paperSizes)(
      "on %s is clipped, orphaned and overprinted nowhere, and loses no letter",
      async (size) => {
        const { faults, lost } = await judgeAgreement(terms, size);
        expect(faults).toEqual([]);
        expect(lost).toEqual([]);
      },
    );
  },
);
