/**
 * A courier's travel sheet as a document: the way, who is asked, crates and seals, the
 * specimens, a row for each station with room to write, what holds, and what the
 * courier tells afterwards.
 */
import type { Block, Cell, PaperDocument } from "#lib/papers/blocks.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { endsBlock, issuedDocument, sidesText, wayRows } from "#lib/papers/travel-blocks.ts";
import type { TravelSheetContent } from "#lib/papers/travel-sheet/content.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

const blank = (label: string) => ({ label, value: null });
/** A cell that is as high as a line of handwriting. */
const room: Cell = { paragraphs: ["\u00A0", "\u00A0"] };

/** What a courier passes, in its order. */
export function stationsOf({ way }: TravelSheetContent, words: PaperWords): string[] {
  const said = words.courier;
  const countries = [...new Set([way.from.countryCode, ...way.through, way.to.countryCode])];
  const borders = countries.length > 1 ? countries : [];
  return [
    fill(said.collected, { place: way.from.organisation }),
    said.loaded,
    said.left,
    ...borders.map((code) => fill(said.border, { country: words.write.country(code) })),
    said.stop,
    said.stop,
    fill(said.arrived, { place: way.to.organisation }),
    said.resting,
  ];
}

function peopleBlocks({ way, contactName, emergency }: TravelSheetContent, words: PaperWords): Block[] {
  const said = words.courier;
  const [house, venue] = way.direction === "out" ? [way.from, way.to] : [way.to, way.from];
  const row = (term: string, ...texts: string[]) => ({
    term,
    paragraphs: [texts.filter((text) => text !== "").join(", ")],
  });
  return [
    { kind: "heading", mark: "B", text: said.people },
    {
      kind: "definitions",
      rows: [
        row(
          emergency?.hours === "office hours" ? said.lenderInOfficeHours : said.lender,
          house.organisation,
          emergency?.phone ?? house.phone,
        ),
        row(said.venue, contactName, venue.organisation, venue.phone),
      ],
    },
    {
      kind: "fields",
      perRow: 2,
      fields: [said.courier, said.courierPhone, said.driver, said.carrierPhone].map(blank),
    },
  ];
}

function cratesBlocks({ crates }: TravelSheetContent, words: PaperWords): Block[] {
  const said = words.courier;
  return [
    { kind: "heading", mark: "C", text: said.crates },
    {
      kind: "table",
      columns: [
        { header: said.crate, align: "left", width: "fit" },
        { header: said.outer, align: "left", width: "fit" },
        { header: said.gross, align: "decimal", width: "fit" },
        { header: said.seal, align: "left", width: "fit" },
        { header: said.sealOut, align: "left", width: { share: 1 } },
        { header: said.sealIn, align: "left", width: { share: 1 } },
      ],
      rows: crates.map((crate) => [
        [{ text: crate.code, emphasis: "code" }],
        sidesText(crate.outer, words),
        words.write.number(crate.grossMassKg, { least: 0, most: 1 }),
        crate.sealNumber === null
          ? words.travel.receipt.noSeal
          : [{ text: crate.sealNumber, emphasis: "code" }],
        "",
        "",
      ]),
    },
  ];
}

function specimensBlocks({ specimens }: TravelSheetContent, words: PaperWords): Block[] {
  const said = words.courier;
  return [
    { kind: "heading", mark: "D", text: said.specimens },
    {
      kind: "table",
      columns: [
        { header: said.number, align: "right", width: "fit" },
        { header: said.accessionNumber, align: "left", width: "fit" },
        { header: said.specimen, align: "left", width: { share: 1 } },
        { header: said.crate, align: "left", width: "fit" },
      ],
      rows: specimens.map(({ accessionNumber, title, crate }, index) => [
        [{ text: String(index + 1), emphasis: "quiet" }],
        [{ text: accessionNumber, emphasis: "code" }],
        title,
        [{ text: crate, emphasis: "code" }],
      ]),
    },
  ];
}

function stationsBlocks(content: TravelSheetContent, words: PaperWords): Block[] {
  const said = words.courier;
  return [
    { kind: "heading", mark: "E", text: said.stations },
    { kind: "paragraph", text: said.stationsLead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: said.station, align: "left", width: { share: 3 } },
        { header: said.dayTime, align: "left", width: { share: 2 } },
        { header: said.air, align: "left", width: { share: 1 } },
        { header: said.sealsWhole, align: "left", width: { share: 1 } },
        { header: said.seen, align: "left", width: { share: 3 } },
      ],
      rows: stationsOf(content, words).map((station) => [station, room, "", "", ""]),
    },
  ];
}

export function travelSheetDocument(issued: Issued<TravelSheetContent>, words: PaperWords): PaperDocument {
  const { content } = issued;
  const { way, temperatureC } = content;
  const said = words.courier;
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: words.travel.way.heading },
    endsBlock(way, words),
    { kind: "definitions", rows: wayRows(way, words) },
    ...peopleBlocks(content, words),
    ...cratesBlocks(content, words),
    ...specimensBlocks(content, words),
    ...stationsBlocks(content, words),
    { kind: "heading", mark: "F", text: said.holds },
    {
      kind: "definitions",
      rows: [
        {
          term: said.temperatures,
          paragraphs: [
            temperatureC === null
              ? said.temperaturesOpen
              : fill(said.temperaturesText, {
                  low: words.write.number(temperatureC.low),
                  high: words.write.number(temperatureC.high),
                }),
          ],
        },
        ...said.holdsRows.map(({ term, text }) => ({ term, paragraphs: [text] })),
      ],
    },
    {
      kind: "together",
      blocks: [
        { kind: "heading", mark: "G", text: said.afterwards },
        { kind: "fields", perRow: 1, fields: said.afterwardsFields.map(blank) },
      ],
    },
    {
      kind: "together",
      blocks: [
        { kind: "paragraph", text: said.signed },
        {
          kind: "signatures",
          places: [
            {
              party: said.party,
              organisation: "",
              signedBy: null,
              lineLabel: said.signature,
              facts: [blank(said.personName), blank(said.time)],
            },
          ],
        },
      ],
    },
  ];
  return issuedDocument(issued, { name: said.name, lines: [said.about], blocks }, words);
}
