/**
 * A receipt as a document: the way, the specimens with their crate and last check,
 * the seals, and for each change of hands the two places to sign, with the names and
 * the time where the record holds them.
 */
import type { Block, PaperDocument, SignaturePlace } from "#lib/papers/blocks.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import type { ReceiptContent } from "#lib/papers/receipt/content.ts";
import { rangesOf } from "#lib/papers/row-groups.ts";
import {
  conditionText,
  endsBlock,
  issuedDocument,
  specimenParagraphs,
  wayRows,
} from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

type Change = ReceiptContent["changes"][number];

function signPlace(
  { party, organisation, name, at }: { party: string; organisation: string; name: string; at: string | null },
  words: PaperWords,
): SignaturePlace {
  const said = words.travel.receipt;
  const isKnown = at !== null && name !== "";
  return {
    party,
    organisation,
    signedBy: isKnown ? name : null,
    lineLabel: isKnown ? said.recorded : said.signature,
    facts: [
      { label: said.name, value: isKnown ? name : null },
      // the record names who it was and when; as what, is for who signs by hand
      ...(isKnown ? [] : [{ label: words.signatures.role, value: null }]),
      { label: said.time, value: at === null ? null : words.write.moment(at) },
    ],
  };
}

function changeBlocks(change: Change, total: number, words: PaperWords): Block {
  const said = words.travel.receipt;
  const { from, to, numbers, record } = change;
  return {
    kind: "together",
    blocks: [
      { kind: "subheading", text: fill(said.change, { from, to }) },
      {
        kind: "paragraph",
        text:
          numbers.length === total
            ? said.allSpecimens
            : fill(said.someSpecimens, { numbers: rangesOf(numbers) }),
      },
      {
        kind: "signatures",
        places: [
          signPlace(
            {
              party: said.handedOver,
              organisation: from,
              name: record?.releasedBy ?? "",
              at: record?.at ?? null,
            },
            words,
          ),
          signPlace(
            {
              party: said.received,
              organisation: to,
              name: record?.receivedBy ?? "",
              at: record?.at ?? null,
            },
            words,
          ),
        ],
      },
    ],
  };
}

export function receiptDocument(issued: Issued<ReceiptContent>, words: PaperWords): PaperDocument {
  const { content } = issued;
  const { travel } = words;
  const said = travel.receipt;
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: travel.way.heading },
    endsBlock(content.way, words),
    { kind: "definitions", rows: wayRows(content.way, words) },
    { kind: "heading", mark: "B", text: said.specimens },
    {
      kind: "paragraph",
      text: fill(said.count, { specimens: content.specimens.length, crates: content.crates.length }),
      isLead: true,
    },
    {
      kind: "table",
      columns: [
        { header: said.number, align: "right", width: "fit" },
        { header: said.accessionNumber, align: "left", width: "fit" },
        { header: said.specimen, align: "left", width: { share: 3 } },
        { header: said.crate, align: "left", width: "fit" },
        { header: said.condition, align: "left", width: { share: 1 } },
      ],
      rows: content.specimens.map((specimen, index) => [
        [{ text: String(index + 1), emphasis: "quiet" }],
        [{ text: specimen.accessionNumber, emphasis: "code" }],
        { paragraphs: specimenParagraphs(specimen, words) },
        [{ text: specimen.crate, emphasis: "code" }],
        conditionText(specimen, words),
      ]),
    },
    ...(content.crates.length === 0
      ? []
      : ([
          { kind: "heading", mark: "C", text: said.seals },
          {
            kind: "table",
            columns: [
              { header: said.crate, align: "left", width: "fit" },
              { header: said.seal, align: "left", width: { share: 1 } },
            ],
            rows: content.crates.map(({ code, sealNumber }) => [
              [{ text: code, emphasis: "code" }],
              sealNumber === null ? said.noSeal : [{ text: sealNumber, emphasis: "code" }],
            ]),
          },
        ] satisfies Block[])),
    { kind: "heading", mark: content.crates.length === 0 ? "C" : "D", text: said.changes },
    ...content.changes.map((change) => changeBlocks(change, content.specimens.length, words)),
    {
      kind: "together",
      blocks: [
        { kind: "note", text: said.remarksAbout },
        {
          kind: "fields",
          fields: [
            { label: said.remarks, value: null },
            { label: "", value: null },
          ],
          perRow: 1,
        },
      ],
    },
  ];
  return issuedDocument(
    issued,
    { name: travel.names[content.kind], lines: [said.about[content.kind]], blocks },
    words,
  );
}
