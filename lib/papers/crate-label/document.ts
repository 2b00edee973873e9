/**
 * A crate label as one page to be read from two metres: the crate's number, from and
 * to, the telephone, mass and size, the handling marks, who may open it and when.
 */
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import type { CrateLabelContent } from "#lib/papers/crate-label/content.ts";
import { figureOf } from "#lib/papers/drawing.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { drawHandlingMark, type HandlingMark } from "#lib/papers/pictograms.ts";
import { checkBlock, endsBlock, frameOf, massText, sidesText } from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

type Column = Extract<Block, { kind: "columns" }>["columns"][number];

function captionOf(mark: HandlingMark, content: CrateLabelContent, words: PaperWords): string {
  const said = words.travel.label;
  const { stackingLimitKg, temperatureC } = content;
  const figure =
    mark === "stacking limit" && stackingLimitKg !== null
      ? fill(said.kgMost, { mass: massText(stackingLimitKg, words) })
      : mark === "temperature limits" && temperatureC !== null
        ? fill(said.degrees, {
            low: words.write.number(temperatureC.low),
            high: words.write.number(temperatureC.high),
          })
        : mark === "centre of gravity"
          ? fill(said.centreOfGravity, { height: words.write.number(content.centreOfGravityHeightMm) })
          : "";
  return figure === "" ? said.marks[mark] : `${said.marks[mark]}${words.write.colon}${figure}`;
}

/** How large things stand on the label; the first that fits on one page is taken. */
type Setting = { look: "large" | null; factsInOneRow: boolean; markPt: number; codePt: number };
const settings: readonly Setting[] = [
  { look: "large", factsInOneRow: false, markPt: 66, codePt: 88 },
  { look: "large", factsInOneRow: false, markPt: 56, codePt: 76 },
  { look: null, factsInOneRow: true, markPt: 44, codePt: 70 },
];

function labelBlocks(issued: Issued<CrateLabelContent>, words: PaperWords, setting: Setting): Block[] {
  const { content } = issued;
  const { crate, loan, phone, phoneHours, way } = content;
  const said = words.travel.label;
  const { look, factsInOneRow, markPt, codePt } = setting;
  const large = look === null ? {} : { look };
  const named: Column = {
    heading: fill(said.loan, { number: loan.number }),
    lines: [[{ text: crate.code, emphasis: "code" }]],
  };
  const answering: Column = {
    heading: phoneHours === "office hours" ? said.officePhone : said.phone,
    lines: [[{ text: phone, emphasis: "strong" }]],
  };
  const gross: Column = { heading: said.gross, lines: [massText(crate.grossMassKg, words)] };
  const outer: Column = { heading: said.outer, lines: [sidesText(crate.outer, words)] };
  const rows = factsInOneRow
    ? { above: [[named, answering, gross, outer]], below: [] }
    : { above: [[named, answering]], below: [[gross, outer]] };
  const columns = (row: readonly Column[]): Block => ({ kind: "columns", columns: row, ...large });
  return [
    { kind: "display", text: fill(said.crateOf, { number: crate.number, of: crate.of }) },
    ...rows.above.map(columns),
    endsBlock(way, words, look ?? undefined),
    ...rows.below.map(columns),
    {
      kind: "figures",
      cellPt: markPt,
      figures: content.marks.map((mark) => ({
        figure: figureOf(drawHandlingMark(mark), markPt, captionOf(mark, content, words)),
        caption: captionOf(mark, content, words),
      })),
    },
    { kind: "notice", text: said.authorised },
    {
      kind: "fields",
      perRow: 2,
      fields: [
        { label: said.notBefore, value: null },
        { label: said.notBeforeBy, value: null },
      ],
    },
    checkBlock(issued, words, codePt),
  ];
}

export function crateLabelDocument(issued: Issued<CrateLabelContent>, words: PaperWords): PaperDocument {
  const frame = frameOf(issued, words.travel.names["crate label"], words);
  const documents = settings.map((setting) => ({ ...frame, blocks: labelBlocks(issued, words, setting) }));
  return documents.reduceRight((smaller: PaperDocument, document) => ({ ...document, smaller }));
}
