/** What blocks say, as one text: for tests that ask whether something is said and not where. */
import { type Block, type Cell, paragraphsOf, type Text, toSpans } from "#lib/papers/blocks.ts";

export const plain = (text: Text) =>
  toSpans(text)
    .map((span) => span.text)
    .join("");
export const cellText = (cell: Cell | undefined) =>
  paragraphsOf(cell ?? "")
    .map(plain)
    .join("\n")
    .normalize("NFKC");

export function blockText(block: Block): string {
  switch (block.kind) {
    case "title":
      return [block.overline, plain(block.title), ...block.lines.map(plain)].join("\n");
    case "heading":
      return `${block.mark} ${block.text}`;
    case "subheading":
      return block.text;
    case "paragraph":
    case "note":
      return plain(block.text);
    case "clause":
      return `${block.mark} ${block.heading}\n${plain(block.text)}`;
    case "definitions":
      return block.rows.map(({ term, paragraphs }) => [term, ...paragraphs.map(plain)].join("\n")).join("\n");
    case "columns":
      return block.columns.map(({ heading, lines }) => [heading, ...lines.map(plain)].join("\n")).join("\n");
    case "table":
      return [block.columns.map(({ header }) => header), ...block.rows, block.total ?? []]
        .map((row) => row.map(cellText).join("\t"))
        .join("\n");
    case "signatures":
      return block.places
        .map(({ party, organisation, signedBy, facts }) =>
          [
            party,
            organisation,
            signedBy ?? "",
            ...facts.map(({ label, value }) => `${label} ${plain(value ?? "")}`),
          ].join("\n"),
        )
        .join("\n");
    case "display":
    case "notice":
      return plain(block.text);
    case "figures":
      return block.figures
        .map(({ figure, caption }) => `${figure.alternative}\n${plain(caption)}`)
        .join("\n");
    case "beside":
      return [block.figure.alternative, ...block.lines.map(plain)].join("\n");
    case "fields":
      return block.fields.map(({ label, value }) => `${label} ${plain(value ?? "")}`).join("\n");
    case "page-break":
      return "";
    case "together":
      return textOfBlocks(block.blocks);
  }
}

export const textOfBlocks = (blocks: readonly Block[]): string =>
  blocks.map(blockText).join("\n").normalize("NFKC");

export function onlyTable(blocks: readonly Block[]): Extract<Block, { kind: "table" }> {
  const table = blocks.find((block) => block.kind === "table");
  if (table === undefined) throw new RangeError("There is no table.");
  return table;
}
