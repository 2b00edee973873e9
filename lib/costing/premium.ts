/**
 * The premium for cover from nail to nail: the replacement cost for cover by a rate
 * in thousandths, for the way and for the stay apart, once for each transit or for
 * each day. A person's remains have no price: the base is what it would cost to
 * prepare a specimen again.
 */
import { z } from "zod";
import { priceOf } from "#lib/costing/costing.ts";
import { decimalFrom } from "#lib/costing/exact.ts";
import { premiumBases } from "#lib/costing/schema.ts";
import { CurrencyCode, majorText } from "#lib/platform/money.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const perMille = z.number().min(0).max(1_000);
const count = z.number().int().min(0).max(3_000);

export const coverPremium = working({
  id: "cover-premium",
  title: "Premium for cover",
  about: "What cover from nail to nail costs, on the way and during the stay.",
  input: z.object({
    costMinor: z
      .number()
      .int()
      .min(0)
      .max(100_000_000_000)
      .meta({ title: "Replacement cost for cover", unit: "minor units" }),
    currency: CurrencyCode.meta({ title: "Currency" }),
    transitPerMille: perMille.meta({ title: "Rate on the way", unit: "‰" }),
    transitBasis: z.enum(premiumBases).meta({ title: "Rate on the way is for each" }),
    transits: count.meta({ title: "Transits, or days on the way" }),
    stayPerMille: perMille.meta({ title: "Rate of the stay", unit: "‰" }),
    stayBasis: z.enum(premiumBases).meta({ title: "Rate of the stay is for each" }),
    stayCount: count.meta({ title: "Days of the stay, or once" }),
  }),
  output: z.object({
    transitMinor: z.number().int().meta({ title: "Premium on the way", unit: "minor units" }),
    stayMinor: z.number().int().meta({ title: "Premium of the stay", unit: "minor units" }),
  }),
  sources: [cite("derived"), cite("practice", "rates are the insurer's own")],
  cautions: ["Rates, deductibles and exclusions stand in the insurer's offer; this only multiplies them."],
  compute({ costMinor, currency, ...rates }, note) {
    const premium = (share: number, often: number, per: "transit" | "day", label: string) => {
      const minor = priceOf({
        kind: "share",
        ofMinor: costMinor,
        share: decimalFrom(share),
        per: "mille",
        times: String(often),
        unit: per,
      });
      note(
        label,
        majorText(minor, currency),
        currency,
        `${majorText(costMinor, currency)} × ${decimalFrom(share)} ‰ × ${often} ${per}`,
      );
      return minor;
    };
    return {
      transitMinor: premium(rates.transitPerMille, rates.transits, rates.transitBasis, "premium on the way"),
      stayMinor: premium(rates.stayPerMille, rates.stayCount, rates.stayBasis, "premium of the stay"),
    };
  },
});
