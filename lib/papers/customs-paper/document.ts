/**
 * A pro-forma invoice, or the list of goods for a carnet, as a document: sender and
 * receiver, what this is and is not, the goods with mass, origin and value, on which
 * basis, who decided the tariff codes, the packages, and what is written by hand. The
 * columns of a carnet's list are those of the general list of the ATA Convention,
 * annex A (from memory).
 */
import type { Block, Cell, PaperDocument, TableColumn, Text } from "#lib/papers/blocks.ts";
import type { CustomsContent, Goods } from "#lib/papers/customs-paper/content.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { groupBy, rangesOf } from "#lib/papers/row-groups.ts";
import { endLines, issuedDocument, sidesText, wayRows } from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

type Row = { term: string; paragraphs: readonly Text[] };

const numbersWhere = (goods: readonly Goods[], holds: (one: Goods) => boolean): number[] =>
  goods.flatMap((one, index) => (holds(one) ? [index + 1] : []));

const isOpen = ({ value }: Goods) => value === null;

/** What it is in words that a layman knows. */
function descriptionOf(one: Goods, words: PaperWords): Text[] {
  const { schedule, customs } = words;
  const components = one.components.map(({ name, count }) => (count === 1 ? name : `${count} × ${name}`));
  const plain = [
    say(schedule.kinds, one.kind),
    one.human ? schedule.human : fill(customs.animal, { species: one.scientificName }),
    say(schedule.preparations, one.preparation),
  ].join(", ");
  return [
    [{ text: one.title, emphasis: "strong" }],
    plain,
    ...(components.length === 0
      ? []
      : [
          [
            {
              text: fill(schedule.components, { components: components.join(words.write.semicolon) }),
              emphasis: "small" as const,
            },
          ],
        ]),
  ];
}

const currenciesOf = (goods: readonly Goods[]): string[] => [
  ...new Set(goods.flatMap(({ value }) => (value === null ? [] : [value.currency]))),
];

function valueCell({ value }: Goods, withCurrency: boolean, words: PaperWords): string {
  if (value === null) return words.customs.notStated;
  const amount = words.write.amount(value);
  return withCurrency ? `${amount}\u00A0${value.currency}` : amount;
}

function valueSum(goods: readonly Goods[], withCurrency: boolean, words: PaperWords): Cell {
  const sums = currenciesOf(goods).map((currency) => {
    const minor = goods.reduce((sum, { value }) => sum + (value?.currency === currency ? value.minor : 0), 0);
    const amount = words.write.amount({ minor, currency });
    return withCurrency ? `${amount}\u00A0${currency}` : amount;
  });
  return sums.length === 1 ? (sums[0] ?? "") : { paragraphs: sums };
}

function massSum(goods: readonly Goods[], words: PaperWords): string {
  if (goods.some(({ massKg }) => massKg === null)) return "";
  const grams = goods.reduce((sum, { massKg }) => sum + Math.round((massKg ?? 0) * 1_000), 0);
  return words.write.number(grams / 1_000);
}

function codeCell({ decisions }: CustomsContent, number: number): Cell {
  const own = decisions.filter(({ numbers }) => numbers.includes(number));
  return {
    paragraphs: own.map(({ countryCode, code }) => [
      { text: `${countryCode}\u00A0`, emphasis: "small" as const },
      { text: code.replaceAll(" ", "\u00A0"), emphasis: "code" as const },
    ]),
  };
}

function goodsTable(content: CustomsContent, words: PaperWords): Block {
  const said = words.customs;
  const { goods, kind } = content;
  const currencies = currenciesOf(goods);
  const [only] = currencies;
  const several = currencies.length > 1;
  const isInvoice = kind === "pro-forma invoice";
  const columns: TableColumn[] = [
    { header: said.number, align: "right", width: "fit" },
    { header: said.description, align: "left", width: { share: 1 } },
    ...(isInvoice
      ? [{ header: said.code, align: "left" as const, width: "fit" as const }]
      : [{ header: said.pieces, align: "right" as const, width: "fit" as const }]),
    { header: said.mass, align: "decimal", width: "fit" },
    {
      header: several || only === undefined ? said.value : fill(said.valueIn, { currency: only }),
      align: several ? "right" : "decimal",
      width: "fit",
    },
    { header: said.origin, align: "left", width: "fit" },
    { header: said.crate, align: "left", width: "fit" },
  ];
  return {
    kind: "table",
    columns,
    rows: goods.map((one, index) => [
      String(index + 1),
      {
        paragraphs: [[{ text: one.accessionNumber, emphasis: "code" }], ...descriptionOf(one, words)],
      },
      isInvoice ? codeCell(content, index + 1) : "1",
      one.massKg === null ? said.notStated : words.write.number(one.massKg),
      valueCell(one, several, words),
      one.originCountry ?? said.notStated,
      [{ text: one.crate, emphasis: "code" }],
    ]),
    total: [
      "",
      goods.some(isOpen) ? said.totalAtLeast : said.total,
      isInvoice ? "" : String(goods.length),
      massSum(goods, words),
      valueSum(goods, several, words),
      "",
      "",
    ],
  };
}

function whatRows(content: CustomsContent, words: PaperWords): Row[] {
  const said = words.customs;
  const { goods, way, returnBy, purpose } = content;
  const row = (term: string, ...paragraphs: Text[]): Row => ({ term, paragraphs });
  const human = numbersWhere(goods, (one) => one.human);
  const fluids = groupBy(goods, ({ fluidName, hazards }) => JSON.stringify([fluidName, hazards])).filter(
    ({ first }) => first.fluidName !== null || first.hazards.length > 0,
  );
  const fluidText = ({ fluidName, hazards }: Goods) =>
    [
      ...(fluidName === null
        ? []
        : [fill(words.schedule.inFluid, { fluid: say(words.schedule.fluids, fluidName) })]),
      ...hazards.map((hazard) => say(words.schedule.hazardSubstances, hazard)),
    ].join(", ");
  return [
    row(
      said.reason,
      fill(said.reasons[way.direction], {
        day: words.write.day(returnBy),
        purpose: say(words.loan.purposes, purpose),
      }),
    ),
    row(said.noSale, said.noSaleText),
    ...(human.length === 0 ? [] : [row(said.human, fill(said.humanText, { numbers: rangesOf(human) }))]),
    ...(fluids.length === 0
      ? []
      : [
          row(
            said.fluid,
            ...fluids.map(({ first, numbers }) =>
              fill(said.fluidText, { numbers: rangesOf(numbers), fluid: fluidText(first) }),
            ),
            said.fluidOther,
          ),
        ]),
    row(said.permits, said.permitsText),
    ...wayRows(way, words),
  ];
}

function basisRow({ goods }: CustomsContent, words: PaperWords): Row {
  const said = words.customs;
  const stated = groupBy(goods, ({ value }) => JSON.stringify([value?.basis, value?.statedOn]));
  return {
    term: said.basis,
    paragraphs: [
      said.basisText,
      ...stated.flatMap(({ first: { value }, numbers }) =>
        value === null
          ? []
          : [
              fill(said.basisOf, {
                numbers: rangesOf(numbers),
                basis: say(words.schedule.costBases, value.basis),
                day: words.write.day(value.statedOn),
              }),
            ],
      ),
    ],
  };
}

function codesBlocks({ decisions, undecided }: CustomsContent, words: PaperWords): Block[] {
  const said = words.customs;
  return [
    { kind: "paragraph", text: said.codesLead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: said.country, align: "left", width: { share: 1 } },
        { header: said.code, align: "left", width: "fit" },
        { header: said.specimens, align: "left", width: { share: 1 } },
        { header: said.decidedBy, align: "left", width: { share: 1 } },
        { header: said.decidedOn, align: "left", width: "fit" },
        { header: said.note, align: "left", width: { share: 1 } },
      ],
      rows: [
        ...decisions.map(({ countryCode, code, numbers, decidedBy, decidedOn, note }): Cell[] => [
          words.write.country(countryCode),
          [{ text: code.replaceAll(" ", "\u00A0"), emphasis: "code" }],
          rangesOf(numbers),
          decidedBy,
          words.write.day(decidedOn),
          note,
        ]),
        ...undecided.map(({ countryCode, numbers }): Cell[] => [
          words.write.country(countryCode),
          said.open,
          rangesOf(numbers),
          "",
          "",
          "",
        ]),
      ],
    },
  ];
}

function packagesTable({ crates }: CustomsContent, words: PaperWords): Block {
  const said = words.customs;
  return {
    kind: "table",
    columns: [
      { header: said.crate, align: "left", width: { share: 1 } },
      { header: said.outer, align: "left", width: "fit" },
      { header: said.gross, align: "decimal", width: "fit" },
    ],
    rows: crates.map((crate) => [
      [{ text: crate.code, emphasis: "code" }],
      sidesText(crate.outer, words),
      words.write.number(crate.grossMassKg, { least: 0, most: 1 }),
    ]),
  };
}

/** A part of the paper that is left out where there is nothing to say in it. */
type Part = { text: string; blocks: readonly Block[]; isHeld?: boolean };

function lettered(parts: readonly Part[]): Block[] {
  return parts
    .filter(({ blocks }) => blocks.length > 0)
    .flatMap(({ text, blocks, isHeld }, index): Block[] => {
      const heading: Block = { kind: "heading", mark: String.fromCharCode(65 + index), text };
      return isHeld ? [{ kind: "together", blocks: [heading, ...blocks] }] : [heading, ...blocks];
    });
}

function incompleteBlocks(content: CustomsContent, words: PaperWords): Block[] {
  const { goods, undecided, kind } = content;
  const said = words.customs.incomplete;
  const codes = kind === "pro-forma invoice" ? new Set(undecided.flatMap(({ numbers }) => numbers)).size : 0;
  const values = goods.filter(isOpen).length;
  if (codes + values === 0) return [];
  const lacks = [
    ...(codes > 0 ? [fill(said.codes, { codes })] : []),
    ...(values > 0 ? [fill(said.values, { values })] : []),
  ];
  return [{ kind: "notice", text: [said.lead, ...lacks].join(" ") }];
}

export function customsDocument(issued: Issued<CustomsContent>, words: PaperWords): PaperDocument {
  const { content } = issued;
  const { kind, way, crates } = content;
  const said = words.customs;
  const isInvoice = kind === "pro-forma invoice";
  const parts: Part[] = [
    {
      text: said.what,
      blocks: [
        {
          kind: "columns",
          columns: [
            { heading: said.sender, lines: endLines(way.from, words) },
            { heading: said.receiver, lines: endLines(way.to, words) },
          ],
        },
        { kind: "definitions", rows: whatRows(content, words) },
      ],
    },
    {
      text: said.goods,
      blocks: [goodsTable(content, words), { kind: "definitions", rows: [basisRow(content, words)] }],
    },
    { text: said.codes, blocks: isInvoice ? codesBlocks(content, words) : [] },
    { text: said.packages, blocks: crates.length === 0 ? [] : [packagesTable(content, words)] },
    {
      text: said.carnet,
      blocks: isInvoice
        ? []
        : [
            {
              kind: "definitions",
              rows: said.carnetRows.map(({ term, text }) => ({ term, paragraphs: [text] })),
            },
          ],
    },
    {
      text: said.byHand,
      isHeld: true,
      blocks: [
        {
          kind: "fields",
          perRow: 2,
          fields: said.fields[kind].map((label) => ({ label, value: null })),
        },
      ],
    },
    {
      text: said.declaration,
      isHeld: true,
      blocks: [
        { kind: "paragraph", text: said.declared },
        {
          kind: "signatures",
          places: [
            {
              party: said.party,
              organisation: way.from.organisation,
              signedBy: null,
              lineLabel: said.signature,
              facts: [
                { label: said.name, value: null },
                { label: words.signatures.role, value: null },
                { label: said.place, value: null },
              ],
            },
          ],
        },
      ],
    },
  ];
  return issuedDocument(
    issued,
    {
      name: words.trade.names[kind],
      lines: [said.about[kind]],
      blocks: [...incompleteBlocks(content, words), ...lettered(parts)],
    },
    words,
  );
}
