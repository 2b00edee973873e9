/** What the program judges again when consent, a licence or a venue changes, what it keeps, and whom it tells. */
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { judgeAgain, noteWhatEnded } from "#lib/loans/commands/judge-again.ts";
import { recallLoan } from "#lib/loans/commands/recall.ts";
import { listKeptRuns } from "#lib/loans/queries/kept-runs.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { VenueInput } from "#lib/people/schema.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { recordPermit, withdrawConsent, withdrawPermit } from "#lib/provenance/commands.ts";
import { aVenue } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, goodVenue, type Lending } from "#tests/support/lending.ts";
import { accept, passHours, type Step, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
});
beforeEach(async () => {
  startClock();
  lending = await aLending();
  await database().loanToJudge.deleteMany();
});
afterAll(() => setClock());

const runsOf = (loanId: string) =>
  database().suitabilityRun.findMany({ where: { loanId }, orderBy: [{ runAt: "asc" }, { id: "asc" }] });
const occasionsOf = async (loanId: string) => (await runsOf(loanId)).map(({ occasion }) => occasion);
const lettersOf = async (loanId: string) =>
  await database().mail.count({ where: { about: `loan/${loanId}`, code: "letter.judged-worse" } });
const isDue = async (loanId: string) =>
  (await listDue(lending.registrar)).find(
    ({ code, about }) => code === "due.judged-worse" && about.id === loanId,
  );

async function aLoanAt(step: Step, said: Parameters<typeof aLendableSpecimen>[1] = {}) {
  const specimen = await aLendableSpecimen(lending, said);
  const { id: loanId } = await walk(lending, [specimen], step);
  await judgeAgain();
  passHours(1);
  return { specimen, loanId };
}

const aPermit = (specimenId: string, validUntil: string | null) =>
  recordPermit(programViewer, {
    specimenId,
    kind: "species protection (CITES)",
    number: `C ${specimenId.slice(-6)}`,
    authority: "Authority of species protection",
    territories: ["NO", "DE", "FR"],
    validFrom: addDays(today(), -10),
    validUntil,
  });

/** A request for an animal of a listed species that a permit lets travel. */
async function aProtectedLoan(validUntil: string | null) {
  const specimen = await aLendableSpecimen(lending, {
    human: false,
    scientificName: "Lutra lutra",
    speciesAppendix: "I",
  });
  const permitId = await aPermit(specimen.id, validUntil);
  const { id: loanId } = await walk(lending, [specimen], "requested", { audience: "general public" });
  await judgeAgain();
  passHours(1);
  return { specimen, loanId, permitId };
}

async function withdraw(specimenId: string) {
  const { donorCode } = await database().specimenDonor.findFirstOrThrow({ where: { specimenId } });
  await withdrawConsent(lending.donorOfficer, { donorCode, receivedOn: today(), effectiveOn: today() });
}

/** The venue as it is kept, with other facts. */
async function changeVenue(said: Partial<VenueInput>) {
  const { id, name } = await database().venue.findUniqueOrThrow({ where: { id: lending.venueId } });
  const venue = { institutionId: lending.borrowerId, ...goodVenue, reportedOn: addDays(today(), -30) };
  await aVenue({ id, name, ...venue, ...said } as Parameters<typeof aVenue>[0]);
}

test("a consent that is withdrawn has the loan judged, kept and told of, until somebody decides", async () => {
  const { specimen, loanId } = await aLoanAt("requested");
  const before = await occasionsOf(loanId);
  await withdraw(specimen.id);
  expect(await judgeAgain()).toBe(1);
  expect(await occasionsOf(loanId)).toEqual([...before, "consent changed"]);
  const [newest] = (await runsOf(loanId)).reverse();
  expect(newest).toMatchObject({ accountId: programViewer.accountId });
  expect(await lettersOf(loanId)).toBe(1);
  expect(await isDue(loanId)).toMatchObject({ outcome: "attend", dueOn: today(), parameters: { count: 1 } });
  await expect(accept(lending, loanId)).rejects.toMatchObject({ kind: "conflict" });
  expect(await isDue(loanId)).toBeDefined();
});

test("nothing is kept twice, and nothing where no answer changed", async () => {
  const { specimen, loanId } = await aLoanAt("requested");
  const before = await occasionsOf(loanId);
  await aPermit(specimen.id, null);
  expect(await database().loanToJudge.count({ where: { loanId } })).toBeGreaterThan(0);
  expect(await judgeAgain()).toBe(0);
  await withdraw(specimen.id);
  expect(await judgeAgain()).toBe(1);
  expect(await judgeAgain()).toBe(0);
  expect(await occasionsOf(loanId)).toEqual([...before, "consent changed"]);
  expect(await database().loanToJudge.count({ where: { loanId } })).toBe(0);
});

test("after release it is information: the newest run is shown, only what changed is judged, and a recall settles it", async () => {
  const { specimen, loanId } = await aLoanAt("at venue");
  passHours(24 * 100);
  const before = await getLoan(lending.registrar, loanId);
  await withdraw(specimen.id);
  expect(await judgeAgain()).toBe(1);
  const after = await getLoan(lending.registrar, loanId);
  expect(after.latestRun?.occasion).toBe("consent changed");
  expect(after.matrix[specimen.id]?.consent).toBe("bar");
  expect(after.matrix[specimen.id]?.free).toBe(before.matrix[specimen.id]?.free);
  expect(after.findings).toEqual(after.latestRun?.findings);
  expect(await isDue(loanId)).toBeDefined();
  passHours(1);
  await recallLoan(lending.registrar, {
    loanId,
    specimenIds: [specimen.id],
    ground: "consent withdrawn",
    text: "The donor has withdrawn; please bring it home.",
    stopUse: true,
    returnBy: addDays(today(), 60),
  });
  expect(await isDue(loanId)).toBeUndefined();
});

test("a licence that is taken back is found", async () => {
  const { specimen, loanId, permitId } = await aProtectedLoan(addDays(today(), 900));
  await withdrawPermit(lending.registrar, { permitId, withdrawnOn: today(), because: "Issued in error." });
  expect(await judgeAgain()).toBe(1);
  expect((await occasionsOf(loanId)).at(-1)).toBe("licence changed");
  const { matrix } = await getLoan(lending.registrar, loanId);
  expect(matrix[specimen.id]?.permits).not.toBe("clear");
  expect(await isDue(loanId)).toBeDefined();
});

test("a licence that ends by the calendar has its loan looked at on that day, and for a week after", async () => {
  const { loanId } = await aProtectedLoan(addDays(today(), 20));
  const noted = async () => await database().loanToJudge.findMany({ where: { loanId } });
  await noteWhatEnded();
  expect(await noted()).toEqual([]);
  passHours(24 * 21);
  await noteWhatEnded();
  expect(await noted()).toMatchObject([{ occasion: "licence changed" }]);
  await judgeAgain();
  expect(await noted()).toEqual([]);
  passHours(24 * 8);
  await noteWhatEnded();
  expect(await noted()).toEqual([]);
});

test("a venue whose climate changes has its loans judged, and each change is shown beside the run before", async () => {
  const { loanId } = await aLoanAt("accepted");
  await changeVenue({ temperatureHighC: 38, temperatureSwing24hK: 15 });
  expect(await judgeAgain()).toBe(1);
  const [newest, ...earlier] = await listKeptRuns(lending.curator, loanId);
  expect(newest?.occasion).toBe("venue changed");
  expect(newest?.changes?.map(({ after }) => after?.group)).toContain("climate");
  expect(earlier.at(-1)).toMatchObject({ occasion: "request", changes: null });
  const [told] = await listKeptRuns(lending.lecturer, loanId);
  expect(told?.changes?.every(({ after }) => after?.fact === "reason.withheld")).toBe(true);
  await expect(listKeptRuns(lending.stranger, loanId)).rejects.toMatchObject({ kind: "not-found" });
});

test("a refused act leaves the evaluation that refused it, once", async () => {
  const { specimen, loanId } = await aLoanAt("requested", { use: "viewing only" });
  const before = await occasionsOf(loanId);
  await withdraw(specimen.id);
  await database().loanToJudge.deleteMany();
  for (const _time of [1, 2])
    await expect(accept(lending, loanId)).rejects.toMatchObject({ kind: "conflict" });
  expect(await occasionsOf(loanId)).toEqual([...before, "decision refused"]);
});
