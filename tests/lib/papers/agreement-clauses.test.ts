import { describe, expect, test } from "vitest";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { clausesAgreed } from "#lib/agreements/frozen-terms.ts";
import {
  clauseLanguageOf,
  clausesBlocks,
  parameterLabel,
  parameterText,
  plainClauses,
} from "#lib/papers/agreement-clauses.ts";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { layOut } from "#lib/papers/layout.ts";
import { hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { collisions, fixedWidth, linesOf, strays } from "#tests/lib/papers/fixed-width.ts";

const terms = someTerms(4);

test("clauses stand below each other as they were agreed, under their number", () => {
  expect(plainClauses(terms).length).toBe(terms.clauses.length);
  expect(textOfBlocks(plainClauses(terms))).toContain("14 Recall and early return\nThe lender may recall");
});

test("numbers that do not apply are named", () => {
  const stated = terms.clauses.map(({ number }) => number);
  expect(stated).not.toContain(51);
  expect(textOfBlocks(clausesBlocks(terms, words))).toContain(
    "Numbers that do not apply to this loan: 50, 51.",
  );
});

describe("what differs from the standard terms", () => {
  test("is said to be nothing where nothing does", () => {
    expect(textOfBlocks(clausesBlocks(terms, words))).toContain(words.annexes.clauses.allStandard);
  });

  test("is a table of clause, parameter, what is set and the standard", () => {
    const own = someTerms(4, { parameters: { recallDays: 45, courier: "none" } });
    const text = textOfBlocks(clausesBlocks(own, words));
    expect(text).toContain("14\tRecall for own need, days\t45\t30");
    expect(text).toContain("32\tCourier\tnone is sent\ttravels with the specimens");
    expect(text).not.toContain(words.annexes.clauses.allStandard);
  });
});

describe("in two languages", () => {
  const both = someTerms(4, { languages: ["fr", "de"] });

  test("the clauses stand side by side, the ruling language on the left", () => {
    const text = textOfBlocks(clausesBlocks(both, words));
    expect(text).toContain("Français (this text rules)\tAllemand");
    expect(text).toContain("14 Rappel et retour anticipé\nLe prêteur peut rappeler");
    expect(text).toContain("\t14 Rückruf und frühe Rückgabe\nDer Verleiher kann");
    expect(clauseLanguageOf(both)).toBe(clausesIn.fr);
  });

  test("nothing leaves its column, nothing stands on anything else, and no word is lost", () => {
    const pages = layOut(
      agreementDocument({ terms: both, sha256: hashOf(both), signatures: [] }, words),
      fixedWidth,
    );
    expect(strays(pages)).toEqual([]);
    expect(pages.flatMap(collisions)).toEqual([]);
    const printed = pages.flatMap(linesOf).join("").replace(/\s/g, "");
    for (const code of ["fr", "de"])
      for (const { heading } of clausesAgreed(both, code))
        expect(printed).toContain(heading.slice(0, 12).replace(/\s/g, ""));
  });
});

test("a parameter that the library no longer knows is printed as it is", () => {
  expect(parameterLabel("oldDays", clausesIn.en)).toBe("oldDays");
  expect(parameterText("oldDays", 12, clausesIn.en)).toBe("12");
  expect(parameterText("oldDays", ["a"], clausesIn.en)).toBe('["a"]');
});
