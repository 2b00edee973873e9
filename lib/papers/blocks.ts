/**
 * What a paper is made of, before anyone asks where it stands: a title, headings,
 * paragraphs, clauses, tables, places for signatures. Plain values in the reader's
 * language; layout measures them and gives them a place, and loses no word of them.
 */

import type { Figure } from "#lib/papers/drawing.ts";

/** `latin` is for Latin names, `code` for numbers that are read letter by letter. */
export type Emphasis = "strong" | "latin" | "code" | "quiet" | "small" | "small latin";

export type Span = { text: string; emphasis?: Emphasis };
/** Words with or without emphasis inside. A line feed begins a new line. */
export type Text = string | readonly Span[];

/** One cell of a table: some words, several paragraphs below each other with or without a figure below them, or a figure. */
export type Cell = Text | { paragraphs: readonly Text[]; figure?: Figure } | { figure: Figure };

export type ColumnAlign = "left" | "right" | "decimal";

export type TableColumn = {
  header: string;
  align: ColumnAlign;
  /** As wide as what stands in it, or a share of what the others leave. */
  width: "fit" | { share: number };
};

export type SignaturePlace = {
  /** For whom, e.g. "For the lender". */
  party: string;
  organisation: string;
  /** What stands on the line: the signer's name, or nothing yet. */
  signedBy: string | null;
  /** A name that was drawn stands on the line in its place. */
  drawn?: Figure;
  lineLabel: string;
  /** Name, role, time, hash; a null stays a blank to be filled in. */
  facts: readonly { label: string; value: Text | null }[];
};

export type Block =
  | { kind: "title"; overline: string; title: Text; lines: readonly Text[] }
  | { kind: "heading"; mark: string; text: string }
  | { kind: "subheading"; text: string }
  /** A lead stays on the page with what it leads to. */
  | { kind: "paragraph"; text: Text; isLead?: boolean }
  | { kind: "note"; text: Text }
  | { kind: "clause"; mark: string; heading: string; text: Text }
  | { kind: "definitions"; rows: readonly { term: string; paragraphs: readonly Text[] }[] }
  /** Large is for labels, which are read from a distance. */
  | {
      kind: "columns";
      columns: readonly { heading: string; lines: readonly Text[] }[];
      look?: "large";
    }
  | {
      kind: "table";
      columns: readonly TableColumn[];
      rows: readonly (readonly Cell[])[];
      /** A last row under a rule; it stays with the row before it. */
      total?: readonly Cell[];
    }
  /** The title of a label. */
  | { kind: "display"; text: Text }
  /** A sentence that nobody may overlook. */
  | { kind: "notice"; text: Text }
  /** Figures beside each other, each with its caption; as many in a row as there is room for. */
  | { kind: "figures"; figures: readonly { figure: Figure; caption: Text }[]; cellPt: number }
  /** A figure with lines beside it; it may stay on the page of what stands before it, or of its last row. */
  | { kind: "beside"; figure: Figure; lines: readonly Text[]; staysWithPrevious?: boolean }
  /** Places to write on by hand, or what is known already; so many in a row. */
  | { kind: "fields"; fields: readonly { label: string; value: Text | null }[]; perRow: number }
  | { kind: "signatures"; places: readonly SignaturePlace[] }
  | { kind: "page-break" }
  /** Stays on one page as long as one page holds it. */
  | { kind: "together"; blocks: readonly Block[] };

/** A whole paper. The head and the foot stand on every page. */
export type PaperDocument = {
  head: { left: string; right: string };
  /** `pageOf` holds {page} and {pages}. */
  foot: { left: Text; pageOf: string };
  blocks: readonly Block[];
  /** How the language of the paper writes figures; a point where nothing is said. */
  decimalMark?: string;
  /** The same set smaller, where it does not stand on one page and should. */
  smaller?: PaperDocument;
};

export const toSpans = (text: Text): readonly Span[] => (typeof text === "string" ? [{ text }] : text);

export function figureIn(cell: Cell): Figure | null {
  return typeof cell === "object" && "figure" in cell ? (cell.figure ?? null) : null;
}

export function paragraphsOf(cell: Cell): readonly Text[] {
  if (typeof cell === "object" && "paragraphs" in cell) return cell.paragraphs;
  return typeof cell === "object" && "figure" in cell ? [] : [cell];
}
