/**
 * A quotation or a cost statement as a document: the parties, the loan, every line
 * with how it was reckoned, the totals for each tax rate, what holds besides, and, of
 * a statement, what was quoted beside what it came to.
 */
import type { ComparedLine, CostingContent, CostLine, LinePrice } from "#lib/costing/schema.ts";
import type { Block, PaperDocument, Text } from "#lib/papers/blocks.ts";
import type { CostPaperContent } from "#lib/papers/cost-paper/content.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { issuedDocument } from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

const noBreak = (text: string) => text.replaceAll(" ", "\u00A0");

/** A decimal that is kept as text, as the language writes it. */
const decimalText = (decimal: string, { write }: PaperWords): string =>
  write.number(Number(decimal), { least: 0, most: 9 });

const moneyText = (minor: number, currency: string, { write }: PaperWords): string =>
  noBreak(`${write.amount({ minor, currency })} ${currency}`);

function signedText(minor: number, currency: string, { write }: PaperWords): string {
  const sign = minor < 0 ? "\u2212" : "";
  return `${sign}${write.amount({ minor: Math.abs(minor), currency })}`;
}

const lineName = ({ code, note }: Pick<CostLine, "code" | "note">, words: PaperWords): Text[] => {
  const name = say(words.trade.cost.codes, code);
  if (code === "other" && note !== "") return [note];
  return note === "" ? [name] : [name, [{ text: note, emphasis: "small" }]];
};

function priceText(price: LinePrice, currency: string, words: PaperWords): string {
  const said = words.trade.cost;
  const unitText = (unit: keyof typeof said.units, quantity: string) =>
    quantity === "1" ? said.units[unit].one : said.units[unit].other;
  switch (price.kind) {
    case "counted":
      return fill(said.counted, {
        quantity: decimalText(price.quantity, words),
        unit: unitText(price.unit, price.quantity),
        rate: moneyText(price.rateMinor, currency, words),
      });
    case "share": {
      const share = {
        share: decimalText(price.share, words),
        per: said.per[price.per],
        sum: moneyText(price.ofMinor, currency, words),
      };
      return price.unit === "once"
        ? fill(said.share, share)
        : fill(said.shareOften, {
            ...share,
            times: decimalText(price.times, words),
            unit: unitText(price.unit, price.times),
          });
    }
    case "stated":
      return moneyText(price.minor, currency, words);
  }
}

function reckonedText(line: CostLine, { currency, exchange }: CostingContent, words: PaperWords): string {
  const price = priceText(line.price, line.currency, words);
  const rate = exchange.find((one) => one.from === line.currency && one.to === currency);
  if (line.currency === currency || rate === undefined) return price;
  const exchanged = fill(words.trade.cost.exchanged, {
    rate: decimalText(rate.rate, words),
    from: rate.from,
    to: rate.to,
    day: words.write.day(rate.on),
  });
  return `${price}, ${exchanged}`;
}

function partyLines(
  party: { name: string; address: string; city: string; countryCode: string; email: string; phone: string },
  contact: string,
  words: PaperWords,
): Text[] {
  const { address, city, countryCode, email, phone } = party;
  return [
    [{ text: party.name, emphasis: "strong" }],
    ...[
      contact === "" ? "" : fill(words.trade.cost.contact, { name: contact }),
      address,
      city,
      words.write.country(countryCode),
      email,
      phone === "" ? "" : fill(words.travel.way.phone, { phone }),
    ].filter((text) => text.trim() !== ""),
  ];
}

function linesBlocks(costing: CostingContent, words: PaperWords): Block[] {
  const said = words.trade.cost;
  const { currency, lines, taxes } = costing;
  const amount = (minor: number) => words.write.amount({ minor, currency });
  return [
    { kind: "heading", mark: "C", text: said.lines },
    {
      kind: "table",
      columns: [
        { header: said.line, align: "left", width: { share: 3 } },
        { header: said.reckoned, align: "left", width: { share: 3 } },
        { header: said.tax, align: "decimal", width: "fit" },
        { header: fill(said.net, { currency }), align: "decimal", width: "fit" },
      ],
      rows: lines.map((line) => [
        { paragraphs: lineName(line, words) },
        reckonedText(line, costing, words),
        decimalText(line.taxPercent, words),
        amount(line.netMinor),
      ]),
      total: [said.netSum, "", "", amount(costing.netMinor)],
    },
    {
      kind: "together",
      blocks: [
        { kind: "subheading", text: said.taxes },
        {
          kind: "table",
          columns: [
            { header: said.tax, align: "left", width: { share: 1 } },
            { header: said.taxNet, align: "decimal", width: "fit" },
            { header: said.taxTax, align: "decimal", width: "fit" },
            { header: said.taxGross, align: "decimal", width: "fit" },
          ],
          rows: taxes.map(({ percent, netMinor, taxMinor }) => [
            fill(said.taxAt, { percent: decimalText(percent, words) }),
            amount(netMinor),
            amount(taxMinor),
            amount(netMinor + taxMinor),
          ]),
          total: [
            fill(said.total, { currency }),
            amount(costing.netMinor),
            amount(costing.taxMinor),
            amount(costing.totalMinor),
          ],
        },
      ],
    },
  ];
}

function comparedBlocks({ currency, against }: CostingContent, words: PaperWords): Block[] {
  if (against === null) return [];
  const said = words.trade.cost;
  const amount = (minor: number | null) =>
    minor === null ? said.noLine : words.write.amount({ minor, currency });
  const { lines, totalMinor, differenceMinor } = against;
  return [
    { kind: "heading", mark: "D", text: fill(said.against, { number: against.version }) },
    {
      kind: "table",
      columns: [
        { header: said.line, align: "left", width: { share: 1 } },
        { header: said.quoted, align: "decimal", width: "fit" },
        { header: said.actual, align: "decimal", width: "fit" },
        { header: said.difference, align: "decimal", width: "fit" },
      ],
      rows: lines.map((line: ComparedLine) => [
        { paragraphs: lineName(line, words) },
        amount(line.quotedMinor),
        amount(line.actualMinor),
        signedText(line.differenceMinor, currency, words),
      ]),
      total: [
        fill(said.total, { currency }),
        amount(totalMinor),
        amount(totalMinor + differenceMinor),
        signedText(differenceMinor, currency, words),
      ],
    },
  ];
}

function cancellationBlocks({ kind, cancellation }: CostingContent, words: PaperWords): Block[] {
  if (kind !== "quotation") return [];
  const said = words.trade.cost;
  return [
    { kind: "subheading", text: said.calledOff },
    { kind: "paragraph", text: said.calledOffLead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: said.daysLeft, align: "left", width: { share: 1 } },
        { header: said.dueShare, align: "right", width: "fit" },
      ],
      rows: cancellation.map(({ daysBefore, percent }) => [
        daysBefore === 0 ? said.dayOfDispatch : fill(said.daysOrFewer, { days: daysBefore }),
        fill(said.taxAt, { percent: decimalText(percent, words) }),
      ]),
    },
  ];
}

function holdsBlocks({ costing, costingSha256 }: CostPaperContent, words: PaperWords): Block[] {
  const said = words.trade.cost;
  const { kind, costRecovery, validUntil, feeScaleVersion, note, rounding, against } = costing;
  const row = (term: string, ...paragraphs: Text[]) => ({ term, paragraphs });
  return [
    { kind: "heading", mark: against === null ? "D" : "E", text: said.holds },
    {
      kind: "definitions",
      rows: [
        ...(costRecovery ? [row(said.recovery, said.recoveryText)] : []),
        row(said.agreed, said.agreedText[kind]),
        ...(validUntil === null
          ? []
          : [row(said.validUntil, fill(said.validUntilText, { day: words.write.day(validUntil) }))]),
        row(said.rounding, said.roundingText[rounding]),
        row(said.rates, fill(said.ratesText, { version: feeScaleVersion })),
        ...(note === "" ? [] : [row(said.note, note)]),
        row(said.costingHash, [{ text: costingSha256, emphasis: "code" as const }]),
      ],
    },
    ...cancellationBlocks(costing, words),
  ];
}

export function costPaperDocument(issued: Issued<CostPaperContent>, words: PaperWords): PaperDocument {
  const { kind, costing } = issued.content;
  const { loan, lender, borrower } = costing;
  const said = words.trade.cost;
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: said.parties },
    {
      kind: "columns",
      columns: [
        { heading: said.lender, lines: partyLines(lender, "", words) },
        { heading: said.borrower, lines: partyLines(borrower, borrower.contactName, words) },
      ],
    },
    { kind: "heading", mark: "B", text: said.loan },
    {
      kind: "definitions",
      rows: [
        { term: said.purpose, paragraphs: [say(words.loan.purposes, loan.purpose)] },
        {
          term: said.days,
          paragraphs: [
            fill(said.daysText, {
              from: words.write.day(loan.startsOn),
              to: words.write.day(loan.returnBy),
            }),
          ],
        },
        { term: said.specimens, paragraphs: [words.write.number(loan.specimens)] },
        { term: said.venue, paragraphs: [loan.venue] },
      ],
    },
    ...linesBlocks(costing, words),
    ...comparedBlocks(costing, words),
    ...holdsBlocks(issued.content, words),
  ];
  return issuedDocument(
    issued,
    {
      name: words.trade.names[kind],
      lines: [fill(said.about[kind], { number: costing.version, day: words.write.day(costing.drawnUpOn) })],
      blocks,
    },
    words,
  );
}
