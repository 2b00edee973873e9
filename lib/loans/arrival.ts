/**
 * What follows from looking at the crates that came: which specimens are here,
 * and until when each crate stays closed. Every crate that is under way must have
 * been looked for, so that none is forgotten on a dock.
 */
import { notBefore, type RestReason } from "#lib/environment/acclimatisation.ts";
import { numbersInWords } from "#lib/loans/at-hand.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { CrateLook } from "#lib/shipments/schema.ts";

export type CrateUnderWay = {
  id: string;
  code: string;
  grossMassKg: number;
  specimenIds: readonly string[];
  hasJars: boolean;
};

/** The air on arrival; null is not known. */
export type ArrivalAir = { outsideC: number | null; roomC: number | null; roomHumidity: number | null };

export type ArrivedCrate = CrateUnderWay & {
  sealIntact: boolean | null;
  outsideDamage: string;
  notBefore: string;
  hours: number;
  reasons: RestReason[];
};

/**
 * @throws {Refusal} "crate.not-looked-for" when a crate that is under way was not
 *   named, "crate.not-under-way" when a strange one was, "crate.none-arrived" when nothing came
 */
export function arrivedCrates(
  underWay: readonly CrateUnderWay[],
  looks: readonly CrateLook[],
  air: ArrivalAir,
  at: Date,
): ArrivedCrate[] {
  const byId = new Map(underWay.map((crate) => [crate.id, crate]));
  if (looks.some((look) => !byId.has(look.crateId))) throw new Refusal("conflict", "crate.not-under-way");
  const seen = new Map(looks.map((look) => [look.crateId, look]));
  const forgotten = underWay.filter((crate) => !seen.has(crate.id));
  if (forgotten.length > 0)
    throw new Refusal("conflict", "crate.not-looked-for", {
      crates: numbersInWords(forgotten.map(({ code }) => ({ accessionNumber: code }))),
    });
  const arrived = underWay.flatMap((crate) => {
    const look = seen.get(crate.id);
    if (!look?.arrived) return [];
    const rest = notBefore(at.toISOString(), { ...air, massKg: crate.grossMassKg, hasJars: crate.hasJars });
    return [
      {
        ...crate,
        sealIntact: look.sealIntact,
        outsideDamage: look.outsideDamage,
        notBefore: rest.notBefore,
        hours: rest.hours,
        reasons: rest.reasons,
      },
    ];
  });
  if (arrived.length === 0) throw new Refusal("conflict", "crate.none-arrived");
  return arrived;
}

/** @throws {Refusal} "crate.count-incomplete" unless exactly these specimens were counted, each once */
export function requireFullCount(
  expected: readonly { specimenId: string; accessionNumber: string }[],
  counts: readonly { specimenId: string }[],
): void {
  const counted = new Set(counts.map((count) => count.specimenId));
  const forgotten = expected.filter((one) => !counted.has(one.specimenId));
  if (forgotten.length > 0)
    throw new Refusal("conflict", "crate.count-incomplete", { specimens: numbersInWords(forgotten) });
  const known = new Set(expected.map((one) => one.specimenId));
  if (counted.size !== counts.length || [...counted].some((id) => !known.has(id)))
    throw new Refusal("conflict", "crate.counted-others");
}
