/**
 * A packing list as a document: the crate, its contents by position with a picture of
 * each, how it is opened and packed again, and what is written by hand.
 */
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import type { PackingListContent } from "#lib/papers/packing-list/content.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { type Pictures, thumbnailFigure } from "#lib/papers/thumbnail.ts";
import {
  issuedDocument,
  massText,
  sidesText,
  specimenParagraphs,
  wayRows,
} from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

const thumbnailPt = { width: 56, height: 42 };

function crateRows(
  { crate, way }: PackingListContent,
  words: PaperWords,
): { term: string; paragraphs: string[] }[] {
  const { transport, travel, write } = words;
  const said = travel.packing;
  const { contentsKg, innerCaseWallMm, absorbentMl } = crate;
  const gross = massText(crate.grossMassKg, words);
  return [
    {
      term: said.crate,
      paragraphs: [`${fill(said.crateOf, { number: crate.number, of: crate.of })}, ${crate.code}`],
    },
    { term: said.kind, paragraphs: [say(transport.crateKinds, crate.kind)] },
    { term: said.outer, paragraphs: [sidesText(crate.outer, words)] },
    {
      term: said.masses,
      paragraphs: [
        contentsKg === null
          ? fill(said.massesGross, { gross })
          : fill(said.massesText, {
              gross,
              net: massText(contentsKg, words),
              tare: massText(crate.grossMassKg - contentsKg, words),
            }),
      ],
    },
    {
      term: said.packing,
      paragraphs: [
        ...(innerCaseWallMm === null ? [] : [fill(said.innerCase, { wall: write.number(innerCaseWallMm) })]),
        fill(said.cushion, { cushion: write.number(crate.cushionMm) }),
        ...(absorbentMl === null
          ? []
          : [fill(said.absorbent, { absorbent: write.number(Math.ceil(absorbentMl)) })]),
      ],
    },
    { term: said.seal, paragraphs: [crate.sealNumber ?? travel.receipt.noSeal] },
    {
      term: said.lifting,
      paragraphs: [
        `${say(transport.handlingModes, crate.handling)} ${say(transport.orientations, crate.orientation)}`,
        fill(said.centreOfGravity, { height: write.number(crate.centreOfGravityHeightMm) }),
      ],
    },
    ...wayRows(way, words).slice(0, 2),
  ];
}

export function packingListDocument(
  issued: Issued<PackingListContent>,
  words: PaperWords,
  pictures: Pictures = new Map(),
): PaperDocument {
  const { content } = issued;
  const { travel } = words;
  const said = travel.packing;
  const { number, of } = content.crate;
  const blank = (label: string) => ({ label, value: null });
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: said.crate },
    { kind: "definitions", rows: crateRows(content, words) },
    { kind: "heading", mark: "B", text: said.contents },
    {
      kind: "table",
      columns: [
        { header: said.position, align: "right", width: "fit" },
        { header: said.picture, align: "left", width: "fit" },
        { header: said.accessionNumber, align: "left", width: "fit" },
        { header: said.specimen, align: "left", width: { share: 1 } },
      ],
      rows: content.contents.map((specimen) => [
        String(specimen.position),
        {
          figure: thumbnailFigure(
            {
              ...specimen,
              picture: specimen.pictureId === null ? null : (pictures.get(specimen.pictureId) ?? null),
            },
            thumbnailPt,
            words,
          ),
        },
        [{ text: specimen.accessionNumber, emphasis: "code" }],
        { paragraphs: specimenParagraphs(specimen, words) },
      ]),
    },
    { kind: "heading", mark: "C", text: said.handling },
    {
      kind: "definitions",
      rows: [
        { term: said.order, paragraphs: [said.orderText] },
        { term: said.back, paragraphs: [said.backText] },
      ],
    },
    {
      kind: "together",
      blocks: [
        { kind: "heading", mark: "D", text: said.byHand },
        {
          kind: "fields",
          perRow: 3,
          fields: [said.sensors, said.tools, said.photographs].map(blank),
        },
        {
          kind: "fields",
          perRow: 4,
          fields: [said.packedBy, said.packedOn, said.unpackedBy, said.unpackedOn].map(blank),
        },
      ],
    },
  ];
  return issuedDocument(
    issued,
    {
      name: travel.names["packing list"],
      lines: [`${fill(said.crateOf, { number, of })}, ${content.crate.code}. ${said.about}`],
      blocks,
    },
    words,
  );
}
