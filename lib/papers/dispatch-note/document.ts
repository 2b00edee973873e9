/**
 * A dispatch note as a document: from, to, carrier, the crates, what holds on the
 * way, what the driver writes, and a pair of signatures for each change of hands.
 */
import type { Block, PaperDocument, SignaturePlace } from "#lib/papers/blocks.ts";
import { type DispatchNoteContent, grossMassKg } from "#lib/papers/dispatch-note/content.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { endsBlock, issuedDocument, sidesText, wayRows } from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

function cratesTable({ crates }: DispatchNoteContent, words: PaperWords): Block {
  const said = words.travel.dispatch;
  const { transport, write } = words;
  const kilograms = (massKg: number) => write.number(massKg, { least: 0, most: 1 });
  return {
    kind: "table",
    columns: [
      { header: said.crate, align: "left", width: "fit" },
      { header: said.kind, align: "left", width: { share: 1 } },
      { header: said.outer, align: "left", width: "fit" },
      { header: said.gross, align: "decimal", width: "fit" },
      { header: said.seal, align: "left", width: "fit" },
      { header: said.outside, align: "left", width: { share: 1 } },
    ],
    rows: crates.map((crate) => [
      {
        paragraphs: [
          [{ text: crate.code, emphasis: "code" }],
          [{ text: `${crate.number}/${crate.of}`, emphasis: "small" }],
        ],
      },
      {
        paragraphs: [
          say(transport.crateKinds, crate.kind),
          [{ text: say(transport.handlingModes, crate.handling), emphasis: "small" }],
          [{ text: say(transport.orientations, crate.orientation), emphasis: "small" }],
        ],
      },
      sidesText(crate.outer, words),
      kilograms(crate.grossMassKg),
      crate.sealNumber === null
        ? words.travel.receipt.noSeal
        : [{ text: crate.sealNumber, emphasis: "code" }],
      "",
    ]),
    total: ["", said.total, "", kilograms(grossMassKg(crates)), "", ""],
  };
}

export function dispatchNoteDocument(issued: Issued<DispatchNoteContent>, words: PaperWords): PaperDocument {
  const { way } = issued.content;
  const { travel } = words;
  const said = travel.dispatch;
  const place = (party: string, organisation: string): SignaturePlace => ({
    party,
    organisation,
    signedBy: null,
    lineLabel: travel.receipt.signature,
    facts: [
      { label: travel.receipt.name, value: null },
      { label: words.signatures.role, value: null },
      { label: travel.receipt.time, value: null },
    ],
  });
  const changeOfHands = (from: string, to: string): Block => ({
    kind: "together",
    blocks: [
      { kind: "subheading", text: fill(travel.receipt.change, { from, to }) },
      { kind: "signatures", places: [place(said.surrender, from), place(said.takeOver, to)] },
    ],
  });
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: travel.way.heading },
    endsBlock(way, words),
    { kind: "definitions", rows: wayRows(way, words) },
    { kind: "heading", mark: "B", text: said.crates },
    cratesTable(issued.content, words),
    { kind: "heading", mark: "C", text: said.care },
    {
      kind: "definitions",
      rows: said.careRows.map(({ term, text }) => ({ term, paragraphs: [text] })),
    },
    {
      kind: "together",
      blocks: [
        { kind: "heading", mark: "D", text: said.onTheWay },
        {
          kind: "fields",
          perRow: 2,
          fields: [said.driver, said.plate, said.leftAt, said.arrivedAt].map((label) => ({
            label,
            value: null,
          })),
        },
        { kind: "fields", perRow: 1, fields: [{ label: said.sealsIntact, value: null }] },
      ],
    },
    { kind: "heading", mark: "E", text: said.delivery },
    changeOfHands(way.from.organisation, way.carrier),
    changeOfHands(way.carrier, way.to.organisation),
  ];
  return issuedDocument(issued, { name: travel.names["dispatch note"], lines: [said.about], blocks }, words);
}
