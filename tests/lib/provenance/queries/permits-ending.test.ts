/** Permits that end: the earliest first, by pages, and what a withdrawal changes in them. */
import { beforeAll, beforeEach, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { recordPermit, withdrawPermit } from "#lib/provenance/commands.ts";
import { listPermitsExpiring } from "#lib/provenance/queries/permits-ending.ts";
import { aSpecimen, aViewer, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const lecturer = aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa");
const before = "2027-03-01";
let specimen: Made;

beforeAll(async () => {
  await testDatabase();
});
beforeEach(async () => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
  specimen = await aSpecimen();
});

const aPermit = (number: string, validUntil: DateText | null) =>
  recordPermit(registrar, {
    specimenId: specimen.id,
    kind: "import",
    number,
    authority: "Veterinary office",
    territories: [],
    validFrom: null,
    validUntil,
  });
async function takeBack(number: string, validUntil: DateText | null, withdrawnOn: DateText): Promise<void> {
  const permitId = await aPermit(number, validUntil);
  await withdrawPermit(registrar, { permitId, withdrawnOn, because: "Revoked by the office." });
}

/** This test's permits, gathered page by page. */
async function paged(limit: number): Promise<[number: string, lastDay: string | null][]> {
  const all: [string, string | null][] = [];
  for (let after: string | null = null; ; ) {
    const page: Awaited<ReturnType<typeof listPermitsExpiring>> = await listPermitsExpiring(
      registrar,
      { before },
      { after, limit },
    );
    expect(page.rows.length).toBeLessThanOrEqual(limit);
    for (const row of page.rows) if (row.specimenId === specimen.id) all.push([row.number, row.validUntil]);
    if (page.next === null) return all;
    after = page.next;
  }
}

test("they end before the day, the earliest first, and pages lose and repeat nothing", async () => {
  await aPermit("c", "2027-03-01");
  await aPermit("a", "2026-12-31");
  await aPermit("b", "2027-02-28");
  await aPermit("b2", "2027-02-28");
  await aPermit("never", null);
  const all = await paged(200);
  expect(all).toEqual([
    ["a", "2026-12-31"],
    ["b", "2027-02-28"],
    ["b2", "2027-02-28"],
  ]);
  for (const limit of [1, 2, 3]) expect(await paged(limit)).toEqual(all);
});

test("one that is to be taken back ends the day before, one that was taken back is not told of", async () => {
  await takeBack("unlimited, going", null, "2027-02-10");
  await takeBack("long, going at the edge", "2030-01-01", "2027-03-01");
  await takeBack("short, going after its half", "2027-02-20", "2027-02-01");
  await takeBack("going too late to tell", null, "2027-03-02");
  await takeBack("gone", "2027-02-20", "2027-01-15");
  await aPermit("ends by itself", "2027-02-05");
  const all = await paged(200);
  expect(all).toEqual([
    ["short, going after its half", "2027-01-31"],
    ["ends by itself", "2027-02-05"],
    ["unlimited, going", "2027-02-09"],
    ["long, going at the edge", "2027-02-28"],
  ]);
  expect(await paged(1)).toEqual(all);
});

test("a page key that is none begins at the beginning", async () => {
  await aPermit("a", "2026-12-31");
  const { rows } = await listPermitsExpiring(registrar, { before }, { limit: 200 });
  for (const after of ["'; --", "\u0000", "2027-13-45/x", "2027-01-01/x"]) {
    const page = await listPermitsExpiring(registrar, { before }, { after, limit: 200 });
    expect(page.rows).toEqual(rows);
  }
  const few = await listPermitsExpiring(registrar, { before }, { limit: Number.NaN });
  expect(few.rows).toEqual(rows.slice(0, 1));
});

test("who may not see consents is told of no permit", async () => {
  await expect(listPermitsExpiring(lecturer, { before })).rejects.toMatchObject({ kind: "forbidden" });
});
