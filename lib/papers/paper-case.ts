/**
 * Everything about one loan that its papers are written from, as plain values: what a query gathers and every paper's content picks from. Pure: it only
 * says which way a stage goes, which crates stand on it and which number each has.
 */
import type { CostingContent } from "#lib/costing/schema.ts";
import type { PaperCrate, PaperHead, PaperSpecimen, PaperWay, WayEnd } from "#lib/papers/paper-content.ts";
import type { EmergencyLine } from "#lib/people/emergency.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";

export type CaseStage = {
  id: string;
  direction: Direction;
  carrier: string;
  vehicle: string;
  through: readonly string[];
  departsOn: DateText;
  arrivesOn: DateText;
};

export type CaseCrate = Omit<PaperCrate, "number" | "of"> & {
  id: string;
  /** What lies in it weighs this much; null where the plan does not say. */
  contentsKg: number | null;
  innerCaseWallMm: number | null;
  cushionMm: number;
  absorbentMl: number | null;
  centreOfGravityHeightMm: number;
  /** What may stand on it; 0 for nothing. */
  lidLoadKg: number;
  /** By position. */
  contents: readonly string[];
};

/** What customs ask of a specimen. */
export type CaseGoods = {
  human: boolean;
  scientificName: string;
  preparation: string;
  fluidName: string | null;
  hazards: readonly string[];
  /** With its mount where it has one. */
  massKg: number | null;
  originCountry: string | null;
  cost: { minor: number; currency: string; basis: string; statedOn: DateText } | null;
};

/** A check with what was found, each on its mark. */
export type CaseCheck = {
  occasion: string;
  checkedOn: DateText;
  checkedBy: string;
  grade: string;
  findings: readonly {
    term: string;
    place: string;
    extentMm: number | null;
    extentPercent: number | null;
    severity: string;
    activity: string;
    note: string;
  }[];
};

/** How a specimen's loan ended. */
export type CaseEnding = {
  state: string;
  verdict: string | null;
  remark: string;
  /** The last check on this loan before it left, and the last one at home. */
  out: { checkedOn: DateText; grade: string } | null;
  home: { checkedOn: DateText; grade: string } | null;
};

/** The tariff code that somebody decided for a specimen on a stage in a country. */
export type CaseTariff = {
  stageId: string;
  specimenId: string;
  countryCode: string;
  code: string;
  decidedBy: string;
  decidedOn: DateText;
  note: string;
};

/** A quotation or a cost statement as it was frozen. */
export type CaseCosting = { content: CostingContent; sha256: string };

export type CaseSpecimen = PaperSpecimen & {
  id: string;
  /** Whether it is still a specimen of this loan. */
  isLive: boolean;
  drawing: DrawingRequest;
  /** The stored picture; never of a human specimen. */
  pictureId: string | null;
  /** Temperatures on the way beyond which somebody has to act. */
  transitC: { low: number; high: number } | null;
  goods: CaseGoods;
  /** The last check of all, on whatever occasion. */
  check: CaseCheck | null;
  ending: CaseEnding;
};

export type CaseHandover = {
  direction: Direction;
  at: string;
  fromParty: string | null;
  toParty: string;
  releasedBy: string;
  receivedBy: string;
  accessionNumber: string;
};

export type PaperCase = {
  loan: PaperHead["loan"] & {
    state: string;
    purpose: string;
    startsOn: DateText;
    /** The first day that is no longer the loan. */
    returnBy: DateText;
    closedOn: DateText | null;
    contactName: string;
  };
  house: WayEnd;
  /** Under which number the house is reached on the way. */
  emergency: EmergencyLine;
  venue: WayEnd;
  stages: readonly CaseStage[];
  crates: readonly CaseCrate[];
  specimens: readonly CaseSpecimen[];
  handovers: readonly CaseHandover[];
  tariffs: readonly CaseTariff[];
  /** The newest of each kind. */
  costings: readonly CaseCosting[];
};

export function stageOf({ stages }: PaperCase, stageId: string): CaseStage {
  const stage = stages.find(({ id }) => id === stageId);
  if (stage === undefined) throw new RangeError("This loan has no such stage.");
  return stage;
}

export function wayOf({ house, venue }: PaperCase, stage: CaseStage): PaperWay {
  const { id: _id, through, ...said } = stage;
  const [from, to] = stage.direction === "out" ? [house, venue] : [venue, house];
  return { ...said, from, to, through: [...through] };
}

/** Crates that hold something, each with its number of how many. */
export function numberedCrates({ crates }: PaperCase): (CaseCrate & { number: number; of: number })[] {
  const filled = crates.filter(({ contents }) => contents.length > 0);
  return filled.map((crate, index) => ({ ...crate, number: index + 1, of: filled.length }));
}

export function paperCrate(crate: CaseCrate & { number: number; of: number }): PaperCrate {
  const { code, number, of, kind, outer, grossMassKg, handling, orientation, sealNumber } = crate;
  return { code, number, of, kind, outer: { ...outer }, grossMassKg, handling, orientation, sealNumber };
}

export function paperSpecimen(specimen: CaseSpecimen): PaperSpecimen {
  const { accessionNumber, title, latinTitle, kind, components, condition } = specimen;
  return {
    accessionNumber,
    title,
    latinTitle,
    kind,
    components: components.map((one) => ({ ...one })),
    condition,
  };
}

/** The specimens of a crate by their position. */
export function specimensIn({ specimens }: PaperCase, crate: CaseCrate): CaseSpecimen[] {
  const byId = new Map(specimens.map((specimen) => [specimen.id, specimen]));
  return crate.contents.flatMap((id) => byId.get(id) ?? []);
}

/** A subject names a stage, or a crate on a stage. */
export const crateSubject = (stageId: string, crateId: string): string => `${stageId}/${crateId}`;

export function partsOfSubject(subject: string): { stageId: string; crateId: string | null } {
  const [stageId = "", crateId = null] = subject.split("/");
  return { stageId, crateId };
}

/** Every crate that holds something on every stage. */
export function crateSubjects(paperCase: PaperCase): string[] {
  return paperCase.stages.flatMap((stage) =>
    numberedCrates(paperCase).map((crate) => crateSubject(stage.id, crate.id)),
  );
}

export function crateOn(paperCase: PaperCase, subject: string) {
  const { stageId, crateId } = partsOfSubject(subject);
  const crate = numberedCrates(paperCase).find(({ id }) => id === crateId);
  if (crate === undefined) throw new RangeError("This loan has no such crate.");
  return { crate, stage: stageOf(paperCase, stageId) };
}
