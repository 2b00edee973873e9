/**
 * What happened to specimens or their crates on the way and wants somebody of the
 * house to look. A sign of harm stands until it is answered: a broken seal or a
 * damaged crate until each specimen in it has been checked since; a change seen
 * while it was away until somebody of the house has checked the specimen, or it is
 * checked in; a change seen at home until it is checked in; a verdict of treatment
 * or damage until the specimen is checked again. Nothing is stored.
 */
import type { Finding, Occasion } from "#lib/condition/schema.ts";
import type { CheckInVerdict } from "#lib/loans/inputs.ts";
import { checksBesideEarlier } from "#lib/loans/line-checks.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";

export type Harm =
  | { kind: "crate"; crate: string; sealBroken: boolean; damage: string; at: string; unchecked: number }
  | {
      kind: "away" | "home";
      specimenId: string;
      specimen: string;
      checkedOn: DateText;
      new: number;
      worse: number;
    }
  | {
      kind: "verdict";
      specimenId: string;
      specimen: string;
      verdict: CheckInVerdict;
      /** The day of the check at home. */
      checkedOn: DateText | null;
    };

/** The name of a sign, the same in the file of the loan and on the desk. */
export function harmCode(sign: Harm): string {
  switch (sign.kind) {
    case "away":
      return "changed-away";
    case "home":
      return "changed-home";
    case "verdict":
      return "judged-gravely";
    case "crate":
      if (!sign.sealBroken) return "crate-damaged";
      return sign.damage === "" ? "seal-broken" : "seal-broken-and-damaged";
  }
}

export type CheckOfLine = {
  loanId: string | null;
  occasion: Occasion;
  checkedOn: DateText;
  /** ISO 8601. */
  recordedAt: string;
  byHouse: boolean;
  findings: readonly Finding[];
};

export type HarmFacts = {
  lines: readonly {
    specimenId: string;
    accessionNumber: string;
    state: LineState;
    verdict: CheckInVerdict | null;
    /** A check of the specimen was recorded after the one of its return. */
    checkedAgain: boolean;
  }[];
  crates: readonly {
    code: string;
    specimenIds: readonly string[];
    events: readonly { at: string; sealIntact: boolean | null; outsideDamage: string }[];
  }[];
  /** By specimen, in the order in which they were recorded. */
  checks: ReadonlyMap<string, readonly CheckOfLine[]>;
};

/** States in which a specimen of the loan is out of its place and its case is not closed. */
const isUnderWay = (state: LineState) =>
  [
    "travelling out",
    "resting at venue",
    "at venue",
    "travelling home",
    "resting at home",
    "missing",
  ].includes(state);

const whileAway: readonly Occasion[] = ["arrival", "departure", "incident"];

/** Verdicts after which somebody has to see to the specimen. */
export const verdictsOfHarm: readonly CheckInVerdict[] = ["needs treatment", "damage"];

function harmedCrates({ lines, crates, checks }: HarmFacts): Harm[] {
  const underWay = new Set(lines.filter((line) => isUnderWay(line.state)).map((line) => line.specimenId));
  return crates.flatMap(({ code: crate, specimenIds, events }) => {
    const seen = events.findLast(
      ({ sealIntact, outsideDamage }) => sealIntact === false || outsideDamage !== "",
    );
    if (!seen) return [];
    const unchecked = specimenIds.filter(
      (id) => underWay.has(id) && !checks.get(id)?.some((check) => check.recordedAt > seen.at),
    ).length;
    if (unchecked === 0) return [];
    const { at, outsideDamage: damage, sealIntact } = seen;
    return [{ kind: "crate", crate, sealBroken: sealIntact === false, damage, at, unchecked }];
  });
}

function changedSpecimens({ lines, checks }: HarmFacts): Harm[] {
  return lines.flatMap(({ specimenId, accessionNumber: specimen, state }): Harm[] => {
    if (!isUnderWay(state)) return [];
    const seen = checksBesideEarlier(checks.get(specimenId) ?? []);
    const answeredBy = seen.findLastIndex(({ check }) => check.byHouse);
    const found = seen.findLast(({ check, comparison }, index) => {
      const { totals } = comparison ?? {};
      if (totals === undefined || totals.new + totals.worse === 0) return false;
      if (check.occasion === "home") return index === seen.length - 1;
      return whileAway.includes(check.occasion) && answeredBy <= index;
    });
    if (!found?.comparison) return [];
    const { totals } = found.comparison;
    return [
      {
        kind: found.check.occasion === "home" ? "home" : "away",
        specimenId,
        specimen,
        checkedOn: found.check.checkedOn,
        new: totals.new,
        worse: totals.worse,
      },
    ];
  });
}

function gravelyJudged({ lines, checks }: HarmFacts): Harm[] {
  return lines.flatMap(({ specimenId, accessionNumber: specimen, verdict, checkedAgain }): Harm[] => {
    if (verdict === null || !verdictsOfHarm.includes(verdict) || checkedAgain) return [];
    const home = checks.get(specimenId)?.findLast(({ occasion }) => occasion === "home");
    return [{ kind: "verdict", specimenId, specimen, verdict, checkedOn: home?.checkedOn ?? null }];
  });
}

/** Crates first, then specimens in the order of the lines. */
export function signsOfHarm(facts: HarmFacts): Harm[] {
  return [...harmedCrates(facts), ...changedSpecimens(facts), ...gravelyJudged(facts)];
}
