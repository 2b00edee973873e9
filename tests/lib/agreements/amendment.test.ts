import { describe, expect, test } from "vitest";
import { amendmentOf, type KeptVersion, keptOf } from "#lib/agreements/amendment.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import { agreementTerms } from "#lib/agreements/terms.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { termsFacts } from "#tests/lib/agreements/terms-facts.ts";

const terms = (said: Parameters<typeof termsFacts>[0] = {}) => agreementTerms(termsFacts(said));
const version = (number: number, of: CurrentTerms, signatures: number): KeptVersion => {
  const text = canonicalText(of);
  return { version: number, sha256: sha256Hex(text), terms: text, signatures };
};
const first = terms();
const later = terms({ parameters: { recallDays: 45 } });

describe("a new version", () => {
  test("amends nothing as long as nobody has signed", () => {
    expect(amendmentOf([], first)).toBeNull();
    expect(amendmentOf([version(1, first, 0)], later)).toBeNull();
  });

  test.each([1, 2])("amends what %i parties have signed, and says what differs", (signatures) => {
    const signed = version(1, first, signatures);
    expect(amendmentOf([signed], later)).toEqual({
      number: 1,
      version: 1,
      sha256: signed.sha256,
      differences: [{ path: ["parameter", "recallDays"], before: 30, after: 45 }],
      earlier: [{ version: 1, sha256: signed.sha256 }],
    });
  });

  test("amends the last signed version and not a draft after it", () => {
    const versions = [version(1, first, 2), version(2, later, 1), version(3, first, 0)];
    expect(amendmentOf(versions, later)).toMatchObject({
      number: 2,
      version: 2,
      differences: [],
      earlier: [{ version: 1 }, { version: 2 }],
    });
  });

  test("of a form that is no longer read says that the form differs", () => {
    const old = { version: 1, sha256: "a".repeat(64), terms: "{}", signatures: 2 };
    expect(amendmentOf([old], first)?.differences).toEqual([{ path: ["format"], before: null, after: null }]);
  });
});

describe("what the next version keeps", () => {
  test("is the languages and what was set otherwise than the standard", () => {
    const own = { recallDays: 45, creditLine: "Teaching collection" };
    expect(keptOf(terms({ parameters: own, languages: ["fr", "en"] }))).toEqual({
      languages: ["fr", "en"],
      parameters: own,
    });
  });

  test("is English and the standard where there is none yet", () => {
    expect(keptOf(null)).toEqual({ languages: ["en"], parameters: {} });
    expect(keptOf(first)).toEqual({ languages: ["en"], parameters: {} });
  });
});
