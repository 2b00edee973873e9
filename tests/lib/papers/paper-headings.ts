/** The words of a document that head, name or label something: what a reader of its language sees first. */
import { type Block, type PaperDocument, type Text, toSpans } from "#lib/papers/blocks.ts";

const plain = (text: Text): string =>
  toSpans(text)
    .map((span) => span.text)
    .join("");

function headingsOfBlock(block: Block): string[] {
  switch (block.kind) {
    case "title":
      return [block.overline, plain(block.title)];
    case "heading":
    case "subheading":
      return [block.text];
    case "clause":
      return [block.heading];
    case "display":
    case "notice":
      return [plain(block.text)];
    case "definitions":
      return block.rows.map(({ term }) => term);
    case "columns":
      return block.columns.map(({ heading }) => heading);
    case "table":
      return block.columns.map(({ header }) => header);
    case "figures":
      return block.figures.map(({ caption }) => plain(caption));
    case "beside":
      return block.lines.slice(0, 1).map(plain);
    case "fields":
      return block.fields.map(({ label }) => label);
    case "signatures":
      return block.places.flatMap(({ party, lineLabel, facts }) => [
        party,
        lineLabel,
        ...facts.map(({ label }) => label),
      ]);
    case "together":
      return block.blocks.flatMap(headingsOfBlock);
    default:
      return [];
  }
}

export function headingsOf({ head, foot, blocks }: PaperDocument): string[] {
  const all = [head.left, foot.pageOf, ...blocks.flatMap(headingsOfBlock)];
  return [...new Set(all.map((text) => text.normalize("NFKC")).filter((text) => /\p{L}/u.test(text)))];
}
