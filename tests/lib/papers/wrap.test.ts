import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Emphasis, Span } from "#lib/papers/blocks.ts";
import { styles } from "#lib/papers/sheet.ts";
import { naturalWidths, printedText, wrapText } from "#lib/papers/wrap.ts";
import { fixedWidth, withoutSpaces, wordsOf } from "#tests/lib/papers/fixed-width.ts";

/** A style in which a letter is 5 pt wide: a column of 50 pt holds ten. */
const style = { ...styles.body, sizePt: 10 };
const linesIn = (columnPt: number, text: Parameters<typeof wrapText>[0]) =>
  wrapText(text, style, columnPt, fixedWidth).map(({ segments }) =>
    segments.map((segment) => segment.text).join(""),
  );

describe("lines", () => {
  test.each([
    ["fill up to the column", "the arm and the hand", ["the arm", "and the", "hand"]],
    ["take a word that just fits", "1234567890 a", ["1234567890", "a"]],
    ["end at a line feed", "one\ntwo\r\nthree", ["one", "two", "three"]],
    ["drop empty lines and extra spaces", "  one   two \n\n ", ["one two"]],
    ["are none for no words", " \n ", []],
    ["hold what a no-break space holds", "ab 12\u00A0mm\u00A0by 3", ["ab", "12\u00A0mm\u00A0by 3"]],
    ["break a long word after a hyphen", "silicone-impregnated", ["silicone-", "impregnate", "d"]],
    [
      "break a long word without a hyphen where the column ends",
      "0123456789abcdef",
      ["0123456789", "abcdef"],
    ],
  ])("%s", (_name, text, lines) => {
    expect(linesIn(50, text)).toEqual(lines);
  });

  test("keep letters that are composed of several", () => {
    expect(linesIn(5, "e\u0301o\u0301")).toEqual(["é", "ó"]);
    expect(linesIn(5, "q\u0307q\u0307")).toEqual(["q\u0307", "q\u0307"]);
  });

  test("know where a change of style begins", () => {
    const [line] = wrapText(
      ["the ", { text: "cor", emphasis: "latin" as const }, "."].map(toSpan),
      style,
      200,
      fixedWidth,
    );
    expect(line?.segments.map(({ text, xPt, style: { face } }) => [text, xPt, face])).toEqual([
      ["the ", 0, "sans"],
      ["cor", 20, "serif italic"],
      [".", 35, "sans"],
    ]);
    expect(line?.widthPt).toBe(40);
  });

  test("refuse a column without width", () => {
    expect(() => wrapText("a", style, 0, fixedWidth)).toThrow(RangeError);
    expect(() => wrapText("a", style, Number.NaN, fixedWidth)).toThrow(RangeError);
  });
});

const toSpan = (part: string | Span): Span => (typeof part === "string" ? { text: part } : part);

test("what cannot be seen is not printed, and half of a pair is shown as such", () => {
  expect(printedText("a\u0000b\u200Bc\u202Ed\uD800")).toBe("abcd\uFFFD");
  expect(printedText("e\u0301")).toBe("é");
});

const anyText = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 200 }),
  fc
    .array(
      fc.constantFrom(
        "nervus",
        "medianus",
        "n.",
        "AN 2004.0100",
        "–",
        "a-very/long.word-of-the-trade",
        "\n",
        "µW/lm",
      ),
      { maxLength: 40 },
    )
    .map((words) => words.join(" ")),
);
const anySpans = fc.array(
  fc.record({ text: anyText, emphasis: fc.constantFrom<Emphasis>("strong", "latin", "code", "small") }),
  { maxLength: 5 },
);

test("no letter is lost, added or moved", () => {
  fc.assert(
    fc.property(anySpans, fc.integer({ min: 6, max: 400 }), (spans, columnPt) => {
      const lines = wrapText(spans, style, columnPt, fixedWidth);
      const printed = lines.map(({ segments }) => segments.map(({ text }) => text).join("")).join("\n");
      expect(withoutSpaces(printed)).toBe(withoutSpaces(wordsOf(spans).join("")));
    }),
  );
});

test("in a column that holds every word, the words come out one by one and in order", () => {
  fc.assert(
    fc.property(anyText, fc.integer({ min: 1, max: 3 }), (text, times) => {
      const columnPt = Math.max(1, naturalWidths(text, style, fixedWidth).word) * times;
      const printed = linesIn(columnPt, text).flatMap((line) => line.split(/\s+/));
      expect(printed.filter((word) => word !== "")).toEqual(wordsOf(text));
    }),
  );
});

test("no line is wider than its column, but for a single letter that is", () => {
  fc.assert(
    fc.property(anySpans, fc.integer({ min: 2, max: 400 }), (spans, columnPt) => {
      for (const { widthPt, segments } of wrapText(spans, style, columnPt, fixedWidth)) {
        const letters = [...new Intl.Segmenter("en").segment(segments.map(({ text }) => text).join(""))];
        if (letters.length > 1) expect(widthPt).toBeLessThanOrEqual(columnPt + 1e-6);
      }
    }),
  );
});

test("the natural widths are those of the longest line and the longest word", () => {
  expect(naturalWidths("one three\nfive", style, fixedWidth)).toEqual({ line: 45, word: 25 });
  expect(naturalWidths("", style, fixedWidth)).toEqual({ line: 0, word: 0 });
});
