/**
 * The schedule of an agreement: the specimens with sizes, masses and replacement
 * costs in columns that align. Specimens are numbered in the order of the terms, and
 * the tables of limits and of consent name them by that number. A picture stands below
 * each accession number and is no part of the terms. Nothing here tells who a donor was.
 */
import type { AgreementTerms, ScheduleRow } from "#lib/agreements/frozen-terms.ts";
import type { Block, Cell, Span, TableColumn, Text } from "#lib/papers/blocks.ts";
import { type SchedulePictures, scheduleFigure } from "#lib/papers/schedule-pictures.ts";
import { inBoth } from "#lib/papers/two-languages.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

/** "ethanol 70 %", held together at the end of a line. */
function withPercent(name: string, percent: number | null, words: PaperWords): string {
  return percent === null ? name : `${name}\u00A0${words.write.number(percent)}\u00A0%`;
}

function madeOf({ preparation, fluid }: ScheduleRow, words: PaperWords): string {
  const { preparations, fluids, inFluid } = words.schedule;
  if (fluid === null) return say(preparations, preparation);
  return fill(inFluid, { fluid: withPercent(say(fluids, fluid.name), fluid.percent, words) });
}

function kindLine(row: ScheduleRow, words: PaperWords): Text {
  const { schedule } = words;
  const series =
    row.series === null
      ? ""
      : `, ${fill(schedule.sheetOf, { number: row.series.number, code: row.series.code })}`;
  const small = (text: string): Span => ({ text, emphasis: "small" });
  return [
    small(`${say(schedule.kinds, row.kind)}, ${madeOf(row, words)}${series}${words.write.semicolon}`),
    row.isHuman ? small(`${schedule.human}.`) : { text: row.scientificName, emphasis: "small latin" },
    ...(row.isHuman ? [] : [small(".")]),
  ];
}

/** Title, Latin name, and in small what belongs to it and what to mind. */
function specimenCell(row: ScheduleRow, words: PaperWords): Cell {
  const { schedule, write } = words;
  const small = (sentences: readonly string[]): Text[] => {
    const text = sentences.filter((sentence) => sentence !== "").join(" ");
    return text === "" ? [] : [[{ text, emphasis: "small" }]];
  };
  const components = row.components.map(({ name, count }) => (count === 1 ? name : `${count} × ${name}`));
  const hazards = row.hazards.map(({ substance, percent }) =>
    withPercent(say(schedule.hazardSubstances, substance), percent, words),
  );
  const { condition, replacementCost: cost } = row;
  return {
    paragraphs: [
      [{ text: row.title, emphasis: "strong" }],
      ...(row.latinTitle === "" ? [] : [[{ text: row.latinTitle, emphasis: "latin" as const }]]),
      kindLine(row, words),
      ...small([
        components.length === 0
          ? ""
          : fill(schedule.components, { components: components.join(write.semicolon) }),
        hazards.length === 0 ? "" : fill(schedule.hazards, { hazards: hazards.join(write.semicolon) }),
        // what may be handled is for the purpose and the consent to say; only what may not is said here
        row.use === "handling" ? "" : say(schedule.uses, row.use),
        row.isWithMount ? schedule.withMount : "",
      ]),
      ...small([
        condition === null
          ? schedule.notChecked
          : fill(schedule.checked, {
              day: write.day(condition.checkedOn),
              grade: say(schedule.grades, condition.grade),
            }),
      ]),
      ...small([
        cost === null
          ? schedule.noCost
          : fill(schedule.costStated, {
              day: write.day(cost.statedOn),
              basis: say(schedule.costBases, cost.basis),
            }),
      ]),
    ],
  };
}

/** @param second what heads the columns as well, where the terms have two languages */
export function scheduleBlocks(
  { schedule: rows, cover }: AgreementTerms,
  words: PaperWords,
  { second = null, pictures = new Map() }: { second?: PaperWords | null; pictures?: SchedulePictures } = {},
): Block[] {
  const { schedule, write } = words;
  const both = inBoth(words, second, "\n");
  const head = (name: "number" | "accessionNumber" | "specimen" | "length" | "width" | "height" | "mass") =>
    both((said) => said.schedule[name]);
  const costs = rows.map((row) => row.replacementCost);
  const currencies = [...new Set(costs.flatMap((cost) => (cost === null ? [] : [cost.currency])))];
  const [currency] = currencies;
  const oneCurrency = currencies.length === 1 && currency !== undefined ? currency : null;
  const hasCurrencyColumn = currencies.length > 1;
  const right = (header: string): TableColumn => ({ header, align: "right", width: "fit" });
  const decimal = (header: string): TableColumn => ({ header, align: "decimal", width: "fit" });
  const inCurrencyColumn = (text: string): Cell[] => (hasCurrencyColumn ? [text] : []);
  const millimetres = (size: number | undefined) =>
    size === undefined ? schedule.notStated : write.number(size);

  const total: Cell[] | null =
    cover.needed === null
      ? null
      : [
          "",
          "",
          [
            {
              text: costs.includes(null) ? schedule.totalAtLeast : schedule.total,
              emphasis: "strong",
            },
          ],
          "",
          "",
          "",
          "",
          [{ text: write.amount(cover.needed), emphasis: "strong" }],
        ];
  return [
    {
      kind: "table",
      columns: [
        right(head("number")),
        { header: head("accessionNumber"), align: "left", width: "fit" },
        { header: head("specimen"), align: "left", width: { share: 1 } },
        right(head("length")),
        right(head("width")),
        decimal(head("height")),
        decimal(head("mass")),
        decimal(
          both(({ schedule: { cost, costIn } }) =>
            oneCurrency === null ? cost : fill(costIn, { currency: oneCurrency }),
          ),
        ),
        ...(hasCurrencyColumn
          ? [
              {
                header: both((said) => said.schedule.currency),
                align: "left",
                width: "fit",
              } satisfies TableColumn,
            ]
          : []),
      ],
      rows: rows.map((row, index) => [
        [{ text: String(index + 1), emphasis: "quiet" }],
        {
          paragraphs: [[{ text: row.accessionNumber, emphasis: "code" }]],
          figure: scheduleFigure(row, words, pictures),
        },
        specimenCell(row, words),
        millimetres(row.size?.lengthMm),
        millimetres(row.size?.widthMm),
        millimetres(row.size?.heightMm),
        row.massKg === null ? schedule.notStated : write.number(row.massKg),
        row.replacementCost === null ? schedule.notStated : write.amount(row.replacementCost),
        ...inCurrencyColumn(row.replacementCost?.currency ?? ""),
      ]),
      ...(total === null ? {} : { total }),
    },
    { kind: "note", text: schedule.note },
  ];
}
