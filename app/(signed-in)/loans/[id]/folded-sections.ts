/**
 * Which sections of a loan's file are behind it, and what of each is said in one
 * line. A section is folded once the loan has passed what it is for, and stays open
 * while somebody still has something to do in it; nothing is folded of a loan that
 * is being asked for. A folded section is there in full and prints in full.
 */
import { foldedWords as words } from "#app/_words/en/folded-sections.ts";
import { decisionWords } from "#app/_words/en/loan-acts.ts";
import { formatRange } from "#app/_words/format.ts";
import { signingParties } from "#lib/agreements/signing.ts";
import type { DecisionRow, LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";

type Phase = "asked" | "prepared" | "away" | "returning" | "ended";
const phases: readonly Phase[] = ["asked", "prepared", "away", "returning", "ended"];

const phaseOf: Record<LoanState, Phase> = {
  enquiry: "asked",
  requested: "asked",
  accepted: "prepared",
  agreed: "prepared",
  preparing: "prepared",
  "travelling out": "away",
  "at venue": "away",
  "travelling home": "returning",
  "home, to be checked": "returning",
  "checked in": "returning",
  closed: "ended",
  declined: "ended",
  withdrawn: "ended",
};

const foldableSections = [
  "suitability",
  "request",
  "dates",
  "plan",
  "decision",
  "cover",
  "agreement",
  "limits",
  "facility",
  "crates",
  "venue",
  "longer",
  "home",
  "happened",
] as const;
export type FoldableSection = (typeof foldableSections)[number];

/** From when on each of them is behind the loan. */
const foldedFrom: Record<FoldableSection, Phase> = {
  request: "prepared",
  happened: "prepared",
  decision: "prepared",
  suitability: "away",
  plan: "away",
  facility: "away",
  agreement: "away",
  dates: "returning",
  cover: "returning",
  limits: "returning",
  venue: "returning",
  longer: "returning",
  crates: "ended",
  home: "ended",
};

export type FoldFacts = Pick<LoanSheet, "state" | "matrix"> & {
  request: Pick<LoanSheet["request"], "startsOn" | "endsOn">;
  decisions: readonly Pick<DecisionRow, "office" | "outcome" | "counts">[];
  /** The newest first. */
  agreements: readonly { version: number; signatures: readonly { party: string }[] }[];
  crates: readonly unknown[];
  covers: readonly unknown[] | null;
  time: { plan: { rows: readonly { done: unknown }[] } | null };
  /** Whether the reader may still give a word. */
  speaks: boolean;
};

const isSigned = ({ agreements: [newest] }: FoldFacts): boolean =>
  newest === undefined ||
  signingParties.every((party) => newest.signatures.some((one) => one.party === party));

/** Sections in which something is still to be done or read first, however far the loan is. */
function staysOpen(section: FoldableSection, facts: FoldFacts): boolean {
  if (section === "decision") return facts.speaks || facts.state === "declined";
  return section === "agreement" && !isSigned(facts);
}

function gistOf(section: FoldableSection, facts: FoldFacts): string {
  const { matrix, request, decisions, agreements, crates, covers, time } = facts;
  switch (section) {
    case "suitability": {
      const outcomes = Object.values(matrix).map((groups) => Object.values(groups));
      const bars = outcomes.filter((own) => own.includes("bar")).length;
      const attend = outcomes.filter((own) => !own.includes("bar") && own.includes("attend")).length;
      return words.outcomes(bars, attend);
    }
    case "decision": {
      const accepted = decisions.filter(({ counts, outcome }) => counts && outcome === "accept");
      const offices = new Set(accepted.map(({ office }) => decisionWords.offices[office].toLowerCase()));
      return offices.size === 0 ? "" : words.acceptedBy([...offices].join(", "));
    }
    case "dates":
      return formatRange(request.startsOn, request.endsOn);
    case "plan": {
      const rows = time.plan?.rows ?? [];
      return words.steps(rows.filter(({ done }) => done !== null).length, rows.length);
    }
    case "agreement": {
      const [newest] = agreements;
      return newest ? words.signed(newest.version) : "";
    }
    case "cover":
      return covers === null ? "" : words.certificates(covers.length);
    case "crates":
      return words.crates(crates.length);
    default:
      return words.about[section];
  }
}

/** @returns what stands beside the title of each folded section; a section that is not named is open */
export function foldedSections(facts: FoldFacts): Partial<Record<FoldableSection, string>> {
  const reached = phases.indexOf(phaseOf[facts.state]);
  return Object.fromEntries(
    foldableSections
      .filter((section) => reached >= phases.indexOf(foldedFrom[section]) && !staysOpen(section, facts))
      .map((section) => [section, gistOf(section, facts)]),
  );
}
