/**
 * Words into lines no wider than their column. Lines are filled greedily; a word
 * that is wider than the whole column is broken, at a hyphen, slash or dot where
 * there is one in its latter half, else between letters, and never hyphenated, so
 * that a number or a hash reads the same. No letter is lost or added: the words of
 * the lines, in order, are the words that came in.
 */
import { type Text, toSpans } from "#lib/papers/blocks.ts";
import { emphasised, type Measure, type TextStyle } from "#lib/papers/sheet.ts";

/** Letters of one style that stand beside each other. */
export type Segment = { xPt: number; widthPt: number; text: string; style: TextStyle };
export type Line = { segments: readonly Segment[]; widthPt: number };

type Piece = { text: string; style: TextStyle };
type Word = Piece[];

/** Spaces that a line may break at; a no-break space holds its neighbours together. */
const breakingSpace = /[ \t\f\v\u1680\u2000-\u2006\u2008-\u200A\u205F\u3000]+/;
/** What nobody sees and no paper should hold: control characters, directions, joiners of nothing. */
const invisible =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
  /[\u0000-\u0008\u000E-\u001F\u007F-\u0084\u0086-\u009F\u00AD\u200B\u200E\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/g;
const lineEnd = /\r\n|[\r\n\u0085\u2028\u2029]/;

/** The text as it will be printed: composed letters, nothing invisible, no half of a pair. */
export function printedText(text: string): string {
  return text
    .normalize("NFC")
    .replace(/\p{Surrogate}/gu, "\uFFFD")
    .replace(invisible, "");
}

const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });
const lettersOf = (text: string): string[] => Array.from(graphemes.segment(text), ({ segment }) => segment);
const softBreak = /[-/\u2013\u2014.@_,;:]$/;

/** Lines of words; a word may change its style inside. */
function wordsOf(text: Text, style: TextStyle): Word[][] {
  const lines: Word[][] = [[]];
  let open: Word | null = null;
  for (const span of toSpans(text)) {
    const spanStyle = emphasised(style, span.emphasis);
    span.text.split(lineEnd).forEach((part, partIndex) => {
      if (partIndex > 0) {
        lines.push([]);
        open = null;
      }
      printedText(part)
        .split(breakingSpace)
        .forEach((word, wordIndex) => {
          if (wordIndex > 0) open = null;
          if (word === "") return;
          if (open === null) {
            open = [];
            lines.at(-1)?.push(open);
          }
          open.push({ text: word, style: spanStyle });
        });
    });
  }
  return lines.filter((words) => words.length > 0);
}

const sameStyle = (first: TextStyle, second: TextStyle) =>
  first.face === second.face && first.sizePt === second.sizePt && first.ink === second.ink;

/** Rounding of many small widths is no reason to break a line. */
const TOLERANCE_PT = 1e-6;

class LineBuilder {
  readonly lines: Line[] = [];
  private segments: Segment[] = [];
  private widthPt = 0;
  private readonly columnPt: number;
  private readonly measure: Measure;

  constructor(columnPt: number, measure: Measure) {
    this.columnPt = columnPt;
    this.measure = measure;
  }

  widthOf({ text, style }: Piece): number {
    return this.measure(text, style.face, style.sizePt);
  }

  private append(piece: Piece, pieceWidthPt: number): void {
    const last = this.segments.at(-1);
    if (last !== undefined && sameStyle(last.style, piece.style)) {
      last.text += piece.text;
      last.widthPt += pieceWidthPt;
    } else {
      this.segments.push({ xPt: this.widthPt, widthPt: pieceWidthPt, ...piece });
    }
    this.widthPt += pieceWidthPt;
  }

  endLine(): void {
    if (this.segments.length === 0) return;
    this.lines.push({ segments: this.segments, widthPt: this.widthPt });
    this.segments = [];
    this.widthPt = 0;
  }

  /** @param pieces one word */
  add(pieces: Word): void {
    const widths = pieces.map((piece) => this.widthOf(piece));
    const wordPt = widths.reduce((sum, width) => sum + width, 0);
    const last = this.segments.at(-1);
    const space = last === undefined ? null : { text: " ", style: last.style };
    const spacePt = space === null ? 0 : this.widthOf(space);
    if (space !== null && this.widthPt + spacePt + wordPt > this.columnPt + TOLERANCE_PT) this.endLine();
    else if (space !== null) this.append(space, spacePt);
    if (this.segments.length === 0 && wordPt > this.columnPt + TOLERANCE_PT) this.addBroken(pieces);
    else for (const [index, piece] of pieces.entries()) this.append(piece, widths[index] ?? 0);
  }

  /** A word wider than the column, over as many lines as it needs. */
  private addBroken(pieces: Word): void {
    let letters = pieces.flatMap(({ text, style }) =>
      lettersOf(text).map((letter) => ({ text: letter, style })),
    );
    while (letters.length > 0) {
      let count = 0;
      let widthPt = 0;
      for (const letter of letters) {
        const next = widthPt + this.widthOf(letter);
        if (count > 0 && next > this.columnPt + TOLERANCE_PT) break;
        widthPt = next;
        count += 1;
      }
      if (count < letters.length) count = this.softBreakWithin(letters, count);
      for (const letter of letters.slice(0, count)) this.append(letter, this.widthOf(letter));
      letters = letters.slice(count);
      if (letters.length > 0) this.endLine();
    }
  }

  private softBreakWithin(letters: readonly Piece[], most: number): number {
    for (let count = most; count > most / 2; count -= 1) {
      if (softBreak.test(letters[count - 1]?.text ?? "")) return count;
    }
    return most;
  }
}

/**
 * @param columnPt width of the column
 * @returns no line for no words
 * @throws {RangeError} for a column without width
 */
export function wrapText(text: Text, style: TextStyle, columnPt: number, measure: Measure): Line[] {
  if (!(columnPt > 0)) throw new RangeError("A column has a width.");
  const builder = new LineBuilder(columnPt, measure);
  for (const words of wordsOf(text, style)) {
    for (const word of words) builder.add(word);
    builder.endLine();
  }
  return builder.lines;
}

/** The width of some words on one line, and of the widest word among them. */
export function naturalWidths(
  text: Text,
  style: TextStyle,
  measure: Measure,
): { line: number; word: number } {
  const lines = wordsOf(text, style);
  const widthOf = (word: Word) =>
    word.reduce((sum, piece) => sum + measure(piece.text, piece.style.face, piece.style.sizePt), 0);
  const line = wrapText(text, style, Number.MAX_SAFE_INTEGER, measure).reduce(
    (widest, { widthPt }) => Math.max(widest, widthPt),
    0,
  );
  return { line, word: Math.max(0, ...lines.flat().map(widthOf)) };
}
