/** One loan from the lecturer's slip to the specimen safely back in its place, through commands, on a database. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { noteSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest } from "#lib/loans/commands/submit-request.ts";
import { findSlip } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { custodyOf, freePeriodsOf, getWhereabouts } from "#lib/whereabouts/queries.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import {
  aCheckOf,
  aFinding,
  aLendableSpecimen,
  aLending,
  aRequestDraft,
  type Lending,
} from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let heart: Made;
let hand: Made;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  heart = await aLendableSpecimen(lending);
  hand = await aLendableSpecimen(lending, { title: "Hand" });
});
afterAll(() => setClock());

test("a lecturer gathers a slip, states the request, and submits it", async () => {
  const { id, number } = await openLoan(lending.lecturer, {
    borrowerId: null,
    request: null,
    specimenIds: [heart.id],
  });
  expect(number).toMatch(/^L 2026-\d{3}$/);
  expect(await findSlip(lending.lecturer)).toMatchObject({
    id,
    specimens: [{ accessionNumber: heart.accessionNumber }],
  });
  expect(
    await noteSpecimen(lending.lecturer, { loanId: id, specimenIds: [heart.id, hand.id], seriesId: null }),
  ).toMatchObject({ added: 1, waits: false });

  const half = await getLoan(lending.lecturer, id);
  expect(half).toMatchObject({ state: "enquiry", missingFields: ["title", "purpose", "factsConfirmed"] });
  await expect(submitRequest(lending.lecturer, { loanId: id })).rejects.toMatchObject({
    kind: "invalid",
    issues: [{ path: "title" }, { path: "purpose" }, { path: "factsConfirmed" }],
  });

  await stateRequest(lending.lecturer, { loanId: id, request: aRequestDraft(lending) });
  const found = await submitRequest(lending.lecturer, { loanId: id });
  expect(found.bar).toBe(0);
  expect(await getLoan(lending.lecturer, id)).toMatchObject({
    state: "requested",
    latestRun: { occasion: "request" },
  });
  expect(await findSlip(lending.lecturer)).toBeNull();
});

test("a loan goes all the way out and home", async () => {
  const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending, { title: "Foot" })];
  const [first, second] = specimens as [Made, Made];
  const loan = await walk(lending, specimens, "counted");

  const home = await getLoan(lending.registrar, loan.id);
  expect(home.state).toBe("home, to be checked");
  await expect(
    checkIn(lending.curator, { loanId: loan.id, specimenId: first.id, verdict: "no change", remark: "" }),
  ).rejects.toMatchObject({ reason: "check-in.no-check-home" });

  const scratch = aFinding({ severity: "minor" });
  await recordCheck(lending.conservator, aCheckOf(first.id, { loanId: loan.id, occasion: "home" }));
  await recordCheck(
    lending.conservator,
    aCheckOf(second.id, {
      loanId: loan.id,
      occasion: "home",
      check: { ...aCheckOf(second.id).check, findings: [scratch] },
    }),
  );
  expect(
    await checkIn(lending.curator, {
      loanId: loan.id,
      specimenId: first.id,
      verdict: "no change",
      remark: "",
    }),
  ).toMatchObject({ needsReview: false, placed: true });
  await expect(closeLoan(lending.registrar, { loanId: loan.id })).rejects.toMatchObject({
    reason: "loan.still-open",
    parameters: { specimens: `${second.accessionNumber} (resting at home)` },
  });
  await expect(
    checkIn(lending.curator, { loanId: loan.id, specimenId: second.id, verdict: "no change", remark: "" }),
  ).rejects.toMatchObject({ reason: "check-in.verdict-differs", parameters: { new: 1 } });
  expect(
    await checkIn(lending.curator, {
      loanId: loan.id,
      specimenId: second.id,
      verdict: "damage",
      remark: "scratch",
    }),
  ).toMatchObject({ needsReview: true, totals: { new: 1 } });
  await closeLoan(lending.registrar, { loanId: loan.id });

  const closed = await getLoan(lending.registrar, loan.id);
  expect(closed.state).toBe("closed");
  expect(closed.closedAt).not.toBeNull();
  expect(closed.crates.every((crate) => crate.state === "empty")).toBe(true);
  expect(closed.lines[1]?.checks?.comparison?.totals).toMatchObject({ new: 1 });

  // Custody tells the whole way, and the specimen stands in its store again.
  const custody = await custodyOf(lending.curator, first.id);
  expect(custody.chain.map((link) => link.toParty)).toEqual([
    "Centre for Anatomical Loans",
    "Gentle Freight",
    closed.borrower.name,
    "Gentle Freight",
    "Centre for Anatomical Loans",
  ]);
  const where = await getWhereabouts(lending.curator, first.id);
  expect(where.place?.id).toBe(lending.storeId);

  // The days that were not needed are free again from tomorrow on.
  const free = await freePeriodsOf(lending.lecturer, [first.id], today(), "2028-01-01");
  expect(free.get(first.id)?.[0]?.startsOn).toBe(
    new Date(Date.parse(today()) + 86_400_000).toISOString().slice(0, 10),
  );
});

test("the signed terms are the hashed ones, and each act stands in the audit under its name", async () => {
  const [row] = await database().agreement.findMany({ orderBy: { drawnUpAt: "desc" }, take: 1 });
  expect(row?.sha256).toBe(sha256Hex(row?.terms ?? ""));
  const acts = await database().auditEntry.findMany({
    where: { tableName: "loan_line" },
    distinct: ["act"],
    select: { act: true },
  });
  expect(acts.map(({ act }) => act)).toEqual(
    expect.arrayContaining([
      "openLoan",
      "submitRequest",
      "decideLoan",
      "sealCrate",
      "dispatchLoan",
      "receiveLoan",
      "openCrate",
      "sendHome",
      "receiveHome",
      "checkIn",
      "closeLoan",
    ]),
  );
});

test("the table of moves in the database is the one in the code", async () => {
  const { lineMoveRows } = await import("#lib/loans/transitions.ts");
  const rows = await database().loanLineMove.findMany();
  const sorted = (moves: readonly { fromState: string; toState: string }[]) =>
    moves.map(({ fromState, toState }) => `${fromState} > ${toState}`).sort();
  expect(sorted(rows)).toEqual(sorted(lineMoveRows));
});

test("the database refuses a move outside the table", async () => {
  const specimen = await aLendableSpecimen(lending);
  const loan = await walk(lending, [specimen], "requested");
  const { inTransaction } = await import("#lib/platform/transaction.ts");
  await expect(
    inTransaction(programViewer, "test", (transaction) =>
      transaction.loanLine.updateMany({ where: { loanId: loan.id }, data: { state: "at venue" } }),
    ),
  ).rejects.toMatchObject({ reason: "loan.move-not-allowed" });
});
