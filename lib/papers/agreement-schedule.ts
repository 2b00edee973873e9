/**
 * The schedule of an agreement: the specimens with sizes, masses and replacement
 * costs in columns that align; the limits, one row for those that share them and
 * one for all together; and what consent restricts. Specimens are numbered in the
 * order of the terms, and the later tables name them by that number. Nothing here
 * tells who a donor was.
 */
import type { AgreementTerms, LimitSource, ScheduleLimits, ScheduleRow } from "#lib/loans/terms.ts";
import type { Block, Cell, Span, TableColumn, Text } from "#lib/papers/blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

/** Numbers as ranges: 1, 2, 3, 5 as "1–3, 5". @param numbers rising */
export function rangesOf(numbers: readonly number[]): string {
  const ranges: { first: number; last: number }[] = [];
  for (const number of numbers) {
    const open = ranges.at(-1);
    if (open !== undefined && open.last === number - 1) open.last = number;
    else ranges.push({ first: number, last: number });
  }
  return ranges
    .map(({ first, last }) =>
      first === last ? `${first}` : `${first}${last === first + 1 ? ", " : "–"}${last}`,
    )
    .join(", ");
}

/** Rows that say the same, with the numbers of those that do, in order of the first. */
function groupBy<Row>(rows: readonly Row[], keyOf: (row: Row) => string): { row: Row; numbers: number[] }[] {
  const groups = new Map<string, { row: Row; numbers: number[] }>();
  rows.forEach((row, index) => {
    const key = keyOf(row);
    const group = groups.get(key) ?? { row, numbers: [] };
    group.numbers.push(index + 1);
    groups.set(key, group);
  });
  return [...groups.values()];
}

function madeOf({ preparation, fluid }: ScheduleRow, words: PaperWords): string {
  const { schedule } = words;
  if (fluid === null) return say(schedule.preparations, preparation);
  const percent = fluid.percent === null ? "" : ` ${words.write.number(fluid.percent)}\u00A0%`;
  return `${say(schedule.preparations, preparation)}: ${say(schedule.fluids, fluid.name)}${percent}`;
}

function kindLine(row: ScheduleRow, words: PaperWords): Text {
  const { schedule } = words;
  const series =
    row.series === null
      ? ""
      : `, ${fill(schedule.sheetOf, { number: row.series.number, code: row.series.code })}`;
  const small = (text: string): Span => ({ text, emphasis: "small" });
  return [
    small(`${say(schedule.kinds, row.kind)}, ${madeOf(row, words)}${series}; `),
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
  const { condition, replacementCost: cost } = row;
  return {
    paragraphs: [
      [{ text: row.title, emphasis: "strong" }],
      ...(row.latinTitle === "" ? [] : [[{ text: row.latinTitle, emphasis: "latin" as const }]]),
      kindLine(row, words),
      ...small([
        components.length === 0 ? "" : fill(schedule.components, { components: components.join("; ") }),
        row.hazards.length === 0 ? "" : fill(schedule.hazards, { hazards: row.hazards.join("; ") }),
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

export function scheduleBlocks({ schedule: rows, cover }: AgreementTerms, words: PaperWords): Block[] {
  const { schedule, write } = words;
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
        right(schedule.number),
        { header: schedule.accessionNumber, align: "left", width: "fit" },
        { header: schedule.specimen, align: "left", width: { share: 1 } },
        right(schedule.length),
        right(schedule.width),
        right(schedule.height),
        decimal(schedule.mass),
        decimal(oneCurrency === null ? schedule.cost : fill(schedule.costIn, { currency: oneCurrency })),
        ...(hasCurrencyColumn
          ? [{ header: schedule.currency, align: "left", width: "fit" } satisfies TableColumn]
          : []),
      ],
      rows: rows.map((row, index) => [
        [{ text: String(index + 1), emphasis: "quiet" }],
        [{ text: row.accessionNumber, emphasis: "code" }],
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

const percentOf = (fraction: number, words: PaperWords) =>
  words.write.number(fraction * 100, { least: 0, most: 1 });

function limitsCells(limits: ScheduleLimits, words: PaperWords): Cell[] {
  const { write } = words;
  const band = (ends: { low: number; high: number } | null, figure: (value: number) => string) =>
    ends === null ? words.limits.noneInCommon : `${figure(ends.low)}–${figure(ends.high)}`;
  return [
    band(limits.temperatureC, (value) => write.number(value)),
    write.number(limits.temperatureChange24hK),
    band(limits.humidity, (value) => percentOf(value, words)),
    percentOf(limits.humidityChange24h, words),
    write.number(limits.illuminanceLx),
    write.number(limits.lightLxHoursPerYear),
    write.number(limits.uvMicrowattPerLumen),
  ];
}

/** One row for all together, then one for each group that shares its limits. */
export function limitsBlocks({ schedule, groupLimits }: AgreementTerms, words: PaperWords): Block[] {
  const { limits } = words;
  const right = (header: string): TableColumn => ({ header, align: "right", width: "fit" });
  const groups = groupBy(schedule, (row) => JSON.stringify(row.limits));
  const isOneGroup = groups.length === 1;
  return [
    { kind: "paragraph", text: isOneGroup ? limits.leadOfOne : limits.lead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: limits.specimens, align: "left", width: { share: 1 } },
        right(limits.temperature),
        right(limits.temperatureChange),
        right(limits.humidity),
        right(limits.humidityChange),
        right(limits.illuminance),
        right(limits.lightInYear),
        right(limits.ultraviolet),
      ],
      rows: [
        [
          [{ text: isOneGroup ? limits.each : limits.allTogether, emphasis: "strong" }],
          ...limitsCells(groupLimits.limits, words),
        ],
        ...(isOneGroup ? [] : groups).map(({ row, numbers }) => [
          rangesOf(numbers),
          ...limitsCells(row.limits, words),
        ]),
      ],
    },
    ...(groupLimits.conflicts.length === 0
      ? []
      : [
          {
            kind: "definitions" as const,
            rows: [{ term: limits.apart, paragraphs: groupLimits.conflicts }],
          },
        ]),
    { kind: "subheading", text: limits.sources },
    { kind: "definitions", rows: sourceRows(groupLimits.sources, words) },
  ];
}

function sourceRows(sources: readonly LimitSource[], words: PaperWords) {
  const quantities = [...new Set(sources.map(({ quantity }) => quantity))];
  return quantities.map((quantity) => ({
    term: say(words.limits.quantities, quantity),
    paragraphs: sources
      .filter((source) => source.quantity === quantity)
      .map(({ title, where, standing }) =>
        [title, where, standing === "read" ? "" : standing].filter((part) => part !== "").join(", "),
      ),
  }));
}

/** Only human specimens have donors; those with the same restrictions share a row. */
export function consentBlocks({ schedule }: AgreementTerms, words: PaperWords): Block[] {
  const { consent } = words;
  const groups = groupBy(schedule, (row) => JSON.stringify([row.isHuman, row.restrictions])).filter(
    ({ row }) => row.isHuman,
  );
  return [
    { kind: "paragraph", text: consent.lead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: consent.number, align: "left", width: { share: 1 } },
        { header: consent.restriction, align: "left", width: { share: 3 } },
      ],
      rows: groups.map(({ row, numbers }) => [
        rangesOf(numbers),
        row.restrictions.length === 0 ? consent.none : { paragraphs: row.restrictions },
      ]),
    },
  ];
}
