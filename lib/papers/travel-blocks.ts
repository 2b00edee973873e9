/**
 * Blocks that several papers share: the two ends of a way beside each other, the
 * facts of a stage, the line that names a specimen, and the code by which anyone who
 * holds a paper can check it.
 */
import type { Block, PaperDocument, Text } from "#lib/papers/blocks.ts";
import { codeFigure } from "#lib/papers/check-code.ts";
import type {
  Issued,
  PaperCrate,
  PaperHead,
  PaperSpecimen,
  PaperWay,
  WayEnd,
} from "#lib/papers/paper-content.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

const present = (texts: readonly string[]) => texts.filter((text) => text.trim() !== "");

export function endLines(end: WayEnd, words: PaperWords): Text[] {
  return [
    [{ text: end.organisation, emphasis: "strong" }],
    ...present([end.place, end.address, words.write.country(end.countryCode)]),
    ...(end.phone === "" ? [] : [fill(words.travel.way.phone, { phone: end.phone })]),
  ];
}

export function endsBlock({ from, to }: PaperWay, words: PaperWords, look?: "large"): Block {
  const { way } = words.travel;
  return {
    kind: "columns",
    columns: [
      { heading: way.from, lines: endLines(from, words) },
      { heading: way.to, lines: endLines(to, words) },
    ],
    ...(look === undefined ? {} : { look }),
  };
}

/** Carrier, vehicle, days, countries between. */
export function wayRows(paperWay: PaperWay, words: PaperWords): { term: string; paragraphs: string[] }[] {
  const { way } = words.travel;
  const { write } = words;
  return [
    { term: way.direction, paragraphs: [way.directions[paperWay.direction]] },
    { term: way.carrier, paragraphs: [paperWay.carrier] },
    ...(paperWay.vehicle === "" ? [] : [{ term: way.vehicle, paragraphs: [paperWay.vehicle] }]),
    { term: way.departs, paragraphs: [write.day(paperWay.departsOn)] },
    { term: way.arrives, paragraphs: [write.day(paperWay.arrivesOn)] },
    ...(paperWay.through.length === 0
      ? []
      : [{ term: way.through, paragraphs: [write.list(paperWay.through.map(write.country))] }]),
  ];
}

/** Title, Latin name, what belongs to it. */
export function specimenParagraphs(specimen: PaperSpecimen, words: PaperWords): Text[] {
  const components = specimen.components.map(({ name, count }) =>
    count === 1 ? name : `${count} × ${name}`,
  );
  return [
    [{ text: specimen.title, emphasis: "strong" }],
    ...(specimen.latinTitle === "" ? [] : [[{ text: specimen.latinTitle, emphasis: "latin" as const }]]),
    ...(components.length === 0
      ? []
      : [
          [
            {
              text: fill(words.schedule.components, { components: components.join(words.write.semicolon) }),
              emphasis: "small" as const,
            },
          ],
        ]),
  ];
}

export function conditionText({ condition }: PaperSpecimen, words: PaperWords): string {
  const { schedule, write } = words;
  if (condition === null) return schedule.notChecked;
  return fill(schedule.checked, {
    day: write.day(condition.checkedOn),
    grade: say(schedule.grades, condition.grade),
  });
}

/** "1,200 × 800 × 640 mm" */
export function sidesText({ lengthMm, widthMm, heightMm }: PaperCrate["outer"], words: PaperWords): string {
  const sides = [lengthMm, widthMm, heightMm].map((side) => words.write.number(side));
  return `${sides.join("\u00A0× ")}\u00A0mm`;
}

export const massText = (massKg: number, words: PaperWords): string =>
  `${words.write.number(massKg, { least: 0, most: 1 })}\u00A0kg`;

/** Where anyone who holds the paper can see whether it is the valid version. */
export function checkBlock(
  { sha256, checkAddress }: Omit<Issued<unknown>, "content">,
  words: PaperWords,
  sidePt = 92,
): Extract<Block, { kind: "beside" }> {
  const { check } = words;
  return {
    kind: "beside",
    figure: codeFigure(checkAddress, sidePt, fill(check.alternative, { address: checkAddress })),
    lines: [
      check.sentence,
      [{ text: checkAddress, emphasis: "code" }],
      [{ text: check.hash, emphasis: "small" }],
      [{ text: sha256, emphasis: "code" }],
    ],
  };
}

/** The document with the code at its end. */
export function withCheck(
  document: PaperDocument,
  issued: Omit<Issued<unknown>, "content">,
  words: PaperWords,
): PaperDocument {
  const code = checkBlock(issued, words);
  const { blocks } = document;
  const last = blocks.at(-1);
  // a page that holds nothing but the code is easily lost; of what may be long, the end goes with it
  if (last === undefined || last.kind === "table" || last.kind === "definitions")
    return { ...document, blocks: [...blocks, { ...code, staysWithPrevious: true }] };
  return { ...document, blocks: [...blocks.slice(0, -1), { kind: "together", blocks: [last, code] }] };
}

/** Head, foot and title of an issued paper, with the code at its end. */
export function issuedDocument(
  { content, sha256, checkAddress }: Issued<PaperHead>,
  { name, lines, blocks }: { name: string; lines: readonly Text[]; blocks: readonly Block[] },
  words: PaperWords,
): PaperDocument {
  const { loan, version } = content;
  const frame = frameOf({ content, sha256, checkAddress }, name, words);
  return withCheck(
    {
      ...frame,
      blocks: [
        {
          kind: "title",
          overline: fill(words.travel.overline, { number: loan.number }),
          title: name,
          lines: [
            ...(loan.title === "" ? [] : [loan.title]),
            ...lines,
            fill(words.travel.issued, {
              version,
              moment: words.write.moment(content.issuedAt),
              name: content.issuedBy,
            }),
          ],
        },
        ...blocks,
      ],
    },
    { sha256, checkAddress },
    words,
  );
}

/** The running head and foot of an issued paper. */
export function frameOf(
  { content, sha256 }: Issued<PaperHead>,
  name: string,
  words: PaperWords,
): Pick<PaperDocument, "head" | "foot" | "decimalMark"> {
  return {
    decimalMark: words.write.decimalMark,
    head: {
      left: `${name} ${content.loan.number}`,
      right: fill(words.agreement.version, { version: content.version }),
    },
    foot: {
      left: [{ text: `${words.check.hash} ` }, { text: sha256, emphasis: "code" }],
      pageOf: words.agreement.pageOf,
    },
  };
}
