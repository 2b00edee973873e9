/** What the house itself has promised specimens for, so that calendars are not empty. */
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import type { HouseBookingInput } from "#lib/whereabouts/schema.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import type { Day } from "#seed/scenario/shape.ts";

type HouseBooking = {
  day: Day;
  specimen: string;
  purpose: HouseBookingInput["purpose"];
  starts: Day;
  ends: Day;
};

const bookings: HouseBooking[] = [
  { day: -20, specimen: "AN 2015.0063", purpose: "treatment", starts: 5, ends: 40 },
  { day: -18, specimen: "AN 2009.0040", purpose: "treatment", starts: 12, ends: 26 },
  { day: -12, specimen: "AN 2022.0051", purpose: "treatment", starts: 9, ends: 60 },
  { day: -11, specimen: "AN 2019.0098", purpose: "teaching in the house", starts: 20, ends: 34 },
  { day: -10, specimen: "AN 2020.0062", purpose: "picture-taking", starts: 3, ends: 5 },
  { day: -8, specimen: "AN 2022.0002", purpose: "rest", starts: 30, ends: 120 },
  { day: -5, specimen: "AN 1949.0010", purpose: "examination", starts: 2, ends: 4 },
];

export function planHouseBookings(timeline: Timeline, world: World): void {
  for (const { day, specimen, purpose, starts, ends } of bookings)
    timeline.add(day, "bookings of the house", () =>
      bookSpecimen(world.as("curator"), {
        specimenId: world.specimen(specimen),
        purpose,
        startsOn: timeline.on(starts),
        endsOn: timeline.on(ends),
      }),
    );
}
