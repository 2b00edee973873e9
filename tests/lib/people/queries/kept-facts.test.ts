/** What is kept of a borrower, for its own eyes and for the house. */
import { beforeAll, expect, test } from "vitest";
import { keptFactsOf } from "#lib/people/queries/kept-facts.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { aBorrower, aVenue, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { goodVenue } from "#tests/support/lending.ts";

let institutionId = "";
let venueId = "";
beforeAll(async () => {
  await testDatabase();
  institutionId = await aBorrower();
  venueId = await aVenue({
    institutionId,
    ...goodVenue,
    reportedOn: "2026-10-01",
    licences: [
      {
        kind: "anatomy",
        authority: "County",
        number: "A 7",
        validFrom: null,
        validUntil: "2028-01-01",
      },
    ],
  });
  await inWork(async ({ transaction }) => {
    for (const version of [1, 2])
      await transaction.facilityReport.create({
        data: {
          id: newId(),
          venueId,
          version,
          answers: {},
          reportedOn: toDate(`2026-10-0${version}`),
          validUntil: toDate("2027-10-01"),
          reportedBy: "B. Registrar",
          accountId: "test",
          filedAt: new Date("2026-10-02T09:00:00Z"),
        },
      });
    await transaction.insurance.create({
      data: {
        id: newId(),
        institutionId,
        insurer: "Mutual cover",
        policyNumber: "P 1",
        amountMinor: 1_000_000n,
        currency: "EUR",
        validFrom: toDate("2026-01-01"),
        validUntil: toDate("2027-01-01"),
        coversTransit: true,
        territories: [],
      },
    });
  });
});

test("is read whole by the borrower's registrar and by the house", async () => {
  for (const viewer of [aViewer("borrower registrar", institutionId), aViewer("registrar")])
    expect(await keptFactsOf(viewer, institutionId)).toEqual([
      {
        venueId,
        address: "2 Quiet Street",
        countryCode: "NO",
        climate: {
          temperatureLowC: 19,
          temperatureHighC: 21,
          humidityLow: 0.45,
          humidityHigh: 0.52,
          illuminanceLx: 50,
        },
        passages: 1,
        reportedOn: "2026-10-01",
        report: { version: 2, reportedOn: "2026-10-02", validUntil: "2027-10-01" },
        licences: [{ what: "anatomy", number: "A 7", validUntil: "2028-01-01" }],
        insurances: [{ what: "Mutual cover", number: "P 1", validUntil: "2027-01-01" }],
      },
    ]);
});

test("tells a lecturer until when papers count, and no facility fact or policy", async () => {
  const [facts] = await keptFactsOf(aViewer("lecturer", institutionId), institutionId);
  expect(facts).toMatchObject({
    climate: null,
    licences: [{ what: "", number: "", validUntil: "2028-01-01" }],
    insurances: [{ what: "", number: "", validUntil: "2027-01-01" }],
  });
});

test("is nothing for another institution", async () => {
  expect(await keptFactsOf(aViewer("borrower registrar", await aBorrower()), institutionId)).toEqual([]);
});
