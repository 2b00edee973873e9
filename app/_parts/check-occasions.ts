/** The occasions that a check form offers, each with the first day that it allows and the sentence that says why. */
import type { OfferedOccasion } from "#app/_parts/check-draft.ts";
import { sentence } from "#app/_words/sentences.ts";
import { type DatedSpecimen, type DayFloor, floorsOf, highestFloor } from "#lib/condition/check-day.ts";
import type { Occasion } from "#lib/condition/schema.ts";

/**
 * @param latestOn the day of the latest check
 * @param floorOf what the occasion says by itself, where it says anything
 */
export function offerOccasions(
  occasions: readonly Occasion[],
  specimen: DatedSpecimen,
  latestOn: string | null,
  floorOf: (occasion: Occasion) => DayFloor | null = () => null,
): OfferedOccasion[] {
  return occasions.map((occasion) => {
    const own = floorOf(occasion);
    const floor = highestFloor([...(own ? [own] : []), ...floorsOf(specimen, latestOn)]);
    return {
      occasion,
      from: floor?.day ?? null,
      tooSoon: floor === null ? "" : sentence(floor.code, { from: floor.day }),
    };
  });
}
