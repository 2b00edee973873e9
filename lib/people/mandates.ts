/**
 * Whether a person's mandate reaches what they are about to sign or decide: the
 * act, the day, and the cost. A mandate without a limit reaches any cost; one with
 * a limit never reaches a cost in another currency, or one that is not known.
 */
import { z } from "zod";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";

export const mandateActs = ["sign agreements", "decide requests", "accept quotations"] as const;
export type MandateAct = (typeof mandateActs)[number];

const text = (most: number) => z.string().trim().max(most);

/** Who may do what in the name of a house, up to what cost, from when until when, by whose word. */
export const MandateInput = z
  .object({
    accountId: z.string().min(1),
    acts: z.array(z.enum(mandateActs)).min(1, "mandate.no-act"),
    /** null reaches any cost */
    limit: z.object({ minor: minorUnits(1_000_000_000_000), currency: CurrencyCode }).nullable(),
    validFrom: DateText,
    /** The first day on which it no longer counts; null until it is revoked. */
    validUntil: DateText.nullable(),
    /** The paper that says so. */
    reference: text(200).min(1),
  })
  .check((context) => {
    const { value, issues } = context;
    if (value.validUntil !== null && !(value.validFrom < value.validUntil))
      issues.push({
        code: "custom",
        input: value.validUntil,
        path: ["validUntil"],
        message: "mandate.period-reversed",
      });
  });
export type MandateInput = z.infer<typeof MandateInput>;

export const RevokeMandateInput = z.object({ mandateId: Id });

export type Mandate = Omit<MandateInput, "accountId" | "acts"> & {
  id: string;
  acts: readonly MandateAct[];
  givenBy: string;
  revokedOn: DateText | null;
};

/** What is at stake: the sum of what is known in each currency, and how many costs are not known. */
export type AtStake = { sums: readonly { minor: number; currency: string }[]; unknown: number };

export const countsOn = (mandate: Pick<Mandate, "validFrom" | "validUntil" | "revokedOn">, day: DateText) =>
  mandate.validFrom <= day &&
  (mandate.validUntil === null || day < mandate.validUntil) &&
  (mandate.revokedOn === null || day < mandate.revokedOn);

const reaches = ({ limit }: Pick<Mandate, "limit">, { sums, unknown }: AtStake) =>
  limit === null ||
  (unknown === 0 && sums.every(({ minor, currency }) => currency === limit.currency && minor <= limit.minor));

export type MandateAnswer =
  | { mandate: Mandate }
  | { fault: "mandate.none" | "mandate.not-on-the-day" | "mandate.cost-above" };

/** The mandate that reaches it, the widest first; or what all of them lack. */
export function mandateFor(
  mandates: readonly Mandate[],
  { act, day, atStake }: { act: MandateAct; day: DateText; atStake: AtStake },
): MandateAnswer {
  const forAct = mandates.filter(({ acts }) => acts.includes(act));
  if (forAct.length === 0) return { fault: "mandate.none" };
  const onTheDay = forAct.filter((mandate) => countsOn(mandate, day));
  if (onTheDay.length === 0) return { fault: "mandate.not-on-the-day" };
  const reaching = onTheDay.filter((mandate) => reaches(mandate, atStake));
  const [widest] = reaching.sort((a, b) => Number(a.limit !== null) - Number(b.limit !== null));
  return widest ? { mandate: widest } : { fault: "mandate.cost-above" };
}
