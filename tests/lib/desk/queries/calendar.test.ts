/** A person's calendar: its secret address, and that nobody finds in it what they may not see. */
import ICAL from "ical.js";
import { beforeAll, expect, test } from "vitest";
import { calendarText } from "#lib/desk/calendar.ts";
import { listCalendarEvents } from "#lib/desk/queries/calendar.ts";
import { movePlanStep } from "#lib/loans/commands/plan.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { makeCalendarFeed, revokeCalendarFeed } from "#lib/people/commands/calendar-feed.ts";
import { feedOf, viewerOfFeed } from "#lib/people/queries/calendar-feed.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { aMandate, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let loan: { id: string; number: string };

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  for (const viewer of [lending.registrar, lending.lecturer]) await aMandate(viewer);
  loan = await walk(lending, [await aLendableSpecimen(lending)], "agreed");
});

test("an address opens for its person until a new one takes its place, or it is revoked", async () => {
  const { registrar } = lending;
  expect(await feedOf(registrar)).toBeNull();
  const { token } = await makeCalendarFeed(registrar, {});
  expect(token).toMatch(/^[\w-]{43}$/);
  expect((await viewerOfFeed(token))?.accountId).toBe(registrar.accountId);
  const stored = await database().calendarFeed.findUniqueOrThrow({
    where: { accountId: registrar.accountId },
  });
  expect(stored.linkHash).toBe(sha256Hex(token));
  const { token: next } = await makeCalendarFeed(registrar, {});
  expect(await viewerOfFeed(token)).toBeNull();
  expect((await viewerOfFeed(next))?.accountId).toBe(registrar.accountId);
  await revokeCalendarFeed(registrar, {});
  expect(await viewerOfFeed(next)).toBeNull();
  expect(await viewerOfFeed("")).toBeNull();
});

test("the address of an account that is shut opens nothing, and the audit holds no part of it", async () => {
  const { token } = await makeCalendarFeed(lending.lecturer, {});
  const entries = await database().auditEntry.findMany({ where: { tableName: "calendar_feed" } });
  expect(entries.length).toBeGreaterThan(0);
  expect(JSON.stringify(entries.map(({ before, after }) => [before, after]))).not.toContain(sha256Hex(token));
  await inWork(({ transaction }) =>
    transaction.account.update({ where: { id: lending.lecturer.accountId }, data: { active: false } }),
  );
  expect(await viewerOfFeed(token)).toBeNull();
});

test("a borrower finds the own loans and no consent; the house names specimens and no donor", async () => {
  const specimen = await database().loanLine.findFirstOrThrow({
    where: { loanId: loan.id },
    select: { specimenId: true, specimen: { select: { accessionNumber: true } } },
  });
  const { donorCode } = await database().specimenDonor.findFirstOrThrow({
    where: { specimenId: specimen.specimenId },
  });
  await inWork(({ transaction }) =>
    transaction.consent.updateMany({
      where: { donorCode },
      data: { reviewDueOn: toDate(addDays(today(), 200)), validUntil: toDate(addDays(today(), 400)) },
    }),
  );
  const venue = await database().venue.findFirstOrThrow({
    where: { institutionId: lending.lecturer.institutionId ?? "" },
  });
  const validUntil = toDate(addDays(today(), 90));
  await inWork(({ transaction }) =>
    transaction.licence.create({
      data: {
        id: newId(),
        venueId: venue.id,
        kind: "public display",
        authority: "Inspectorate",
        number: "L 9",
        validUntil,
      },
    }),
  );
  const own = await listCalendarEvents(lending.lecturer);
  expect(own.length).toBeGreaterThan(0);
  expect(own.map(({ address }) => address)).toEqual(own.map(() => `/loans/${loan.id}`));
  expect(await listCalendarEvents(lending.stranger)).toEqual([]);
  const house = await listCalendarEvents(lending.registrar);
  expect(house).toContainEqual(
    expect.objectContaining({
      code: "calendar.consent-review",
      parameters: { specimen: specimen.specimen.accessionNumber },
    }),
  );
  for (const code of ["calendar.consent-ends", "calendar.licence-ends"])
    expect(house.map((event) => event.code)).toContain(code);
  const theirs = await listCalendarEvents(lending.borrowerRegistrar);
  expect(theirs.map(({ code }) => code)).toContain("calendar.licence-ends");
  expect(theirs.map(({ code }) => code)).not.toContain("calendar.consent-ends");
  expect(JSON.stringify(house)).not.toContain(donorCode);
  expect(await listCalendarEvents(aViewer("administrator"))).toEqual([]);
});

test("a moved day is the same event, changed once more", async () => {
  const plan = {
    loanId: loan.id,
    direction: "out" as const,
    carrier: "Gentle Freight",
    carrierEmail: "",
    vehicle: "van",
    through: [],
  };
  const [leaves, arrives] = [addDays(today(), 84), addDays(today(), 86)];
  await planStage(lending.registrar, { ...plan, departsOn: leaves, arrivesOn: arrives });
  const departure = async () =>
    (await listCalendarEvents(lending.registrar)).find(
      ({ key }) => key === `${loan.id} calendar.departs-out`,
    );
  const before = await departure();
  expect(before).toMatchObject({ when: { day: leaves }, sequence: 0 });
  await planStage(lending.registrar, { ...plan, departsOn: addDays(leaves, -1), arrivesOn: arrives });
  const after = await departure();
  expect(after).toMatchObject({ when: { day: addDays(leaves, -1) }, sequence: 1 });
  expect((after?.changedAt ?? "") >= (before?.changedAt ?? "")).toBe(true);
});

test("steps of the plan stand in it until they are done, the borrower's own for the borrower", async () => {
  const steps = async (viewer: Viewer) =>
    (await listCalendarEvents(viewer))
      .filter(({ key }) => key.startsWith(`${loan.id} calendar.plan-step`))
      .map(({ parameters }) => parameters.step);
  expect(await steps(lending.registrar)).toContain("pack");
  expect(await steps(lending.registrar)).not.toContain("agreement");
  expect(await steps(lending.lecturer)).not.toContain("pack");
  await movePlanStep(lending.registrar, { loanId: loan.id, step: "opening", to: addDays(today(), 100) });
  expect(await steps(lending.lecturer)).toContain("install");
  const events = await listCalendarEvents(lending.registrar);
  const text = calendarText({
    name: "Loans",
    events: events.map(({ key, sequence, changedAt, when, code, address }) => ({
      uid: `${key}@anatheca`,
      sequence,
      changedAt,
      when,
      summary: code,
      description: "",
      url: `https://loans.example.org${address}`,
    })),
  });
  const read = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
  expect(read).toHaveLength(events.length);
  expect(new Set(read.map((event) => event.getFirstPropertyValue("uid"))).size).toBe(events.length);
});
