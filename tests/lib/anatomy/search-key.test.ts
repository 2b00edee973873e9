/** Ways of writing one name that must have one key, and names that must not be taken for each other. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { foldedWords, rootKey, rootOf, searchKey, stemOf, withoutSide } from "#lib/anatomy/search-key.ts";

describe("one name, many ways of writing it", () => {
  test.each([
    ["case", ["Median Nerve", "median nerve", "MEDIAN NERVE"]],
    ["Latin and English share a stem", ["nervus medianus", "median nerve"]],
    ["abbreviation with and without its dot", ["n. medianus", "n medianus", "N. medianus", "medianus, n."]],
    ["cases and numbers", ["nervus medianus", "nervi mediani", "n. mediani", "nn. mediani"]],
    ["order of the words", ["plexus brachialis", "brachialis plexus", "brachial plexus"]],
    ["British and American spelling", ["oesophagus", "esophagus", "œsophagus", "Oesophagi"]],
    ["coeliac", ["coeliac trunk", "celiac trunk"]],
    ["fibre", ["fibre", "fiber", "fibers", "fibres"]],
    ["accents", ["Glisson capsule", "Glissón capsule", "capsule of Glisson", "Glisson's capsule"]],
    ["umlauts", ["Schläfenbein", "Schlaefenbein", "SCHLÄFENBEIN", "Schla\u0308fenbein"]],
    ["umlauts, further", ["Fußrückenarterie", "Fussrueckenarterie"]],
    ["German link words", ["Kopf der Bauchspeicheldrüse", "Bauchspeicheldrüse Kopf"]],
    ["older Latin letters", ["intestinum jejunum", "intestinum ieiunum"]],
    [
      "doubled abbreviation is a plural",
      ["aa. intercostales", "arteriae intercostales", "arteria intercostalis"],
    ],
    ["ligament", ["lig. cruciatum anterius", "ligamentum cruciatum anterius", "ligg. cruciata anterius"]],
    ["gland", ["gl. parotidea", "glandula parotidea"]],
    ["joint", ["art. genus", "articulatio genus", "articulationes genus"]],
    ["process", ["proc. mastoideus", "processus mastoideus"]],
    ["foramen", ["for. magnum", "foramen magnum"]],
    ["muscle", ["m. biceps brachii", "musculus biceps brachii", "mm. biceps brachii"]],
    ["vein", ["v. cava inferior", "vena cava inf.", "vv. cavae inferiores"]],
    ["branch", ["r. superficialis n. radialis", "ramus superficialis nervi radialis"]],
    ["link words", ["head of the femur", "head of femur", "femur head"]],
    ["hyphen", ["sacro-iliac joint", "sacro iliac joint"]],
    ["English plural", ["arteries", "artery", "arteria", "arteriae", "a. arteria"]],
    ["irregular plural", ["dens", "dentes", "dentis"]],
    ["tenth cranial nerve", ["X", "x", "CN X", "cn 10", "CNX", "n. X", "tenth nerve", "tenth cranial nerve"]],
    [
      "tenth cranial nerve, further",
      ["10th cranial nerve", "cranial nerve X", "nervus cranialis X", "X nervus", "(X)"],
    ],
    ["numeral behind the name", ["nervus vagus [X]", "nervus vagus", "n. vagus (X)", "CN X n. vagus"]],
  ])("%s", (_what, names) => {
    const keys = new Set(names.map(searchKey));
    expect(keys.size, [...keys].join(" / ")).toBe(1);
  });

  test.each(Array.from({ length: 12 }, (_, index) => index + 1))("cranial nerve %i", (number) => {
    const roman = ["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"][number - 1];
    for (const text of [roman, `CN ${roman}`, `n. ${roman}`, `CN ${number}`])
      expect(searchKey(text ?? "")).toBe(`cn${number}`);
  });
});

describe("names that are not the same", () => {
  test.each([
    ["ilium", "ileum"],
    ["ureter", "urethra"],
    ["vagus", "vagina"],
    ["first rib", "second rib"],
    ["first rib", "I"],
    ["malleus", "malleolus"],
    ["peroneal nerve", "perineal nerve"],
    ["humerus", "humerus head"],
    ["fourth ventricle", "IV"],
    ["vertebra C1", "vertebra C2"],
  ])("%s is not %s", (one, other) => expect(searchKey(one)).not.toBe(searchKey(other)));

  test("a number of a vertebra, a rib or a ventricle is not that of a nerve", () => {
    for (const text of ["tenth rib", "10", "T10", "rib X", "tenth"]) expect(searchKey(text)).not.toBe("cn10");
  });
});

test("a text without a letter or digit has the empty key", () => {
  for (const text of ["", "   ", "…", "-–—", "[]()"]) expect(searchKey(text)).toBe("");
});

test("the words keep their order and their endings", () => {
  expect(foldedWords("Nn. intercostales")).toEqual(["nervi", "intercostales"]);
  expect(foldedWords("a. thyroidea sup.")).toEqual(["arteria", "thiroidea", "superior"]);
});

test.each(["constructor", "toString", "__proto__ plexus"])("%s is a word like any other", (text) =>
  expect(foldedWords(text).length).toBeGreaterThan(0),
);

test("a single letter by itself is not an abbreviation", () => expect(foldedWords("a")).toEqual(["a"]));

describe("a noun and its adjective", () => {
  test.each([
    ["femoris", "femoral"],
    ["femur", "femoralis"],
    ["radius", "radial"],
    ["ulna", "ulnaris"],
    ["tibia", "tibial"],
    ["fibula", "fibular"],
    ["ilium", "iliac"],
    ["gaster", "gastric"],
    ["larynx", "laryngeal"],
    ["pharynx", "pharyngeal"],
    ["oesophagus", "oesophageal"],
    ["thorax", "thoracic"],
    ["cervix", "cervical"],
    ["meninx", "meningeal"],
  ])("%s and %s have one root", (noun, adjective) => {
    const [one] = foldedWords(noun);
    const [other] = foldedWords(adjective);
    expect(rootOf(one ?? "")).toBe(rootOf(other ?? ""));
  });

  test.each([
    ["ilium", "ileum"],
    ["tibia", "fibula"],
    ["vagus", "vagina"],
  ])("%s and %s have not", (one, other) => expect(rootOf(one)).not.toBe(rootOf(other)));

  test("the wider key minds no order and no repetition", () =>
    expect(rootKey(foldedWords("femoris artery"))).toBe(rootKey(foldedWords("arteria femoralis"))));
});

test("words of side are left out, others stay", () => {
  expect(withoutSide("left kidney")).toBe("kidney");
  expect(withoutSide("ren sinister")).toBe("ren");
  expect(withoutSide("a. renalis dextra")).toBe("a. renalis");
  expect(withoutSide("linke Niere")).toBe("Niere");
  expect(withoutSide("upper limb")).toBe("upper limb");
});

describe("whatever is typed", () => {
  test("the key holds only letters, digits and single blanks, in order", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const key = searchKey(text);
        expect(key).toMatch(/^(?:[\p{L}\p{N}]+(?: [\p{L}\p{N}]+)*)?$/u);
        expect(key.split(" ")).toEqual([...key.split(" ")].sort());
      }),
      { numRuns: 500 },
    );
  });

  test("neither case nor order of the words changes the key", () => {
    const word = fc.stringMatching(/^[a-z]{4,12}$/);
    fc.assert(
      fc.property(fc.array(word, { minLength: 2, maxLength: 5 }), (words) => {
        fc.pre(!words.some((item) => ["nerve", "nervus", "cranial"].includes(item)));
        expect(searchKey([...words].reverse().join(" "))).toBe(searchKey(words.join(" ").toUpperCase()));
      }),
    );
  });

  test("a stem is never shorter than three letters unless its word is, and never longer than its word", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z]{1,20}$/), (word) => {
        const stem = stemOf(word);
        expect(stem.length).toBeGreaterThanOrEqual(Math.min(3, word.length));
        expect(stem.length).toBeLessThanOrEqual(word.length);
      }),
    );
  });
});
