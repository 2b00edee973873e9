/**
 * The two series of sheets. What a sheet shows follows from the span of each
 * structure, what a check finds on it from its number: air spaces leave bubbles,
 * gut parts from the resin, some edges are chipped. Nothing here is drawn by lot.
 */
import type { SeriesInput, Shown } from "#lib/specimens/schema.ts";
import { headSpans } from "#seed/scenario/series-head.ts";
import type { Span } from "#seed/scenario/series-span.ts";
import { trunkSpans } from "#seed/scenario/series-trunk.ts";
import { type Day, type History, history, look, mark, type Reading, seen } from "#seed/scenario/shape.ts";

export type ScenarioSeries = {
  series: SeriesInput;
  numberStem: string;
  titleStem: string;
  sex: "female" | "male";
  ageBand: "50–59" | "60–69";
  size: { lengthMm: number; widthMm: number; heightMm: number };
  massKg: number;
  preparedOn: string;
  acquiredOn: string;
  cost: { euros: number; day: Day };
  missing: readonly number[];
  donor: string;
  /** Racks, filled one after the other with so many sheets each. */
  racks: readonly string[];
  spans: readonly Span[];
  /** Days of the first sheet in each round of checks; twelve sheets are looked at in a day. */
  rounds: readonly Day[];
  /** Sheets that hold air, and sheets through gut. */
  airy: readonly [number, number];
  gut: readonly [number, number];
};

export const seriesOfSheets: Record<"SR 03" | "SR 07", ScenarioSeries> = {
  "SR 03": {
    series: {
      code: "SR 03",
      title: "Trunk, transverse sheets",
      plane: "transverse",
      direction: "head to foot",
      thicknessMm: 3.5,
      sawLossMm: 1,
      startLevelMm: 0,
      firstNumber: 1,
      sheetCount: 132,
      embedding: "epoxy",
      imagedFace: "lower",
      shrinkageArea: 0.06,
      note: "Limbs taken off at shoulder and upper thigh. Sheets 17 and 104 broke in sawing; 58 and 59 were given up for a section of the diaphragm.",
      landmarks: [
        { number: 4, level: "T1" },
        { number: 8, level: "T2" },
        { number: 13, level: "T3" },
        { number: 18, level: "T4" },
        { number: 22, level: "T5" },
        { number: 27, level: "T6" },
        { number: 32, level: "T7" },
        { number: 37, level: "T8" },
        { number: 43, level: "T9" },
        { number: 48, level: "T10" },
        { number: 54, level: "T11" },
        { number: 60, level: "T12" },
        { number: 67, level: "L1" },
        { number: 74, level: "L2" },
        { number: 82, level: "L3" },
        { number: 90, level: "L4" },
        { number: 98, level: "L5" },
        { number: 105, level: "S1" },
      ],
    },
    numberStem: "SR 03.",
    titleStem: "Trunk, transverse sheet",
    sex: "female",
    ageBand: "60–69",
    size: { lengthMm: 420, widthMm: 300, heightMm: 4 },
    massKg: 0.5,
    preparedOn: "2014-10-31",
    acquiredOn: "2014-11-24",
    cost: { euros: 620, day: -240 },
    missing: [17, 58, 59, 104],
    donor: "thorn",
    racks: ["H-SHEET.1", "H-SHEET.2", "H-SHEET.3", "H-SHEET.4"],
    spans: trunkSpans,
    rounds: [-640, -215],
    airy: [9, 57],
    gut: [68, 114],
  },
  "SR 07": {
    series: {
      code: "SR 07",
      title: "Head, sagittal sheets",
      plane: "sagittal",
      direction: "left to right",
      thicknessMm: 5,
      sawLossMm: 1,
      startLevelMm: -72,
      firstNumber: 1,
      sheetCount: 24,
      embedding: "polyester",
      imagedFace: "right",
      shrinkageArea: null,
      note: "Grey matter stained. The face can be recognised from sheets 10 to 15 laid together; these are not shown in a row.",
      landmarks: [],
    },
    numberStem: "SR 07.",
    titleStem: "Head, sagittal sheet",
    sex: "male",
    ageBand: "50–59",
    size: { lengthMm: 260, widthMm: 215, heightMm: 5 },
    massKg: 0.3,
    preparedOn: "2015-06-05",
    acquiredOn: "2015-07-13",
    cost: { euros: 740, day: -305 },
    missing: [2],
    donor: "myrtle",
    racks: ["H-SHEET.5"],
    spans: headSpans,
    rounds: [-590, -160],
    airy: [9, 16],
    gut: [0, 0],
  },
};

export function sheetNumbers({ series, missing }: ScenarioSeries): number[] {
  return Array.from({ length: series.sheetCount }, (_, index) => series.firstNumber + index).filter(
    (number) => !missing.includes(number),
  );
}

export function sheetName({ numberStem }: ScenarioSeries, number: number): string {
  return `${numberStem}${String(number).padStart(3, "0")}`;
}

/** What one sheet shows: all in section. */
export function shownOnSheet({ spans }: ScenarioSeries, number: number): Shown[] {
  return spans
    .filter(({ from, to }) => from <= number && number <= to)
    .flatMap(({ structureId, sides }) =>
      sides.map((side): Shown => ({ structureId, side, seen: "in section", state: "shown", remark: "" })),
    );
}

export function rackOfSheet({ racks, series }: ScenarioSeries, number: number): string {
  const index = Math.floor(((number - series.firstNumber) * racks.length) / series.sheetCount);
  return racks[index] ?? racks[0] ?? "";
}

const edges = ["upper edge", "right edge", "lower edge", "left edge"] as const;
/** Places on a picture as fractions of its width and height: edges of the sheet, front, air spaces, gut. */
function placesOn({ series }: ScenarioSeries, number: number) {
  const across = series.plane === "transverse";
  const [x, y] = across ? [0.03, 0.16] : [0.13, 0.04];
  return {
    edges: [
      [0.5, y],
      [1 - x, 0.5],
      [0.5, 1 - y],
      [x, 0.5],
    ],
    front: across ? [0.5, 0.22] : [0.76, 0.5],
    // A lung, now the right one, now the left; in a head the cavity of the nose.
    airSpace: across ? [number % 8 === 1 && number < 40 ? 0.34 : 0.67, 0.47] : [0.61, 0.43],
    gut: [0.58, 0.34 + (number % 4) / 50],
  } as const;
}

/** Which marks a sheet has had since it was made, and how they went on. */
function marksOfSheet(series: ScenarioSeries, number: number) {
  const within = ([from, to]: readonly [number, number]) => from <= number && number <= to;
  const side = (number * 7 + series.series.sheetCount) % 4;
  const places = placesOn(series, number);
  const [x, y] = places.edges[side] ?? [0.5, 0.5];
  const size = 1 + ((number * 13) % 5);
  const found: {
    key: string;
    mark: ReturnType<typeof mark>;
    first: Reading;
    later: Reading;
    words: string;
  }[] = [];
  if (number % 9 === 4)
    found.push({
      key: "chip",
      mark: mark("sheet.edge-chip", `The ${edges[side]}`, x, y),
      first: seen(1, "s", `${size} mm`),
      later: seen(1, "s", `${size} mm`),
      words: `chip at the ${edges[side]}, ${size} mm`,
    });
  if (within(series.airy) && number % 4 === 1)
    found.push({
      key: "bubble",
      mark: mark("sheet.bubble", "In an air space", ...places.airSpace),
      first: seen(1, "s", `${size} mm`),
      later: seen(1, "s", `${size} mm`),
      words: "bubble in an air space, as made",
    });
  if (within(series.gut) && number % 6 === 2)
    found.push({
      key: "parting",
      mark: mark("sheet.tissue-separation", "Around a loop of gut", ...places.gut),
      first: seen(1, "u", `${size} mm`),
      later: seen(1, "s", `${size + (number % 2)} mm`),
      words: "tissue stands off the resin around a loop of gut",
    });
  if (number % 11 === 7)
    found.push({
      key: "haze",
      mark: mark("sheet.haze", "Towards the front", ...places.front),
      first: seen(1, "u", `${2 + (number % 3)} %`),
      later: seen(1, "s", `${2 + (number % 3)} %`),
      words: "a haze towards the front, seen at a slant",
    });
  return found;
}

/** Two looks at one sheet, a year and more apart. */
export function checksOfSheet(series: ScenarioSeries, number: number): History {
  const found = marksOfSheet(series, number);
  const words = found.map((one) => one.words).join("; ");
  const day = Math.floor((number - series.series.firstNumber) / 12);
  const [first = 0, later = 0] = series.rounds;
  const readings = (which: "first" | "later") =>
    Object.fromEntries(found.map((one) => [one.key, one[which]]));
  return history(
    Object.fromEntries(found.map((one) => [one.key, one.mark])),
    look(
      first + day,
      "conservator",
      "st",
      words === ""
        ? `Sheet ${number} clear from edge to edge.`
        : `Sheet ${number} on the light table: ${words}.`,
      readings("first"),
    ),
    look(
      later + day,
      number % 5 === 0 ? "curator" : "conservator",
      "st",
      words === ""
        ? `Sheet ${number} as clear as in the first round.`
        : `Sheet ${number} again: ${words}; not grown.`,
      readings("later"),
    ),
  );
}
