/** The loan's file in the sight of each, lists by page, and the open slip. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { getCratePreview } from "#lib/loans/queries/crate-preview.ts";
import { findSlip, listLoans } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { aViewer, type Made } from "#tests/support/builders.ts";
import { allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let specimen: Made;
let loanId: string;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  specimen = await aLendableSpecimen(
    lending,
    {},
    { answers: allScopes("granted", { "lending to others": "not asked" }) },
  );
  loanId = (await walk(lending, [specimen], "requested")).id;
});
afterAll(() => setClock());

describe("the loan's file", () => {
  test("tells a lecturer outcomes and ways out, and no reasons, costs or checks", async () => {
    const file = await getLoan(lending.lecturer, loanId);
    expect(file.matrix[specimen.id]).toMatchObject({ consent: "bar", title: "clear" });
    expect(new Set(file.findings.map(({ fact }) => fact))).toEqual(new Set(["reason.withheld"]));
    expect(file.latestRun?.findings.every(({ fact }) => fact === "reason.withheld")).toBe(true);
    expect(file.findings.find(({ outcome }) => outcome === "bar")?.wayOut).toBe("way.ask-oversight");
    expect(file).toMatchObject({ covers: null, coverNeeded: null, lines: [{ checks: null }] });
    expect(JSON.stringify(file)).not.toContain("1200000");
  });

  test("tells the borrower's registrar the reasons, and the house's people theirs", async () => {
    const reason = async (viewer: Lending["registrar"], rule: string) =>
      (await getLoan(viewer, loanId)).findings.find((one) => one.rule === rule)?.fact;
    expect(await reason(lending.borrowerRegistrar, "G10")).toBe("consent.not-asked");
    expect(await reason(lending.curator, "G10")).toBe("consent.not-asked");
    expect(await reason(lending.registrar, "V3")).toBe("cover.stated");
    expect(await reason(lending.curator, "V3")).toBe("reason.cost-withheld");
  });

  test("names no donor to anybody", async () => {
    const { donorCode } = await database().specimenDonor.findFirstOrThrow({
      where: { specimenId: specimen.id },
    });
    for (const viewer of [lending.curator, lending.donorOfficer, lending.borrowerRegistrar])
      expect(JSON.stringify(await getLoan(viewer, loanId))).not.toContain(donorCode);
  });

  test("does not exist for a stranger, and an administrator has no sight of it", async () => {
    await expect(getLoan(lending.stranger, loanId)).rejects.toMatchObject({ kind: "not-found" });
    await expect(getLoan(aViewer("administrator"), loanId)).rejects.toMatchObject({ kind: "forbidden" });
    for (const id of [randomUUID(), "nothing", "' OR 1=1 --"])
      await expect(getLoan(lending.registrar, id)).rejects.toMatchObject({ kind: "not-found" });
  });

  test("opens with what stands between now and the next step", async () => {
    const { nextSteps } = await getLoan(lending.curator, loanId);
    expect(nextSteps[0]).toMatchObject({
      outcome: "bar",
      code: "next.barred",
      parameters: { specimen: specimen.accessionNumber, fact: "consent.not-asked" },
    });
    expect(nextSteps.at(-1)).toMatchObject({ outcome: "clear", code: "next.decline" });
  });

  test("is read with as many statements for forty specimens as for one", async () => {
    const { inWork, aSpecimenRow } = await import("#tests/support/builders.ts");
    const rows = Array.from({ length: 40 }, () => aSpecimenRow());
    await inWork(({ transaction }) => transaction.specimen.createMany({ data: rows }));
    const small = await openLoan(lending.lecturer, {
      borrowerId: null,
      request: null,
      specimenIds: rows.slice(0, 1).map(({ id }) => id),
    });
    const large = await openLoan(lending.lecturer, {
      borrowerId: null,
      request: null,
      specimenIds: rows.map(({ id }) => id),
    });
    const { databasePool } = await import("#lib/platform/database.ts");
    const statements = async (id: string) => {
      let count = 0;
      const pool = databasePool();
      const query = pool.query.bind(pool);
      const counting = ((...args: Parameters<typeof query>) => {
        count += 1;
        return query(...args);
      }) as typeof pool.query;
      Object.assign(pool, { query: counting });
      await getLoan(lending.registrar, id);
      Object.assign(pool, { query });
      return count;
    };
    const [one, forty] = [await statements(small.id), await statements(large.id)];
    expect(one).toBeGreaterThan(5);
    expect(forty).toBeLessThanOrEqual(one);
  });
});

describe("loans as a list", () => {
  test("come by page, the newest first, each once", async () => {
    for (let count = 0; count < 4; count += 1)
      await openLoan(lending.lecturer, { borrowerId: null, request: null, specimenIds: [] });
    const seen: string[] = [];
    let after: string | null = null;
    do {
      const page: Awaited<ReturnType<typeof listLoans>> = await listLoans(
        lending.registrar,
        {},
        { after, limit: 3 },
      );
      seen.push(...page.rows.map(({ number }) => number));
      after = page.next;
    } while (after !== null);
    expect(seen).toEqual([...new Set(seen)].sort().reverse());
    expect(seen.length).toBe(await database().loan.count());
  });

  test("are the borrower's own, and none of a stranger's", async () => {
    expect((await listLoans(lending.lecturer)).rows.length).toBeGreaterThan(0);
    expect(await listLoans(lending.stranger)).toEqual({ rows: [], next: null });
    await expect(listLoans(aViewer("administrator"))).rejects.toMatchObject({ kind: "forbidden" });
  });

  test("are found by where they stand, by words, and when overdue", async () => {
    const away = await aLendableSpecimen(lending);
    const out = await walk(lending, [away], "at venue", { title: "Spring school" });
    const numbers = async (filter: Parameters<typeof listLoans>[1]) =>
      (await listLoans(lending.registrar, filter, { limit: 200 })).rows.map(({ number }) => number);
    expect(await numbers({ phase: "away" })).toEqual([out.number]);
    expect(await numbers({ text: "spring" })).toEqual([out.number]);
    expect(await numbers({ text: "%" })).toEqual([]);
    expect(await numbers({ overdue: true })).toEqual([]);
    passHours(24 * 300);
    expect(await numbers({ overdue: true })).toEqual([out.number]);
    expect((await listLoans(lending.registrar, { overdue: true })).rows).toMatchObject([
      { isOverdue: true, state: "at venue", specimens: 1 },
    ]);
    await expect(listLoans(lending.registrar, { phase: "lost" as never })).rejects.toMatchObject({
      kind: "invalid",
    });
  });
});

describe("the open slip", () => {
  test("is the newest of one's own that was not submitted or put away", async () => {
    const colleague = aViewer("lecturer", lending.borrowerId);
    expect(await findSlip(colleague)).toBeNull();
    const first = await openLoan(colleague, { borrowerId: null, request: null, specimenIds: [specimen.id] });
    const second = await openLoan(colleague, { borrowerId: null, request: null, specimenIds: [] });
    expect(await findSlip(colleague)).toMatchObject({ id: second.id, specimens: [] });
    await withdrawRequest(colleague, { loanId: second.id });
    expect(await findSlip(colleague)).toMatchObject({
      id: first.id,
      specimens: [{ accessionNumber: specimen.accessionNumber }],
    });
    expect(await getLoan(colleague, second.id)).toMatchObject({ state: "withdrawn" });
  });
});

describe("the crate that a specimen would travel in", () => {
  test("is explained figure by figure, or unknown where nobody has measured", async () => {
    const preview = await getCratePreview(lending.lecturer, specimen.id);
    expect(preview?.plan.output.crate.grossMassKg).toBeGreaterThan(1.2);
    expect(preview?.margin.cushion.sources.length).toBeGreaterThan(0);
    const unmeasured = await aLendableSpecimen(lending, { lengthMm: null });
    expect(await getCratePreview(lending.lecturer, unmeasured.id)).toBeNull();
    await expect(getCratePreview(lending.lecturer, randomUUID())).rejects.toMatchObject({
      kind: "not-found",
    });
  });
});
