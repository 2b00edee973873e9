/**
 * Blocks into strips: each block is measured, set into its columns and grows its
 * part of the structure tree. Nothing is put on a page here, and nothing that is
 * said is left out. What stands beside each other is of one strip; what may not be
 * torn apart is kept with the next.
 */
import type { Block } from "#lib/papers/blocks.ts";
import {
  besideStrips,
  fieldsStrips,
  figuresStrips,
  noticeStrips,
  signatureStrips,
} from "#lib/papers/form-strips.ts";
import {
  acrossSheet,
  type Edges,
  evenColumns,
  fullOf,
  type Ground,
  gaps,
  ruleStrip,
} from "#lib/papers/ground.ts";
import { columnOf, stripsOf } from "#lib/papers/lines.ts";
import { marginColumnPt, marginGapPt, styles } from "#lib/papers/sheet.ts";
import { keptTogether, type Strip, withoutWidows } from "#lib/papers/strips.ts";
import { nodesUnder, nodeUnder } from "#lib/papers/structure.ts";
import { tableStrips } from "#lib/papers/table.ts";

const marginColumnOf = ({ sheet }: Ground): Edges => ({
  leftPt: sheet.leftPt,
  rightPt: sheet.leftPt + marginColumnPt,
});
const textColumnOf = ({ sheet }: Ground): Edges => ({
  leftPt: sheet.leftPt + marginColumnPt + marginGapPt,
  rightPt: sheet.rightPt,
});

function titleStrips(block: Extract<Block, { kind: "title" }>, ground: Ground): Strip[] {
  const [overline, title] = [nodeUnder(ground.node, "P"), nodeUnder(ground.node, "H1")];
  const { measure } = ground;
  const nodes = nodesUnder(ground.node, "P", block.lines);
  return keptTogether(
    [
      ...acrossSheet([block.overline], "overline", ground, { node: overline }),
      ...acrossSheet([block.title], "title", ground, { node: title, gapPt: 2 }),
      ...stripsOf([columnOf(block.lines, styles.body, { ...fullOf(ground), measure, node: nodes })], 6),
      ruleStrip(ground, 1.1, "ink", 2.4, 12),
      { ...ruleStrip(ground, 0.4, "ink", 2), keepWithNext: true },
    ],
    true,
  );
}

function headingStrips(mark: string, text: string, ground: Ground): Strip[] {
  const { sheet, measure } = ground;
  const node = nodeUnder(ground.node, "H2");
  const markColumn = columnOf([mark], styles.mark, {
    leftPt: sheet.leftPt,
    rightPt: sheet.leftPt + 24,
    measure,
    node,
  });
  const textBeside = columnOf([text], styles.heading, {
    leftPt: sheet.leftPt + (mark === "" ? 0 : 24),
    rightPt: sheet.rightPt,
    measure,
    node,
  });
  return keptTogether(
    [...stripsOf([markColumn, textBeside], gaps.heading), ruleStrip(ground, 0.4, "rule", 3, 2.5)],
    true,
  );
}

function clauseStrips(block: Extract<Block, { kind: "clause" }>, ground: Ground): Strip[] {
  const { sheet, measure } = ground;
  const node = nodeUnder(ground.node, "H3");
  const indentPt = 20;
  const mark = columnOf([block.mark], styles.clauseMark, {
    leftPt: sheet.leftPt,
    rightPt: sheet.leftPt + indentPt - 2,
    measure,
    node,
  });
  const heading = columnOf([block.heading], styles.clauseHeading, {
    leftPt: sheet.leftPt + indentPt,
    rightPt: marginColumnOf(ground).rightPt,
    measure,
    node,
  });
  const text = columnOf([block.text], styles.body, {
    ...textColumnOf(ground),
    measure,
    node: nodeUnder(ground.node, "P"),
  });
  const strips = stripsOf([mark, heading, text], gaps.clause);
  // the heading is not left on one page with its text on the next
  const headingLines = Math.max(mark.lines.length, heading.lines.length);
  return withoutWidows(
    strips.map((strip, index) => ({
      ...strip,
      keepWithNext: index < headingLines && index < strips.length - 1,
    })),
  );
}

/** Meanings up to so many lines are not divided, so that each stands beside its term. */
const linesOfOneGlance = 8;

function definitionStrips(block: Extract<Block, { kind: "definitions" }>, ground: Ground): Strip[] {
  const { measure } = ground;
  const list = nodeUnder(ground.node, "L");
  return block.rows.flatMap(({ term, paragraphs }, index) => {
    const row = nodeUnder(list, "LI");
    const label = nodeUnder(row, "Lbl");
    const meaning = nodesUnder(nodeUnder(row, "LBody"), "P", paragraphs);
    const strips = stripsOf(
      [
        columnOf([term], styles.term, { ...marginColumnOf(ground), measure, node: label }),
        columnOf(paragraphs, styles.body, { ...textColumnOf(ground), measure, node: meaning }),
      ],
      index === 0 ? gaps.paragraph : gaps.definition,
    );
    return strips.length <= linesOfOneGlance ? keptTogether(strips) : withoutWidows(strips);
  });
}

function columnsStrips(block: Extract<Block, { kind: "columns" }>, ground: Ground): Strip[] {
  const { measure } = ground;
  const edges = evenColumns(ground, block.columns.length);
  const [termStyle, lineStyle] =
    block.look === "large" ? (["largeTerm", "large"] as const) : (["term", "body"] as const);
  const nodes = block.columns.map(({ lines }) => {
    const node = nodeUnder(ground.node, "Div");
    return { heading: nodeUnder(node, "P"), lines: nodesUnder(node, "P", lines) };
  });
  const placeOf = (index: number) => ({ ...(edges[index] ?? fullOf(ground)), measure });
  return keptTogether([
    ...stripsOf(
      block.columns.map(({ heading }, index) =>
        columnOf([heading], styles[termStyle], { ...placeOf(index), node: nodes[index]?.heading }),
      ),
      gaps.columns,
    ),
    // read column by column, each heading with its lines
    ...stripsOf(
      block.columns.map(({ lines }, index) =>
        columnOf(lines, styles[lineStyle], { ...placeOf(index), node: nodes[index]?.lines }),
      ),
      1,
    ).map((strip) => ({ ...strip, continues: true })),
  ]);
}

/** The strips of one block, in order. */
export function blockStrips(block: Block, ground: Ground): Strip[] {
  const { node } = ground;
  switch (block.kind) {
    case "title":
      return titleStrips(block, ground);
    case "heading":
      return headingStrips(block.mark, block.text, ground);
    case "subheading":
      return keptTogether(
        acrossSheet([block.text], "subheading", ground, {
          node: nodeUnder(node, "H3"),
          gapPt: gaps.subheading,
        }),
        true,
      );
    case "paragraph": {
      const strips = acrossSheet([block.text], "body", ground, {
        node: nodeUnder(node, "P"),
        gapPt: gaps.paragraph,
      });
      return block.isLead ? keptTogether(strips, true) : withoutWidows(strips);
    }
    case "note":
      return withoutWidows(
        acrossSheet([block.text], "note", ground, { node: nodeUnder(node, "P"), gapPt: gaps.paragraph }),
      );
    case "clause":
      return clauseStrips(block, ground);
    case "definitions":
      return definitionStrips(block, ground);
    case "columns":
      return columnsStrips(block, ground);
    case "table":
      return tableStrips(block, ground.measure, gaps.table, ground);
    case "display":
      return keptTogether(
        acrossSheet([block.text], "display", ground, { node: nodeUnder(node, "H1"), gapPt: gaps.display }),
        true,
      );
    case "notice":
      return noticeStrips(block.text, ground);
    case "figures":
      return figuresStrips(block, ground);
    case "beside":
      return besideStrips(block, ground);
    case "fields":
      return fieldsStrips(block, ground);
    case "signatures":
      return signatureStrips(block.places, ground);
    case "page-break":
      return [{ heightPt: 0, gapPt: 0, items: [], keepWithNext: true, startsPage: true }];
    case "together":
      return keptTogether(block.blocks.flatMap((inner) => blockStrips(inner, ground)));
  }
}
