/**
 * The rows of a large collection, table by table, as lines of Postgres's text
 * format. Each table is told once from the first specimen to the last; what two
 * tables need of one specimen follows from its number again.
 */
import { gradeOf } from "#lib/condition/grade.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import { specimenSearchKey } from "#lib/specimens/search-text.ts";
import { idMaker, spread } from "#seed/large/numbers.ts";
import {
  examiners,
  latinSides,
  places,
  type Subject,
  sides,
  subjects,
  type View,
  views,
} from "#seed/large/subjects.ts";

export const shownEach = 8;
export const checksEach = 3;

export type LargeCollection = {
  count: number;
  beganAtMs: number;
  today: DateText;
  accessionNumbers: readonly string[];
  /** Structures of each region, with whether they are paired. */
  structures: ReadonlyMap<string, readonly { id: string; paired: boolean }[]>;
  placeIds: readonly string[];
  donorCodes: readonly string[];
  accountId: string;
};

export type Table = { name: string; columns: readonly string[]; lines: () => Generator<string> };

type Cell = string | number | boolean | null;

/** One line; texts of this generator hold no tabs, strokes or breaks. */
const line = (cells: readonly Cell[]) =>
  `${cells.map((cell) => (cell === null ? "\\N" : cell)).join("\t")}\n`;

const ageBands = ["40–49", "50–59", "60–69", "70–79", "80–89"] as const;
const severities = ["trace", "trace", "trace", "minor", "minor", "moderate"] as const;

function pick<Item>(items: readonly Item[], index: number, salt: number): Item {
  const item = items[spread(index, salt, items.length)];
  if (item === undefined) throw new RangeError("nothing to choose from");
  return item;
}

type Sort = { subject: Subject; view: View; side: "left" | "right" | "median" };

function sortOf(index: number): Sort {
  const subject = pick(subjects, index, 1);
  return { subject, view: pick(views, index, 2), side: subject.paired ? pick(sides, index, 3) : "median" };
}

/** The kind follows the preparation where that is one of its own. */
function kindOf({ subject, view }: Sort): string {
  switch (view.preparation) {
    case "epoxy sheet":
    case "polyester sheet":
      return "sheet";
    case "fluid-preserved":
      return "fluid-preserved specimen";
    case "corrosion cast":
      return "cast";
    default:
      return subject.kind;
  }
}

function titleOf({ subject, view, side }: Sort): { title: string; latinTitle: string } {
  const name = side === "median" ? subject.english : `${side} ${subject.english}`;
  const latin = side === "median" ? subject.latin : `${subject.latin}, latus ${latinSides[side]}`;
  return {
    title: `${name.charAt(0).toUpperCase()}${name.slice(1)}, ${view.english}`,
    latinTitle: `${latin.charAt(0).toUpperCase()}${latin.slice(1)}; ${view.latin}`,
  };
}

/** Titles repeat, so what is searched of them is worked out once for each. */
function searchKeyMaker(): (
  accessionNumber: string,
  titles: { title: string; latinTitle: string },
) => string {
  const keys = new Map<string, string>();
  return (accessionNumber, titles) => {
    const known =
      keys.get(titles.title) ?? specimenSearchKey({ accessionNumber: "", formerNumbers: [], ...titles });
    keys.set(titles.title, known);
    const ofNumber = specimenSearchKey({ accessionNumber, formerNumbers: [], title: "", latinTitle: "" });
    return `${ofNumber.trimEnd()}${known}`;
  };
}

const specimenColumns = [
  "id",
  "accession_number",
  "title",
  "latin_title",
  "kind",
  "preparation",
  "fluid_name",
  "fluid_percent",
  "scientific_name",
  "human",
  "sex",
  "age_band",
  "side",
  "length_mm",
  "width_mm",
  "height_mm",
  "mass_kg",
  "mass_weighed",
  "use",
  "light",
  "replacement_cost_minor",
  "replacement_cost_currency",
  "replacement_cost_basis",
  "replacement_cost_on",
  "replacement_cost_by",
  "acquired_on",
  "publishable",
  "search_key",
] as const;

/** All tables in the order in which they refer to each other. */
export function largeTables(large: LargeCollection): Table[] {
  const { count, beganAtMs, today, accessionNumbers, structures, placeIds, donorCodes, accountId } = large;
  const specimenId = idMaker(beganAtMs, 1);
  const checkId = idMaker(beganAtMs, 2);
  const findingId = idMaker(beganAtMs, 3);
  const markId = idMaker(beganAtMs, 4);
  const moveId = idMaker(beganAtMs, 5);
  const searchKey = searchKeyMaker();
  const moment = new Date(beganAtMs).toISOString();

  function* specimens() {
    for (let index = 0; index < count; index += 1) {
      const sort = sortOf(index);
      const { subject, view, side } = sort;
      const accessionNumber = accessionNumbers[index] ?? "";
      const titles = titleOf(sort);
      const isSheet = kindOf(sort) === "sheet";
      const [lengthMm, widthMm, heightMm] = subject.sizeMm;
      const scale = 0.85 + spread(index, 4, 31) / 100;
      const isJar = view.preparation === "fluid-preserved";
      const mm = (value: number) => Math.max(2, Math.round(value * scale));
      yield line([
        specimenId(index),
        accessionNumber,
        titles.title,
        titles.latinTitle,
        kindOf(sort),
        view.preparation,
        isJar ? "ethanol" : null,
        isJar ? 70 : null,
        "Homo sapiens",
        true,
        spread(index, 5, 2) === 0 ? "female" : "male",
        pick(ageBands, index, 6),
        side,
        mm(lengthMm),
        mm(widthMm),
        isSheet ? 4 : mm(heightMm),
        Math.max(0.02, Math.round(subject.massKg * scale * (isSheet ? 0.1 : 1) * 1000) / 1000),
        spread(index, 7, 10) > 1,
        spread(index, 8, 3) > 0 ? "handling" : "viewing only",
        view.english.includes("injected") ? "sensitive" : "ordinary",
        10_000 * (10 + spread(index, 9, 190)),
        "EUR",
        "preparation cost",
        addDays(today, -spread(index, 10, 700)),
        "Anneli Vasterby",
        `${accessionNumber.slice(3, 7)}-${String(1 + spread(index, 11, 12)).padStart(2, "0")}-15`,
        spread(index, 12, 2) === 0,
        searchKey(accessionNumber, titles),
      ]);
    }
  }

  function* shown() {
    const grades = ["fully exposed", "fully exposed", "partly exposed", "landmark only"] as const;
    for (let index = 0; index < count; index += 1) {
      const sort = sortOf(index);
      const pool = structures.get(sort.subject.region) ?? [];
      const isCut = kindOf(sort) === "sheet";
      const start = spread(index, 20, pool.length);
      // A stride that has no divisor in common with the pool never meets a structure twice.
      const stride = pool.length % 7 === 0 ? 11 : 7;
      for (let nth = 0; nth < Math.min(shownEach, pool.length); nth += 1) {
        const structure = pool[(start + nth * stride) % pool.length];
        if (!structure) continue;
        const side = structure.paired ? (sort.side === "median" ? "both" : sort.side) : "median";
        const seen = isCut ? "in section" : pick(grades, index * shownEach + nth, 21);
        yield line([specimenId(index), structure.id, side, seen, "shown"]);
      }
    }
  }

  /** Whether a check finds something, and what. */
  function findingOf(index: number, nth: number) {
    if (spread(index, 30, 3) === 0) return null;
    const { view } = sortOf(index);
    const grown = nth === 2 && spread(index, 31, 8) === 0;
    const severity = grown ? "minor" : pick(severities, index, 32);
    return {
      term: pick(view.terms, index, 33),
      place: pick(places, index, 34),
      x: (10 + spread(index, 35, 80)) / 100,
      y: (10 + spread(index, 36, 80)) / 100,
      extentMm: 1 + spread(index, 37, 20) + (grown ? 6 : 0),
      severity,
      activity: "stable",
    } as const;
  }
  const dayOfCheck = (index: number, nth: number) =>
    addDays(today, -(1_100 - nth * 380 + spread(index, 40 + nth, 240)));

  function* checks() {
    for (let index = 0; index < count; index += 1)
      for (let nth = 0; nth < checksEach; nth += 1) {
        const found = findingOf(index, nth);
        yield line([
          checkId(index * checksEach + nth),
          specimenId(index),
          "periodic",
          dayOfCheck(index, nth),
          moment,
          pick(examiners, index, 50 + nth),
          accountId,
          true,
          true,
          true,
          found === null
            ? "Nothing to note."
            : `${found.place.charAt(0).toUpperCase()}${found.place.slice(1)}: looked at.`,
          gradeOf(found === null ? [] : [found]),
        ]);
      }
  }

  function* findings() {
    for (let index = 0; index < count; index += 1)
      for (let nth = 0; nth < checksEach; nth += 1) {
        const found = findingOf(index, nth);
        if (found === null) continue;
        yield line([
          findingId(index * checksEach + nth),
          checkId(index * checksEach + nth),
          markId(index),
          found.term,
          found.place,
          found.x,
          found.y,
          found.extentMm,
          found.severity,
          found.activity,
          nth === 0 ? "" : "same",
        ]);
      }
  }

  function* titles() {
    for (let index = 0; index < count; index += 1)
      yield line([specimenId(index), "owned", addDays(today, -1_200)]);
  }

  function* donors() {
    for (let index = 0; index < count; index += 1)
      yield line([specimenId(index), pick(donorCodes, index, 60)]);
  }

  function* moves() {
    for (let index = 0; index < count; index += 1)
      yield line([
        moveId(index),
        specimenId(index),
        pick(placeIds, index, 70),
        moment,
        "Program",
        "Entered in the register",
      ]);
  }

  return [
    { name: "specimen", columns: specimenColumns, lines: specimens },
    { name: "shown", columns: ["specimen_id", "structure_id", "side", "seen", "state"], lines: shown },
    {
      name: "condition_check",
      columns: [
        "id",
        "specimen_id",
        "occasion",
        "checked_on",
        "recorded_at",
        "checked_by",
        "account_id",
        "fit_to_show",
        "fit_to_handle",
        "fit_to_travel",
        "grounds",
        "grade",
      ],
      lines: checks,
    },
    {
      name: "finding",
      columns: [
        "id",
        "check_id",
        "mark_id",
        "term",
        "place",
        "x",
        "y",
        "extent_mm",
        "severity",
        "activity",
        "answer",
      ],
      lines: findings,
    },
    { name: "title", columns: ["specimen_id", "status", "recorded_on"], lines: titles },
    { name: "specimen_donor", columns: ["specimen_id", "donor_code"], lines: donors },
    {
      name: "move",
      columns: ["id", "specimen_id", "place_id", "moved_at", "moved_by", "reason"],
      lines: moves,
    },
  ];
}
