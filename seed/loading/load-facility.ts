/** Facility reports of the venues in their versions, the borrowers' insurance, and what loggers wrote. */
import { fileClimateRecord } from "#lib/loans/commands/climate-record.ts";
import { fileFacilityReport } from "#lib/people/commands/facility.ts";
import { keepInsurance } from "#lib/people/commands/insurance.ts";
import { answersFromFacts, type FacilityAnswers } from "#lib/people/facility-report.ts";
import { newestReportOf } from "#lib/people/queries/facility.ts";
import { venueFactsOf } from "#lib/people/queries.ts";
import { database } from "#lib/platform/database.ts";
import { toDate } from "#lib/platform/dates.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { type AccountKey, accounts } from "#seed/scenario/accounts.ts";
import { type BorrowerKey, borrowers, type VenueKey } from "#seed/scenario/borrowers.ts";
import { laterVersions, saidByVenue } from "#seed/scenario/facility-reports.ts";
import { insurances } from "#seed/scenario/insurances.ts";
import { loggerFiles } from "#seed/scenario/logger-files.ts";
import type { Day } from "#seed/scenario/shape.ts";
import type { ScenarioInstitution } from "#seed/scenario/venue-words.ts";

/** The borrower's own registrar, or the house's where the borrower has none. */
function reporterOf(borrower: BorrowerKey): AccountKey {
  const all = Object.keys(accounts) as AccountKey[];
  const own = all.find(
    (key) => accounts[key].borrower === borrower && accounts[key].role === "borrower registrar",
  );
  return own ?? "registrar";
}

type Said = NonNullable<(typeof saidByVenue)[VenueKey]>;

/** What is said on top of what is known; a fact that is known stays. */
function answersWith(known: FacilityAnswers, said: Said): FacilityAnswers {
  const answers = structuredClone(known) as unknown as Record<string, Record<string, unknown>>;
  for (const [section, questions] of Object.entries(said))
    for (const [name, answer] of Object.entries(questions ?? {}))
      if (answer !== undefined && answers[section]) answers[section][name] ??= answer;
  return answers as unknown as FacilityAnswers;
}

async function file(world: World, key: VenueKey, by: AccountKey, reportedOn: string, said: Said) {
  const venueId = world.venue(key);
  const newest = await newestReportOf(database(), venueId);
  const known = newest?.answers ?? answersFromFacts(await venueFactsOf(database(), venueId));
  // A later version says other things than the one before; the first one adds to what is known.
  const answers = newest === null ? answersWith(known, said) : ({ ...known, ...said } as FacilityAnswers);
  await fileFacilityReport(world.as(by), {
    venueId,
    follows: newest?.version ?? 0,
    reportedOn,
    reportedBy: accounts[by].name,
    answers,
  });
}

export function planFacility(timeline: Timeline, world: World): void {
  for (const [borrower, { venues }] of Object.entries(borrowers) as [BorrowerKey, ScenarioInstitution][])
    for (const [venueKey, { reported }] of Object.entries(venues)) {
      const key = venueKey as VenueKey;
      if (reported === null) continue;
      const by = reporterOf(borrower);
      const on = (day: Day, said: Said) =>
        timeline.add(day, "facility reports", () => file(world, key, by, timeline.on(day), said));
      on(reported, saidByVenue[key] ?? {});
      for (const { day, changed } of laterVersions[key] ?? []) on(day, changed);
    }
  for (const { borrower, by, kept, euros, from, until, ...insurance } of insurances)
    timeline.add(kept, "insurance", () =>
      keepInsurance(world.as(by), {
        ...insurance,
        id: null,
        institutionId: world.borrower(borrower),
        minor: euros * 100,
        currency: "EUR",
        validFrom: timeline.on(from),
        validUntil: timeline.on(until),
      }),
    );
  for (const { venue, by, day, name, write } of loggerFiles)
    timeline.add(day, "climate records", () =>
      fileClimateRecord(world.as(by), {
        venueId: world.venue(venue),
        name,
        content: new TextEncoder().encode(write(toDate(timeline.on(day)))),
        utcOffsetMinutes: null,
        dateOrder: null,
      }),
    );
}
