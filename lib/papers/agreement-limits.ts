/**
 * The limits of an agreement: one row for all specimens together and one for each
 * group that shares its limits, by the numbers of the schedule; what has nothing in
 * common and is kept apart; and each source of the figures once, with what was taken
 * from it. Humidity is a fraction in the terms and percent on paper.
 */
import type {
  AgreementTerms,
  LimitSource,
  ScheduleLimits,
  ScheduleRow,
  TermsConflict,
} from "#lib/agreements/frozen-terms.ts";
import type { Block, Cell, TableColumn } from "#lib/papers/blocks.ts";
import { groupBy, rangesOf } from "#lib/papers/row-groups.ts";
import { capital, fill, type PaperWords, say } from "#lib/papers/words.ts";

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

/**
 * Pairs that differ in no figure are one sentence: whoever needs that much excludes
 * whoever bears no more than that, so the groups say what the pairs say.
 */
function conflictTexts(
  conflicts: readonly TermsConflict[],
  schedule: readonly ScheduleRow[],
  words: PaperWords,
): string[] {
  const { limits, write } = words;
  const named = (accessionNumbers: readonly string[]) => {
    const numbers = schedule.flatMap((row, index) =>
      accessionNumbers.includes(row.accessionNumber) ? [index + 1] : [],
    );
    return `${words.schedule.number}\u00A0${rangesOf(numbers)}`;
  };
  const keyOf = ({ quantity, atLeast, atMost }: TermsConflict) => `${quantity} ${atLeast} ${atMost}`;
  return groupBy(conflicts, keyOf).map(({ first: { quantity, atLeast, atMost }, rows: pairs }) => {
    const figure = (value: number) =>
      quantity === "humidity" ? percentOf(value, words) : write.number(value);
    return fill(limits.conflicts[quantity], {
      atLeast: figure(atLeast),
      need: named(pairs.map((pair) => pair.needsAtLeast)),
      atMost: figure(atMost),
      bear: named(pairs.map((pair) => pair.allowsAtMost)),
    });
  });
}

/** One row for all together, then one for each group that shares its limits. */
export function limitsBlocks({ schedule, groupLimits }: AgreementTerms, words: PaperWords): Block[] {
  const { limits } = words;
  const right = (header: string): TableColumn => ({ header, align: "right", width: "fit" });
  const groups = groupBy(schedule, (row) => JSON.stringify(row.limits));
  const isOneGroup = groups.length === 1;
  const table: Block = {
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
      ...(isOneGroup ? [] : groups).map(({ first, numbers }) => [
        rangesOf(numbers),
        ...limitsCells(first.limits, words),
      ]),
    ],
  };
  const apart: Block = {
    kind: "definitions",
    rows: [{ term: limits.apart, paragraphs: conflictTexts(groupLimits.conflicts, schedule, words) }],
  };
  return [
    { kind: "paragraph", text: isOneGroup ? limits.leadOfOne : limits.lead, isLead: true },
    // "none in common" is not left on one page with its reason on the next
    ...(groupLimits.conflicts.length === 0
      ? [table]
      : [{ kind: "together", blocks: [table, apart] } satisfies Block]),
    { kind: "subheading", text: limits.sources },
    sourcesTable(groupLimits.sources, words),
  ];
}

/** A figure stays with its unit and with its thousands at the end of a line. */
const withUnits = (text: string) =>
  text.replace(/(?<=\d) (?=\d{3}(?!\d)|°C|%|µW|(?:lx|mm|kg|K|h)\b)/g, "\u00A0");

/** Each source once, with what is taken from it. */
function sourcesTable(sources: readonly LimitSource[], words: PaperWords): Block {
  const { limits, write } = words;
  const groups = groupBy(sources, ({ title, where, standing }) => JSON.stringify([title, where, standing]));
  return {
    kind: "table",
    columns: [
      { header: limits.source, align: "left", width: { share: 3 } },
      { header: limits.sourceOf, align: "left", width: { share: 2 } },
    ],
    rows: groups.map(({ first: { title, where, standing }, rows }) => [
      withUnits(
        `${say(limits.sourceWords, title)}${where === "" ? "" : `, ${say(limits.sourceWords, where)}`}` +
          `${standing === "read" ? "" : ` (${say(limits.standings, standing)})`}`,
      ),
      capital(write.list(rows.map(({ quantity }) => say(limits.quantities, quantity)))),
    ]),
  };
}
