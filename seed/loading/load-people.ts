/** The centre, its places, the borrowers with their venues, and everybody's account. */
import { configureCentre, keepAccount, keepInstitution, keepVenue } from "#lib/people/commands.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { keepPlace } from "#lib/whereabouts/commands.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { type AccountKey, accounts, demoPassword, type ScenarioAccount } from "#seed/scenario/accounts.ts";
import { type BorrowerKey, borrowers, type VenueKey } from "#seed/scenario/borrowers.ts";
import { centre, places } from "#seed/scenario/centre.ts";
import type { Day } from "#seed/scenario/shape.ts";
import type { ScenarioInstitution } from "#seed/scenario/venue-words.ts";

/** The day on which the program was taken into use. */
export const firstDay: Day = -1_500;

/** What a venue of the scenario leaves open. */
const placeOfNothingKnown = { subdivisionCode: null, town: "", floorLoadKgPerM2: null };

async function keepAccountOf(world: World, key: AccountKey, by = world.as("administrator")): Promise<void> {
  const { name, email, role }: ScenarioAccount = accounts[key];
  const institutionId = world.institutionOf(key);
  const accountId = await keepAccount(by, {
    account: { id: null, email, name, roles: [role], institutionId, active: true },
    password: demoPassword,
  });
  world.viewers.set(key, { accountId, name, email, roles: [role], institutionId });
}

export function planPeople(timeline: Timeline, world: World): void {
  const all = Object.keys(accounts) as AccountKey[];
  const dateOrNull = (day: Day | null) => (day === null ? null : timeline.on(day));
  timeline.add(firstDay, "settings", () => configureCentre(programViewer, centre));
  timeline.add(firstDay, "accounts", () => keepAccountOf(world, "administrator", programViewer));
  timeline.add(
    firstDay,
    "accounts",
    ...all
      .filter((key) => accounts[key].borrower === null && key !== "administrator")
      .map((key) => () => keepAccountOf(world, key)),
  );
  for (const one of places)
    timeline.add(firstDay, "places", async () => {
      const { within, ...place } = one;
      const parentId = within === null ? null : world.place(within);
      const id = await keepPlace(world.as("collection manager"), {
        id: null,
        venueId: null,
        parentId,
        ...place,
      });
      world.places.set(place.code, id);
    });
  for (const [key, institution] of Object.entries(borrowers) as [BorrowerKey, ScenarioInstitution][]) {
    const { venues, verified, ...facts } = institution;
    const registrar = () => world.as("registrar");
    timeline.add(firstDay, "borrowers", async () => {
      world.borrowers.set(key, await keepInstitution(registrar(), { ...facts, id: null, verifiedOn: null }));
    });
    for (const [venueKey, { reported: _reported, licences, ...venue }] of Object.entries(venues)) {
      const keep = () =>
        keepVenue(registrar(), {
          ...placeOfNothingKnown,
          ...venue,
          id: null,
          institutionId: world.borrower(key),
          countryCode: facts.countryCode,
          reportedOn: null,
          licences: licences.map(({ from, until, ...licence }) => ({
            ...licence,
            validFrom: dateOrNull(from),
            validUntil: dateOrNull(until),
          })),
        });
      timeline.add(firstDay + 1, "venues", async () => {
        world.venues.set(venueKey as VenueKey, await keep());
      });
    }
    if (verified !== null)
      timeline.add(verified, "borrowers", () =>
        keepInstitution(registrar(), {
          ...facts,
          id: world.borrower(key),
          verifiedOn: timeline.on(verified),
        }),
      );
  }
  timeline.add(
    firstDay + 2,
    "accounts",
    ...all.filter((key) => accounts[key].borrower !== null).map((key) => () => keepAccountOf(world, key)),
  );
}
