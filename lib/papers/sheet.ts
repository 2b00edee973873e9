/**
 * The sheet that papers are printed on: A4 or Letter, generous margins, one type
 * scale, few inks. All measures are points (1/72 inch) from the upper left corner. Headings
 * and Latin names are set in the serif, running text in the sans, numbers that are
 * read letter by letter in the mono.
 */
import type { Emphasis } from "#lib/papers/blocks.ts";

export const faces = [
  "sans",
  "sans bold",
  "sans italic",
  "serif",
  "serif bold",
  "serif italic",
  "mono",
] as const;
export type Face = (typeof faces)[number];

export const inks = {
  ink: "#1D2326",
  quiet: "#5B6469",
  accent: "#1B5E63",
  rule: "#B9B5A9",
  black: "#000000",
  shade: "#E4E1D8",
  white: "#FFFFFF",
} as const;
export type Ink = keyof typeof inks;

export type TextStyle = { face: Face; sizePt: number; leadingPt: number; ink: Ink };

/** How wide some words are. Given from outside, so that layout needs no font. */
export type Measure = (text: string, face: Face, sizePt: number) => number;

/** A sheet with its margins. The text stands between top and bottom; head and foot stand outside. */
export type Sheet = {
  widthPt: number;
  heightPt: number;
  leftPt: number;
  rightPt: number;
  topPt: number;
  bottomPt: number;
  headBaselinePt: number;
  headRulePt: number;
  footRulePt: number;
  footBaselinePt: number;
};

export const paperSizes = ["a4", "letter"] as const;
export type PaperSize = (typeof paperSizes)[number];

function sheetOf(widthPt: number, heightPt: number): Sheet {
  return {
    widthPt,
    heightPt,
    leftPt: 64,
    rightPt: widthPt - 60,
    topPt: 88,
    bottomPt: heightPt - 82,
    headBaselinePt: 54,
    headRulePt: 62,
    footRulePt: heightPt - 62,
    footBaselinePt: heightPt - 48,
  };
}

/** A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 in (from memory). */
export const sheets: Readonly<Record<PaperSize, Sheet>> = {
  a4: sheetOf(595.28, 841.89),
  letter: sheetOf(612, 792),
};

export const sheet: Sheet = sheets.a4;

export const bodyWidthOf = ({ leftPt, rightPt }: Sheet): number => rightPt - leftPt;
export const bodyHeightOf = ({ topPt, bottomPt }: Sheet): number => bottomPt - topPt;
export const bodyWidthPt = bodyWidthOf(sheet);
export const bodyHeightPt = bodyHeightOf(sheet);

/** Terms and clause headings stand in a margin column, their text beside it. */
export const marginColumnPt = 118;
export const marginGapPt = 16;

export const styles = {
  overline: { face: "serif italic", sizePt: 12, leadingPt: 17, ink: "accent" },
  title: { face: "serif", sizePt: 21, leadingPt: 27, ink: "ink" },
  heading: { face: "serif", sizePt: 12.5, leadingPt: 17, ink: "ink" },
  mark: { face: "serif", sizePt: 12.5, leadingPt: 17, ink: "accent" },
  subheading: { face: "serif italic", sizePt: 9.6, leadingPt: 13, ink: "ink" },
  body: { face: "sans", sizePt: 8.4, leadingPt: 12.4, ink: "ink" },
  note: { face: "sans", sizePt: 7.6, leadingPt: 11, ink: "quiet" },
  term: { face: "sans", sizePt: 8.4, leadingPt: 12.4, ink: "quiet" },
  clauseHeading: { face: "serif", sizePt: 8.8, leadingPt: 12.4, ink: "ink" },
  clauseMark: { face: "serif", sizePt: 8.8, leadingPt: 12.4, ink: "accent" },
  cell: { face: "sans", sizePt: 7.8, leadingPt: 10.8, ink: "ink" },
  columnHeader: { face: "sans", sizePt: 6.9, leadingPt: 9, ink: "quiet" },
  running: { face: "sans", sizePt: 7, leadingPt: 9, ink: "quiet" },
  /** On a label, read from a distance. */
  display: { face: "serif", sizePt: 34, leadingPt: 40, ink: "black" },
  largeTerm: { face: "sans", sizePt: 9.5, leadingPt: 14, ink: "quiet" },
  large: { face: "sans", sizePt: 13, leadingPt: 18, ink: "black" },
  notice: { face: "sans bold", sizePt: 15, leadingPt: 20, ink: "black" },
  caption: { face: "sans", sizePt: 7.2, leadingPt: 9.6, ink: "quiet" },
  signedName: { face: "serif", sizePt: 11, leadingPt: 15, ink: "ink" },
} as const satisfies Record<string, TextStyle>;

/** DejaVu's mono is wider and larger to the eye than its sans at one size. */
const MONO_SCALE = 0.9;
const SMALL_SCALE = 0.9;

/** A style with its emphasis; the leading stays, so that lines keep their distance. */
export function emphasised(style: TextStyle, emphasis: Emphasis | undefined): TextStyle {
  switch (emphasis) {
    case undefined:
      return style;
    case "strong":
      return { ...style, face: style.face.startsWith("serif") ? "serif bold" : "sans bold" };
    case "latin":
      return { ...style, face: "serif italic" };
    case "code":
      return { ...style, face: "mono", sizePt: style.sizePt * MONO_SCALE };
    case "quiet":
      return { ...style, ink: "quiet" };
    case "small latin":
      return { ...style, face: "serif italic", sizePt: style.sizePt * SMALL_SCALE, ink: "quiet" };
    case "small":
      return { ...style, sizePt: style.sizePt * SMALL_SCALE, ink: "quiet" };
  }
}

/** Where letters stand in a line of their leading, from its top. */
export function baselineOf({ leadingPt, sizePt }: Pick<TextStyle, "leadingPt" | "sizePt">): number {
  return leadingPt / 2 + sizePt * 0.34;
}
