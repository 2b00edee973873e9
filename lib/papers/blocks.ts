/**
 * What a paper is made of, before anyone asks where it stands: a title, headings,
 * paragraphs, clauses, tables, places for signatures. Plain values in the reader's
 * language; layout measures them and gives them a place, and loses no word of them.
 */

/** `latin` is for Latin names, `code` for numbers that are read letter by letter. */
export type Emphasis = "strong" | "latin" | "code" | "quiet" | "small" | "small latin";

export type Span = { text: string; emphasis?: Emphasis };
/** Words with or without emphasis inside. A line feed begins a new line. */
export type Text = string | readonly Span[];

/** One cell of a table: some words, or several paragraphs below each other. */
export type Cell = Text | { paragraphs: readonly Text[] };

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
  | { kind: "columns"; columns: readonly { heading: string; lines: readonly Text[] }[] }
  | {
      kind: "table";
      columns: readonly TableColumn[];
      rows: readonly (readonly Cell[])[];
      /** A last row under a rule; it stays with the row before it. */
      total?: readonly Cell[];
    }
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
};

export const toSpans = (text: Text): readonly Span[] => (typeof text === "string" ? [{ text }] : text);

export function paragraphsOf(cell: Cell): readonly Text[] {
  return typeof cell === "object" && "paragraphs" in cell ? cell.paragraphs : [cell];
}
