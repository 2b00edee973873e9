/**
 * How the demo scenario is written down. What bears on a state that a person sees
 * (checks, consents, loans) is a day counted from the day of loading, so that an
 * overdue loan stays overdue; what lies in the deep past (making, acquisition) is
 * a calendar date, as it stands on the label. People, donors and places are named
 * by keys that only the loader turns into records.
 */
import type { Occasion, Severity } from "#lib/condition/schema.ts";
import type { FindingTerm } from "#lib/condition/terms.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { PermitInput, TitleInput } from "#lib/provenance/schema.ts";
import {
  type Component,
  nothingKnownInLaw,
  type PreparationStepInput,
  type Shown,
  type Size,
  type SpecimenInput,
} from "#lib/specimens/schema.ts";
import { sideOfUnpaired } from "#seed/scenario/sides.ts";

/** Days from the day of loading; negative lies behind, positive ahead. */
export type Day = number;

export function dateOf(today: DateText, day: Day): DateText {
  return addDays(today, day);
}

// ------------------------------------------------------------------ specimens

/** A permit with its validity in days from loading; null is open. */
export type ScenarioPermit = Omit<PermitInput, "validFrom" | "validUntil"> & {
  from: Day | null;
  until: Day | null;
};

export type ScenarioTitle = Omit<TitleInput, "recordedOn">;

export type ScenarioSpecimen = {
  record: Omit<SpecimenInput, "replacementCost" | "wholeId">;
  /** Whole euros, on what basis, and how many days ago it was stated. */
  cost: {
    euros: number;
    basis: "preparation cost" | "cost to replace" | "agreed with the owner";
    day: Day;
  } | null;
  /** Accession number of the specimen that this one is a part of. */
  whole: string | null;
  shows: Shown[];
  steps: PreparationStepInput[];
  /** Keys of donors; two of them make a composite specimen. */
  donors: readonly string[];
  title: ScenarioTitle;
  permits: ScenarioPermit[];
  place: string;
};

type Given = Pick<SpecimenInput, "kind" | "preparation" | "side" | "use"> &
  Partial<Omit<ScenarioSpecimen["record"], "legal">>;
type Rest = Partial<Omit<ScenarioSpecimen, "record">> & { place: string };

const owned: ScenarioTitle = { status: "owned", ownerName: "", leaveToLend: false, leaveReference: "" };

/** A specimen with what most of them have in common filled in. */
export function specimen(
  accessionNumber: string,
  title: string,
  latinTitle: string,
  facts: Given,
  rest: Rest,
): ScenarioSpecimen {
  return {
    record: {
      accessionNumber,
      title,
      latinTitle,
      fluidName: null,
      fluidPercent: null,
      human: true,
      scientificName: "Homo sapiens",
      sex: "unknown",
      ageBand: null,
      pose: "",
      size: null,
      massKg: null,
      mountedSize: null,
      mountedMassKg: null,
      massWeighed: true,
      partsAtRisk: "",
      light: "ordinary",
      preparedOn: null,
      acquiredOn: null,
      publishable: false,
      note: "",
      components: [],
      formerNumbers: [],
      hazards: [],
      legal: nothingKnownInLaw,
      ...facts,
    },
    cost: null,
    whole: null,
    shows: [],
    steps: [],
    donors: [],
    title: owned,
    permits: [],
    ...rest,
  };
}

export function size(lengthMm: number, widthMm: number, heightMm: number): Size {
  return { lengthMm, widthMm, heightMm };
}

/** Parts that come off and are counted, as "name" or "3 name"; those after "fixed:" stay on. */
export function parts(...names: string[]): Component[] {
  return names.map((text) => {
    const [, fixed, count, name] = /^(fixed: )?(?:(\d+) )?(.+)$/.exec(text) ?? [];
    return { name: name ?? text, count: Number(count ?? 1), detachable: fixed === undefined };
  });
}

/** The side of each structure; what is unpaired lies where it lies (sides.ts). */
type Side = Shown["side"] | "unpaired";

const sideAt = (side: Side, structureId: string): Shown["side"] =>
  side === "unpaired" ? sideOfUnpaired(structureId) : side;

/** Structures seen alike, their ids with spaces between. */
export function see(seen: Shown["seen"], side: Side, ids: string): Shown[] {
  return ids
    .trim()
    .split(/\s+/)
    .map((structureId) => ({
      structureId,
      side: sideAt(side, structureId),
      seen,
      state: "shown",
      remark: "",
    }));
}

/** One structure with a word on how it is seen. */
export function remarked(seen: Shown["seen"], side: Side, structureId: string, remark: string): Shown {
  return { structureId, side: sideAt(side, structureId), seen, state: "shown", remark };
}

export function variant(seen: Shown["seen"], side: Side, structureId: string, remark: string): Shown {
  return { structureId, side: sideAt(side, structureId), seen, state: "variant", remark };
}

/** Not on the specimen any more, or never was: the reader is told, so that nobody looks for it. */
export function gone(state: "removed" | "absent", side: Side, ids: string, remark: string): Shown[] {
  return see("landmark only", side, ids).map((shown) => ({ ...shown, state, remark }));
}

export function step(
  name: PreparationStepInput["step"],
  startedOn: DateText | null,
  endedOn: DateText | null,
  note = "",
): PreparationStepInput {
  return { step: name, startedOn, endedOn, note };
}

// --------------------------------------------------------------------- checks

/** Who looked: a person of the house by role. */
export type Examiner = "conservator" | "curator" | "collection manager";

/** What a mark is and where; the same from check to check. x and y are fractions of the picture. */
export type Mark = { term: FindingTerm; place: string; x?: number; y?: number };

/** One look at one mark. Extents in millimetres, or in per cent of the area. */
export type Reading = {
  severity: Severity;
  activity: "stable" | "active" | "unknown";
  mm?: number;
  percent?: number;
  note?: string;
};

export type ScenarioCheck = {
  day: Day;
  by: Examiner;
  occasion: Occasion;
  /** By the key of the mark. */
  readings: Record<string, Reading>;
  fit: { show: boolean; handle: boolean; travel: boolean };
  grounds: string;
};

export type History = { marks: Record<string, Mark>; checks: ScenarioCheck[] };

/** The marks of one specimen and what each check says of them. */
export function history(marks: Record<string, Mark>, ...checks: ScenarioCheck[]): History {
  return { marks, checks };
}

export function mark(term: FindingTerm, place: string, x?: number, y?: number): Mark {
  return x === undefined || y === undefined ? { term, place } : { term, place, x, y };
}

const activities = { s: "stable", a: "active", u: "unknown" } as const;
const severities = { 0: "none", 1: "trace", 2: "minor", 3: "moderate", 4: "severe" } as const;

/**
 * A reading in short: severity 0 to 4, activity (s, a or u), then an extent such
 * as "12 mm" or "5 %", then a word.
 */
export function seen(
  severity: keyof typeof severities,
  activity: keyof typeof activities,
  extent = "",
  note = "",
): Reading {
  const [, figure, unit] = /^([\d.]+) (mm|%)$/.exec(extent) ?? [];
  return {
    severity: severities[severity],
    activity: activities[activity],
    ...(unit === "mm" ? { mm: Number(figure) } : {}),
    ...(unit === "%" ? { percent: Number(figure) } : {}),
    ...(note === "" ? {} : { note }),
  };
}

/** Fit to: "sht" is to be shown, handled and to travel; a letter left out is a no. */
export function look(
  day: Day,
  by: Examiner,
  uses: string,
  grounds: string,
  readings: Record<string, Reading>,
  occasion: Occasion = "periodic",
): ScenarioCheck {
  return {
    day,
    by,
    occasion,
    readings,
    fit: { show: uses.includes("s"), handle: uses.includes("h"), travel: uses.includes("t") },
    grounds,
  };
}
