import { describe, expect, test } from "vitest";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import {
  dayWords,
  moneyWords,
  numberWords,
  valueWords,
  writeClause,
} from "#lib/agreements/clauses/written-clause.ts";

const { en, de, fr } = clausesIn;

describe("a value in words", () => {
  test.each([
    ["recallDays", 1_500, ["1,500", "1.500", "1\u00A0500"]],
    ["uvMicrowattPerLumen", 7.5, ["7.5", "7,5", "7,5"]],
    ["startsOn", "2027-03-01", ["1 March 2027", "1. März 2027", "1er mars 2027"]],
    ["startsOn", "2027-03-11", ["11 March 2027", "11. März 2027", "11 mars 2027"]],
    [
      "coverNeeded",
      { minor: 1_234_500, currency: "EUR" },
      ["12,345.00 EUR", "12.345,00 EUR", "12\u00A0345,00 EUR"],
    ],
    [
      "fee",
      { minor: 1_234_500, currency: "JPY" },
      ["1,234,500 JPY", "1.234.500 JPY", "1\u00A0234\u00A0500 JPY"],
    ],
    ["borderTo", "DE", ["Germany", "Deutschland", "Allemagne"]],
    ["coverCountries", ["NO", "IE"], ["Norway and Ireland", "Norwegen und Irland", "Norvège et Irlande"]],
    ["consentCountries", null, ["no limit stated", "keine Grenze angegeben", "aucune limite indiquée"]],
    ["consentEndsOn", null, ["no limit stated", "keine Grenze angegeben", "aucune limite indiquée"]],
    ["fee", null, ["not stated", "nicht angegeben", "non indiqué"]],
    ["pictures", [], ["none", "keine", "aucun"]],
    [
      "fluids",
      [{ name: "ethanol", percent: 70 }],
      ["ethanol 70\u00A0%", "Ethanol 70\u00A0%", "éthanol 70\u00A0%"],
    ],
    ["rulingLanguage", "fr", ["French", "Französisch", "français"]],
    ["courier", "by video", ["attends by video", "ist über Video zugegen", "assiste par vidéo"]],
    ["rooms", "Room 4", ["Room 4", "Room 4", "Room 4"]],
    ["lenderRegister", " ", ["not stated", "nicht angegeben", "non indiqué"]],
    [
      "licencesHeld",
      [{ kind: "anatomy", authority: "Town", number: "7", validUntil: "2028-01-01" }],
      [
        "7 of Town, valid until 1 January 2028",
        "7 (Town), gültig bis 1. Januar 2028",
        "7 (Town), valable jusqu’au 1er janvier 2028",
      ],
    ],
  ] as const)("%s %j", (name, value, words) => {
    const said = structuredClone(value) as Parameters<typeof valueWords>[1];
    expect([en, de, fr].map((language) => valueWords(name, said, language))).toEqual(words);
  });

  test("is the lender's own standard words where the parties have none", () => {
    expect(valueWords("rooms", "", de)).toBe(de.standardWords.rooms);
  });
});

test("a number agrees with its word in each language", () => {
  const values = { extensionRequestDays: 1, extensionAnswerDays: 0, loanMaxMonths: 2 };
  const texts = [en, de, fr].map((language) => writeClause("extension", values, language).text);
  for (const [index, words] of [
    ["1\u00A0day before", "0\u00A0days", "2\u00A0months"],
    ["1\u00A0Tag vor", "0\u00A0Tagen", "2\u00A0Monate"],
    ["1\u00A0jour avant", "0\u00A0jour.", "2\u00A0mois"],
  ].entries())
    for (const word of words) expect(texts[index]).toContain(word);
});

test("a clause with nothing to fill a word with is refused", () => {
  expect(() => writeClause("extension", {}, en)).toThrow(RangeError);
});

test.each([
  [{ minor: 1_234_500, currency: "EUR" }, "12,345.00 EUR"],
  [{ minor: 1_234_500, currency: "JPY" }, "1,234,500 JPY"],
  [{ minor: 1_234_500, currency: "HUF" }, "12,345.00 HUF"],
  [{ minor: 1_234_500, currency: "KWD" }, "1,234.500 KWD"],
] as const)("%j is written %s", (money, text) => {
  expect(moneyWords(money, en)).toBe(text);
});

test("days and figures are written in the way of the language", () => {
  expect(dayWords("2028-02-29", en)).toBe("29 February 2028");
  expect(numberWords(1_234.5, de)).toBe("1.234,5");
});
