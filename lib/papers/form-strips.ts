/**
 * The blocks of labels and forms into strips: figures with their captions, a figure
 * beside lines, a sentence that nobody may overlook, places to write and to sign on.
 * A figure is never torn from its caption, nor a label from its line.
 */
import type { Block, SignaturePlace, Text } from "#lib/papers/blocks.ts";
import type { Figure } from "#lib/papers/drawing.ts";
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
import { bodyHeightOf, bodyWidthOf, marginGapPt, styles } from "#lib/papers/sheet.ts";
import { keptTogether, type Placed, type Strip } from "#lib/papers/strips.ts";
import { nodesUnder, nodeUnder, type StructureNode } from "#lib/papers/structure.ts";
import { naturalWidths } from "#lib/papers/wrap.ts";

/** A figure no wider than its place and no higher than a page. */
function fittingFigure(figure: Figure, widthPt: number, ground: Ground): Figure {
  const mostPt = bodyHeightOf(ground.sheet) / 2;
  const scale = Math.min(1, widthPt / figure.widthPt, mostPt / figure.heightPt);
  return { ...figure, widthPt: figure.widthPt * scale, heightPt: figure.heightPt * scale };
}

export function figuresStrips(block: Extract<Block, { kind: "figures" }>, ground: Ground): Strip[] {
  const gapPt = 10;
  const perRow = Math.max(1, Math.floor((bodyWidthOf(ground.sheet) + gapPt) / (block.cellPt + gapPt)));
  const edges = evenColumns(ground, perRow, gapPt);
  const rows = Array.from({ length: Math.ceil(block.figures.length / perRow) }, (_none, row) =>
    block.figures.slice(row * perRow, (row + 1) * perRow),
  );
  return rows.flatMap((row) => {
    const placed = row.map(({ figure, caption }, index) => {
      const column = edges[index] ?? fullOf(ground);
      const div = nodeUnder(ground.node, "Div");
      const node = nodeUnder(div, "Figure", figure.alternative);
      const fitting = fittingFigure(figure, Math.min(block.cellPt, column.rightPt - column.leftPt), ground);
      return { column, figure: fitting, node, caption, captionNode: nodeUnder(div, "P") };
    });
    const heightPt = Math.max(0, ...placed.map(({ figure }) => figure.heightPt));
    const figures: Strip = {
      heightPt,
      gapPt: gaps.figures,
      keepWithNext: true,
      items: placed.map(({ column, figure, node }) => ({
        kind: "figure",
        xPt: column.leftPt,
        yPt: heightPt - figure.heightPt,
        figure,
        column,
        node,
      })),
    };
    const captions = stripsOf(
      placed.map(({ column, caption, captionNode: node }) =>
        columnOf([caption], styles.caption, { ...column, measure: ground.measure, node }),
      ),
      4,
    );
    return keptTogether([figures, ...captions]);
  });
}

/** The lines stand in the middle beside the figure, or as high as it where they need more. */
export function besideStrips(block: Extract<Block, { kind: "beside" }>, ground: Ground): Strip[] {
  const { sheet, measure } = ground;
  const figure = fittingFigure(block.figure, bodyWidthOf(sheet) / 2, ground);
  const figureColumn = { leftPt: sheet.leftPt, rightPt: sheet.leftPt + figure.widthPt };
  const node = nodeUnder(ground.node, "Figure", figure.alternative);
  const lines = stripsOf([
    columnOf(block.lines, styles.body, {
      leftPt: figureColumn.rightPt + marginGapPt,
      rightPt: sheet.rightPt,
      measure,
      node: nodesUnder(ground.node, "P", block.lines),
    }),
  ]);
  const item: Placed = { kind: "figure", xPt: sheet.leftPt, yPt: 0, figure, column: figureColumn, node };
  const heightPt = lines.reduce((height, strip) => height + strip.heightPt, 0);
  const spacePt = Math.max(0, (figure.heightPt - heightPt) / 2);
  const space = (items: readonly Placed[], gapPt: number, continues: boolean): Strip => ({
    heightPt: spacePt,
    gapPt,
    items,
    keepWithNext: true,
    continues,
  });
  return keptTogether([space([item], gaps.figures, false), ...lines, space([], 0, true)]);
}

export function noticeStrips(text: Text, ground: Ground): Strip[] {
  const node = nodeUnder(ground.node, "P");
  return keptTogether([
    ruleStrip(ground, 1.6, "black", 4, gaps.notice),
    ...acrossSheet([text], "notice", ground, { node, gapPt: 3 }),
    { ...ruleStrip(ground, 1.6, "black", 4, 7), keepWithNext: false },
  ]);
}

function ruleUnder({ leftPt, rightPt }: Edges, yPt: number): Placed {
  return { kind: "rule", xPt: leftPt, toXPt: rightPt, yPt, weightPt: 0.5, ink: "ink" };
}

/** A label above, and below it what is known, or room and a line to write on. */
export function fieldsStrips(
  { fields, perRow }: Extract<Block, { kind: "fields" }>,
  ground: Ground,
): Strip[] {
  const { measure } = ground;
  const edges = evenColumns(ground, perRow, 18);
  const rows = Array.from({ length: Math.ceil(fields.length / perRow) }, (_none, row) =>
    fields.slice(row * perRow, (row + 1) * perRow),
  );
  return rows.flatMap((row) => {
    const placed = row.map(({ label, value }, index) => {
      const node = nodeUnder(ground.node, "Div");
      const column = edges[index] ?? fullOf(ground);
      return { label, value, column, labelNode: nodeUnder(node, "P"), node };
    });
    const labels = stripsOf(
      placed.map(({ label, column, labelNode: node }) =>
        columnOf([label], styles.note, { ...column, measure, node }),
      ),
      gaps.fields,
    );
    const values = stripsOf(
      placed.map(({ value, column, node }) =>
        columnOf(value === null ? [] : [value], styles.body, {
          ...column,
          measure,
          ...(value === null ? {} : { node: nodeUnder(node, "P") }),
        }),
      ),
    );
    const room: Strip = {
      heightPt: styles.body.leadingPt + 4,
      gapPt: 0,
      keepWithNext: true,
      items: [],
      continues: true,
    };
    const line: Strip = {
      heightPt: 2,
      gapPt: 1,
      keepWithNext: false,
      continues: true,
      items: placed.filter(({ value }) => value === null).map(({ column }) => ruleUnder(column, 0)),
    };
    return keptTogether([...labels, ...(values.length === 0 ? [room] : values), line]);
  });
}

/** Drawn names stand on the line: where they are higher than the words beside them, room is made above. */
function withDrawnNames(
  strips: readonly Strip[],
  places: readonly SignaturePlace[],
  ground: Ground,
  edgesOf: (index: number) => Edges,
  nodeOf: (index: number) => StructureNode,
): Strip[] {
  const drawn = places.flatMap(({ drawn: figure }, index) => {
    if (figure === undefined) return [];
    const column = edgesOf(index);
    const fitting = fittingFigure(figure, column.rightPt - column.leftPt, ground);
    return [{ column, figure: fitting, node: nodeUnder(nodeOf(index), "Figure", figure.alternative) }];
  });
  const [first] = strips;
  if (drawn.length === 0 || first === undefined) return [...strips];
  const besidePt = strips.reduce((height, strip) => height + strip.heightPt, 0);
  const highestPt = Math.max(besidePt, ...drawn.map(({ figure }) => figure.heightPt));
  const above: Strip = {
    heightPt: highestPt - besidePt,
    gapPt: Math.max(6, first.gapPt - (highestPt - besidePt)),
    keepWithNext: true,
    items: drawn.map(({ column, figure, node }) => ({
      kind: "figure",
      xPt: column.leftPt,
      yPt: highestPt - figure.heightPt,
      figure,
      column,
      node,
    })),
  };
  return [
    above,
    ...strips.map((strip, index) => (index === 0 ? { ...strip, gapPt: 0, continues: true } : strip)),
  ];
}

/** A line to sign on, its label below it, and what is known of the signature below that. */
export function signatureStrips(places: readonly SignaturePlace[], ground: Ground): Strip[] {
  const { measure } = ground;
  const edges = evenColumns(ground, places.length, 30);
  const edgesOf = (index: number) => edges[index] ?? fullOf(ground);
  const placeNodes = places.map(() => nodeUnder(ground.node, "Div"));
  const nodeAt = (index: number) => nodeUnder(placeNodes[index] ?? ground.node, "P");
  const labels = places.flatMap(({ facts: known }) => known.map(({ label }) => label));
  const widestPt = Math.max(0, ...labels.map((label) => naturalWidths(label, styles.note, measure).line));
  const narrowestPt = Math.min(
    ...places.map((_place, index) => edgesOf(index).rightPt - edgesOf(index).leftPt),
  );
  const labelPt = Math.min(Math.max(46, Math.ceil(widestPt) + 8), narrowestPt * 0.4);
  const across = (
    style: keyof typeof styles,
    texts: (place: SignaturePlace) => readonly Text[],
    gapPt: number,
  ): Strip[] =>
    stripsOf(
      places.map((place, index) => {
        const said = texts(place);
        const node = said.length === 0 ? undefined : nodeAt(index);
        return columnOf(said, styles[style], { ...edgesOf(index), measure, node });
      }),
      gapPt,
    );
  const lines: Strip = {
    heightPt: 4,
    gapPt: 2,
    keepWithNext: true,
    items: places.map((_place, index) => ({
      kind: "rule",
      xPt: edgesOf(index).leftPt,
      toXPt: edgesOf(index).rightPt,
      yPt: 0,
      weightPt: 0.6,
      ink: "ink",
    })),
  };
  const named = across("signedName", ({ signedBy }) => (signedBy === null ? [] : [signedBy]), 20);
  const blank: Strip = { heightPt: styles.signedName.leadingPt, gapPt: 30, keepWithNext: true, items: [] };
  const signed = withDrawnNames(
    named.length === 0 ? [blank] : named,
    places,
    ground,
    edgesOf,
    (index) => placeNodes[index] ?? ground.node,
  );
  const factCount = Math.max(0, ...places.map(({ facts }) => facts.length));
  const facts = Array.from({ length: factCount }, (_none, row) => {
    const strips = stripsOf(
      places.flatMap(({ facts: known }, index) => {
        const { leftPt, rightPt } = edgesOf(index);
        const fact = known[row];
        const node = fact === undefined ? undefined : nodeAt(index);
        return [
          columnOf([fact?.label ?? ""], styles.note, {
            leftPt,
            rightPt: leftPt + labelPt - 4,
            measure,
            node,
          }),
          columnOf([fact?.value ?? ""], styles.body, { leftPt: leftPt + labelPt, rightPt, measure, node }),
        ];
      }),
      3,
    );
    return strips.map((strip, line) => {
      if (line > 0) return strip;
      const blanks = places.flatMap(({ facts: known }, index): Placed[] => {
        if (known[row] === undefined || known[row].value !== null) return [];
        const { leftPt, rightPt } = edgesOf(index);
        const yPt = strip.heightPt;
        return [{ kind: "rule", xPt: leftPt + labelPt, toXPt: rightPt, yPt, weightPt: 0.35, ink: "rule" }];
      });
      return blanks.length === 0
        ? strip
        : { ...strip, gapPt: strip.gapPt + 4, items: [...strip.items, ...blanks] };
    });
  }).flat();
  return keptTogether([
    ...across("clauseHeading", ({ party }) => [party], gaps.signatures),
    ...across("body", ({ organisation }) => [organisation], 0),
    ...signed,
    lines,
    ...across("note", ({ lineLabel }) => [lineLabel], 0),
    ...facts,
  ]);
}
