/**
 * The structure tree into the file: which marked piece of which page belongs to
 * which node, what a figure shows in words, which cells are headers, and the outline
 * that a reader's side bar shows. Operators and dictionaries after PDF 32000-1:2008,
 * 14.6 to 14.8 and 12.3.3 (from memory). Every piece of a page is either in the tree
 * or an artifact; a node without any piece is left out unless it is a cell.
 */
import { type PDFDict, type PDFDocument, PDFHexString, PDFName, type PDFPage, type PDFRef } from "pdf-lib";
import type { StructureNode } from "#lib/papers/structure.ts";

/** One marked piece: on this page, under this number. */
type Piece = { page: number; mark: number };

export type OutlineEntry = { level: number; text: string; page: number; topPt: number };

/** Collects, while pages are painted, which piece belongs to which node. */
export class Tags {
  private readonly pieces = new Map<StructureNode, Piece[]>();
  private readonly marksOfPage: StructureNode[][] = [];
  private readonly boxes = new Map<StructureNode, readonly [number, number, number, number]>();

  /** @returns the number of the new piece on its page */
  mark(node: StructureNode, page: number): number {
    const marks = this.marksOfPage[page] ?? [];
    this.marksOfPage[page] = marks;
    const mark = marks.push(node) - 1;
    const pieces = this.pieces.get(node) ?? [];
    pieces.push({ page, mark });
    this.pieces.set(node, pieces);
    return mark;
  }

  /** Where a figure stands, from the lower left corner of its page. */
  frame(node: StructureNode, box: readonly [number, number, number, number]): void {
    this.boxes.set(node, box);
  }

  private isSaid(node: StructureNode): boolean {
    return (
      node.tag === "TD" ||
      node.tag === "TH" ||
      this.pieces.has(node) ||
      node.children.some((child) => this.isSaid(child))
    );
  }

  /** Writes the tree below the document's catalogue. */
  write(document: PDFDocument, root: StructureNode): void {
    const { context, catalog } = document;
    const pages = document.getPages();
    const treeRef = context.nextRef();
    const refs = new Map<StructureNode, PDFRef>();
    const refOf = (node: StructureNode): PDFRef => {
      const known = refs.get(node) ?? context.nextRef();
      refs.set(node, known);
      return known;
    };
    const write = (node: StructureNode, parent: PDFRef): PDFRef => {
      const ref = refOf(node);
      const pieces = (this.pieces.get(node) ?? []).map(({ page, mark }) =>
        context.obj({ Type: "MCR", Pg: pageRef(pages, page), MCID: mark }),
      );
      const children = node.children.filter((child) => this.isSaid(child)).map((child) => write(child, ref));
      const entry = context.obj({ Type: "StructElem", S: node.tag, P: parent, K: [...pieces, ...children] });
      if (node.alternative !== null) entry.set(PDFName.of("Alt"), PDFHexString.fromText(node.alternative));
      const attributes = this.attributesOf(node, document);
      if (attributes !== null) entry.set(PDFName.of("A"), attributes);
      context.assign(ref, entry);
      return ref;
    };
    const rootRef = write(root, treeRef);
    const numbers = pages.flatMap((page, index) => {
      page.node.set(PDFName.of("StructParents"), context.obj(index));
      page.node.set(PDFName.of("Tabs"), PDFName.of("S"));
      return [context.obj(index), context.register(context.obj((this.marksOfPage[index] ?? []).map(refOf)))];
    });
    context.assign(
      treeRef,
      context.obj({
        Type: "StructTreeRoot",
        K: rootRef,
        ParentTree: context.register(context.obj({ Nums: numbers })),
        ParentTreeNextKey: pages.length,
      }),
    );
    catalog.set(PDFName.of("StructTreeRoot"), treeRef);
    catalog.set(PDFName.of("MarkInfo"), context.obj({ Marked: true }));
  }

  private attributesOf(node: StructureNode, { context }: PDFDocument): PDFDict | null {
    if (node.tag === "TH") return context.obj({ O: "Table", Scope: "Column" });
    const box = this.boxes.get(node);
    return box === undefined ? null : context.obj({ O: "Layout", Placement: "Block", BBox: [...box] });
  }
}

function pageRef(pages: readonly PDFPage[], index: number): PDFRef {
  const page = pages[index];
  if (page === undefined) throw new RangeError("A marked piece stands on no page.");
  return page.ref;
}

type OutlineItem = { entry: OutlineEntry; children: OutlineItem[] };

/** Entries of level 2 at the top, what follows at level 3 below them. */
export function outlineOf(entries: readonly OutlineEntry[]): OutlineItem[] {
  const top: OutlineItem[] = [];
  for (const entry of entries.filter(({ level }) => level > 1)) {
    const above = top.at(-1);
    const item = { entry, children: [] };
    if (entry.level === 2 || above === undefined) top.push(item);
    else above.children.push(item);
  }
  return top;
}

/** Writes the outline; a paper without headings has none. */
export function writeOutline(document: PDFDocument, entries: readonly OutlineEntry[]): void {
  const { context, catalog } = document;
  const pages = document.getPages();
  const items = outlineOf(entries);
  if (items.length === 0) return;
  const countOf = (list: readonly OutlineItem[]): number =>
    list.reduce((sum, { children }) => sum + 1 + countOf(children), 0);
  const write = (list: readonly OutlineItem[], parent: PDFRef): { First: PDFRef; Last: PDFRef } | null => {
    const refs = list.map(() => context.nextRef());
    const [first, last] = [refs.at(0), refs.at(-1)];
    list.forEach(({ entry, children }, index) => {
      const ref = refs[index];
      if (ref === undefined) return;
      const below = write(children, ref);
      const [before, after] = [refs[index - 1], refs[index + 1]];
      const item = context.obj({
        Parent: parent,
        Dest: [pageRef(pages, entry.page), "XYZ", null, entry.topPt, null],
        ...(before === undefined ? {} : { Prev: before }),
        ...(after === undefined ? {} : { Next: after }),
        ...(below === null ? {} : { ...below, Count: -countOf(children) }),
      });
      item.set(PDFName.of("Title"), PDFHexString.fromText(entry.text));
      context.assign(ref, item);
    });
    return first === undefined || last === undefined ? null : { First: first, Last: last };
  };
  const outlineRef = context.nextRef();
  const ends = write(items, outlineRef);
  if (ends === null) return;
  context.assign(outlineRef, context.obj({ Type: "Outlines", ...ends, Count: items.length }));
  catalog.set(PDFName.of("Outlines"), outlineRef);
}
