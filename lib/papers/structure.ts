/**
 * What a paper is made of for who hears it read: the tree of headings, paragraphs,
 * lists, tables and figures that a tagged PDF carries (PDF 32000-1:2008, 14.8.4, from
 * memory). Layout grows the tree while it measures, each placed word names the node
 * that it belongs to, and what belongs to none is an artifact: rules, running heads,
 * the header of a table said once more. Invariant: a node stands below its parent.
 */

export type StructureTag =
  | "Document"
  | "Div"
  | "H1"
  | "H2"
  | "H3"
  | "P"
  | "L"
  | "LI"
  | "Lbl"
  | "LBody"
  | "Table"
  | "THead"
  | "TBody"
  | "TR"
  | "TH"
  | "TD"
  | "Figure";

export type StructureNode = {
  tag: StructureTag;
  parent: StructureNode | null;
  children: StructureNode[];
  /** Of a figure, what it shows. */
  alternative: string | null;
};

export function documentNode(): StructureNode {
  return { tag: "Document", parent: null, children: [], alternative: null };
}

/** A new last child. */
export function nodeUnder(
  parent: StructureNode,
  tag: StructureTag,
  alternative: string | null = null,
): StructureNode {
  const node: StructureNode = { tag, parent, children: [], alternative };
  parent.children.push(node);
  return node;
}

/** One node for each text. */
export function nodesUnder(
  parent: StructureNode,
  tag: StructureTag,
  texts: readonly unknown[],
): StructureNode[] {
  return texts.map(() => nodeUnder(parent, tag));
}

export function rootOf(node: StructureNode): StructureNode {
  let root = node;
  while (root.parent !== null) root = root.parent;
  return root;
}
