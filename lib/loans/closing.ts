/**
 * What is still missing before a loan's file is closed. Two things hold it open: a
 * specimen that is not checked in, and a customs border that was crossed without its
 * discharge on record. Everything else is told and goes on after the close: claims,
 * money, reports that never came. A paper that is missing never holds a specimen.
 */
import { z } from "zod";
import type { Occasion } from "#lib/condition/schema.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { crossesCustoms } from "#lib/suitability/rules/goods.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const text = (most: number) => z.string().trim().max(most);

export const DischargeInput = z.object({
  loanId: Id,
  dischargedOn: DateText,
  /** The customs office that gave its word. */
  office: text(200).min(1, "discharge.office-missing"),
  /** Of the entry, the counterfoil or the notice. */
  reference: text(200).min(1, "discharge.reference-missing"),
  note: text(2_000),
});
export type DischargeInput = z.infer<typeof DischargeInput>;

/** Countries of a way, without the house's own; none where no customs border lies on it. */
export function customsCountries(way: {
  lenderCountry: string;
  venueCountry: string;
  through: readonly string[];
}): string[] {
  const { lenderCountry, venueCountry, through } = way;
  if (!crossesCustoms({ lenderCountry, venue: { countryCode: venueCountry }, through })) return [];
  const countries = [venueCountry, ...through].filter((country) => country !== lenderCountry);
  return [...new Set(countries)];
}

/** At the two hand-overs away from home; those at home are asked for before a specimen leaves and is checked in. */
const checksAway = ["arrival", "departure"] as const satisfies readonly Occasion[];

export type ClosingFacts = {
  lines: readonly {
    accessionNumber: string;
    state: LineState;
    /** For what it was checked on this loan. */
    occasions: readonly Occasion[];
  }[];
  /** Where its way crossed a customs border: the countries, and whether the discharge is on record. */
  customs: { countries: readonly string[]; isDischarged: boolean } | null;
  openClaims: readonly { number: string; accessionNumber: string }[];
  /** What was agreed and what is open of what is owed now; null where nothing was agreed. */
  money: { isStated: boolean; openMinor: number; currency: string } | null;
  /** The venue and the days for which no record of its air is kept; null where there is one. */
  airNotRecorded: { venue: string; from: DateText; until: DateText } | null;
};

export type StillMissing = {
  outcome: Exclude<Outcome, "clear">;
  code: string;
  parameters: Record<string, string | number>;
  /** The section of the loan's file where it is seen to. */
  section: "home" | "claims" | "money" | "specimens" | "venue";
};

function missingMoney({ isStated, openMinor: minor, currency }: NonNullable<ClosingFacts["money"]>) {
  const item = (code: string, parameters: StillMissing["parameters"] = {}): StillMissing => ({
    outcome: "attend",
    code,
    parameters,
    section: "money",
  });
  return [
    ...(isStated ? [] : [item("close.no-statement")]),
    ...(minor > 0 ? [item("close.not-paid", { minor, currency })] : []),
    ...(minor < 0 ? [item("close.owed-back", { minor: -minor, currency })] : []),
  ];
}

/** In order: what holds the file open, then what is only told. */
export function stillMissing(facts: ClosingFacts): StillMissing[] {
  const { lines, customs, openClaims, money, airNotRecorded } = facts;
  const unchecked = lines.filter(({ state }) => state !== "checked in" && state !== "closed");
  const [first] = unchecked;
  return [
    ...(first === undefined
      ? []
      : [
          {
            outcome: "bar",
            code: "close.not-checked-in",
            parameters: {
              specimen: first.accessionNumber,
              state: first.state,
              specimens: unchecked.length,
            },
            section: "home",
          } as const,
        ]),
    ...(customs !== null && !customs.isDischarged
      ? [
          {
            outcome: "bar",
            code: "close.not-discharged",
            parameters: { countries: customs.countries.join(", ") },
            section: "home",
          } as const,
        ]
      : []),
    ...openClaims.map(
      ({ number: claim, accessionNumber: specimen }): StillMissing => ({
        outcome: "attend",
        code: "close.claim-open",
        parameters: { claim, specimen },
        section: "claims",
      }),
    ),
    ...(money === null ? [] : missingMoney(money)),
    ...checksAway.flatMap((occasion): StillMissing[] => {
      const without = lines.filter(({ occasions }) => !occasions.includes(occasion));
      if (without.length === 0) return [];
      const parameters = { specimen: without[0]?.accessionNumber ?? "", specimens: without.length };
      return [{ outcome: "attend", code: `close.no-check-${occasion}`, parameters, section: "specimens" }];
    }),
    ...(airNotRecorded === null
      ? []
      : [
          {
            outcome: "attend",
            code: "close.no-climate-record",
            parameters: airNotRecorded,
            section: "venue",
          } as const,
        ]),
  ];
}
