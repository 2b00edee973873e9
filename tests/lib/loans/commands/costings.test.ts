/** Fee scale, quotation, answer, cost statement: through the commands, and what the database refuses by itself. */
import pg from "pg";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { cancellationCharge } from "#lib/costing/cancellation.ts";
import { setFeeScale } from "#lib/costing/commands.ts";
import { listFeeScales } from "#lib/costing/queries.ts";
import type { LineDraft } from "#lib/costing/schema.ts";
import { listDue } from "#lib/desk/queries/due.ts";
import { answerQuotation, drawUpCostStatement, drawUpQuotation } from "#lib/loans/commands/costings.ts";
import { withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { findMoney, findQuotationDraft, listCostingKeys } from "#lib/loans/queries/costings.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { aViewer } from "#tests/support/builders.ts";
import { type TestDatabase, testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";
import { aCountedLine, aFeeScale, aStatedLine, someLines } from "#tests/support/money.ts";

let lending: Lending;
let place: TestDatabase;
beforeAll(async () => {
  place = await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const scaleToday = async () => {
  if ((await listFeeScales(lending.registrar)).length === 0)
    await setFeeScale(lending.manager, { scale: aFeeScale(), validFrom: today() });
};
const accepted = async () => (await walk(lending, [await aLendableSpecimen(lending)], "accepted")).id;
const quote = (loanId: string, said: { lines?: LineDraft[]; validUntil?: string; note?: string } = {}) =>
  drawUpQuotation(lending.registrar, {
    loanId,
    lines: someLines(),
    exchange: [],
    validUntil: addDays(today(), 30),
    note: "",
    ...said,
  });
const answer = (
  { id, sha256 }: { id: string; sha256: string },
  outcome: "accepted" | "refused" = "accepted",
  viewer = lending.borrowerRegistrar,
) => answerQuotation(viewer, { costingId: id, sha256, outcome, remark: "" });
const money = async (loanId: string, viewer = lending.registrar) => {
  const found = await findMoney(viewer, loanId);
  if (!found) throw new Error("the money of this loan is not to be seen");
  return found;
};

describe("before anything is set", () => {
  test("nothing is quoted without a fee scale", async () => {
    const loanId = await accepted();
    expect(await findQuotationDraft(lending.registrar, loanId)).toBeNull();
    await expect(quote(loanId)).rejects.toMatchObject({ reason: "costing.no-fee-scale" });
  });
});

describe("the fee scale", () => {
  test("counts from its day, is kept in versions, and is not set twice alike", async () => {
    const admin = aViewer("administrator");
    await expect(
      setFeeScale(admin, { scale: aFeeScale(), validFrom: addDays(today(), -1) }),
    ).rejects.toMatchObject({ issues: [{ path: "validFrom", message: "fee-scale.from-past" }] });
    expect(await setFeeScale(admin, { scale: aFeeScale(), validFrom: today() })).toEqual({ version: 1 });
    await expect(setFeeScale(admin, { scale: aFeeScale(), validFrom: today() })).rejects.toMatchObject({
      reason: "fee-scale.unchanged",
    });
    const dearer = aFeeScale({ contingencyPercent: "7.5" });
    await setFeeScale(lending.manager, { scale: dearer, validFrom: addDays(today(), 10) });
    expect((await listFeeScales(lending.registrar)).map(({ version, counts }) => [version, counts])).toEqual([
      [2, false],
      [1, true],
    ]);
    expect((await listFeeScales(lending.curator))[0]?.scale).toEqual(dearer);
    await expect(listFeeScales(lending.lecturer)).rejects.toMatchObject({ kind: "forbidden" });
  });

  test("is never changed, not even by the program", async () => {
    await scaleToday();
    await expect(database().feeScale.updateMany({ data: { currency: "NOK" } })).rejects.toThrow();
  });
});

describe("a quotation", () => {
  beforeAll(scaleToday);

  test("waits for the decision, also in the database", async () => {
    const { id: loanId, number } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    await expect(quote(loanId)).rejects.toMatchObject({
      kind: "conflict",
      reason: "costing.not-decided",
      parameters: { loan: number },
    });
    await expect(
      database().costing.create({
        data: {
          id: newId(),
          loanId,
          kind: "quotation",
          version: 1,
          content: "{}",
          sha256: sha256Hex("{}"),
          currency: "EUR",
          totalMinor: 1n,
          validUntil: toDate(today()),
          drawnUpBy: "Somebody",
          drawnUpAt: new Date(),
        },
      }),
    ).rejects.toThrow("anatheca:costing.not-decided");
  });

  test("is frozen with its sums, says that it recovers costs, and is drawn up anew only when it says something new", async () => {
    const loanId = await accepted();
    const first = await quote(loanId);
    const { quotations } = await money(loanId);
    expect(quotations).toHaveLength(1);
    expect(quotations[0]).toMatchObject({
      state: "open",
      sha256: first.sha256,
      content: {
        costRecovery: true,
        currency: "EUR",
        minorDigits: 2,
        netMinor: 55_000,
        taxMinor: 13_750,
        totalMinor: 68_750,
        loan: { specimens: 1, purpose: "teaching" },
      },
    });
    await expect(quote(loanId)).rejects.toMatchObject({ reason: "costing.unchanged" });
    await quote(loanId, { lines: [...someLines(), aCountedLine("packing", "2", 4_635)] });
    const [second, superseded] = (await money(loanId)).quotations;
    expect(second?.changes?.filter(({ differenceMinor }) => differenceMinor !== 0)).toEqual([
      { code: "packing", note: "", quotedMinor: null, actualMinor: 9_270, differenceMinor: 9_270 },
    ]);
    expect(superseded?.state).toBe("superseded");
    await expect(answer(first)).rejects.toMatchObject({ reason: "costing.superseded" });
    await expect(
      database().costingAnswer.create({
        data: { costingId: first.id, outcome: "refused", accountId: "x", answeredAt: new Date() },
      }),
    ).rejects.toThrow("anatheca:costing.superseded");
  });

  test("of animals alone says nothing of remains", async () => {
    const animal = await aLendableSpecimen(lending, { human: false, scientificName: "Equus caballus" });
    const { id: loanId } = await walk(lending, [animal], "accepted");
    await quote(loanId);
    expect((await money(loanId)).quotations[0]?.content.costRecovery).toBe(false);
  });

  test("holds what it costs to bring everything home, ends on a day to come, and adds no currencies", async () => {
    const loanId = await accepted();
    await expect(quote(loanId, { lines: [aCountedLine("loan fee", "1", 25_000)] })).rejects.toMatchObject({
      reason: "costing.recall-missing",
    });
    await expect(quote(loanId, { validUntil: addDays(today(), -1) })).rejects.toMatchObject({
      issues: [{ path: "validUntil", message: "costing.valid-until-past" }],
    });
    await expect(
      quote(loanId, { lines: [...someLines(), aStatedLine("ferry", 500, { currency: "NOK" })] }),
    ).rejects.toMatchObject({ reason: "costing.no-rate" });
  });

  test("begins with what the loan says of itself", async () => {
    const loanId = await accepted();
    const draft = await findQuotationDraft(lending.registrar, loanId);
    expect(draft?.byScale.find(({ code }) => code === "cover of the stay")?.price).toMatchObject({
      ofMinor: 1_200_000,
      // the borrower states cover of its own
      times: "0",
    });
    expect(await findQuotationDraft(lending.borrowerRegistrar, loanId)).toBeNull();
  });
});

describe("an answer", () => {
  beforeAll(scaleToday);

  test("is the borrower registrar's of the own loan, once, to what was read", async () => {
    const loanId = await accepted();
    const quotation = await quote(loanId);
    const { borrowerId } = lending;
    for (const viewer of [aViewer("lecturer", borrowerId), lending.registrar])
      await expect(answer(quotation, "accepted", viewer)).rejects.toMatchObject({ kind: "forbidden" });
    const stranger = aViewer("borrower registrar", lending.stranger.institutionId ?? "");
    await expect(answer(quotation, "accepted", stranger)).rejects.toMatchObject({ kind: "not-found" });
    await expect(findMoney(stranger, loanId)).rejects.toMatchObject({ kind: "not-found" });
    expect(await findMoney(lending.lecturer, loanId)).toBeNull();
    await expect(answer({ ...quotation, sha256: "0".repeat(64) })).rejects.toMatchObject({
      reason: "costing.other-content",
    });
    await answer(quotation, "refused");
    await expect(answer(quotation)).rejects.toMatchObject({ reason: "costing.already-answered" });
    const { quotations, accepted: none } = await money(loanId, lending.borrowerRegistrar);
    expect([quotations[0]?.state, none]).toEqual(["refused", null]);
    expect(await listCostingKeys(lending.registrar, loanId)).toEqual([quotation.id]);
  });

  test("comes too late after the last day, in the program and in the database", async () => {
    const loanId = await accepted();
    const quotation = await quote(loanId, { validUntil: addDays(today(), 1) });
    const dueOf = async () =>
      (await listDue(lending.borrowerRegistrar))
        .filter(({ about }) => about.id === loanId)
        .map(({ code }) => code);
    expect(await dueOf()).toContain("due.quotation-open");
    passHours(48);
    expect(await dueOf()).toContain("due.quotation-expired");
    await expect(answer(quotation)).rejects.toMatchObject({ reason: "costing.expired" });
    const client = new pg.Client({ connectionString: place.applicationUrl });
    await client.connect();
    try {
      const insert = (outcome: string) =>
        client.query(
          "INSERT INTO costing_answer (costing_id, outcome, account_id, answered_at) VALUES ($1, $2, 'x', $3)",
          [quotation.id, outcome, `${today()}T00:00:00Z`],
        );
      await expect(insert("accepted")).rejects.toThrow("anatheca:costing.expired");
      await expect(client.query("UPDATE costing SET total_minor = 1")).rejects.toThrow();
      await expect(client.query("DELETE FROM costing_answer")).rejects.toThrow();
    } finally {
      await client.end();
    }
    await answer(quotation, "refused");
  });
});

describe("a cost statement", () => {
  beforeAll(scaleToday);
  const state = (loanId: string, lines: LineDraft[]) =>
    drawUpCostStatement(lending.registrar, { loanId, lines, exchange: [], note: "" });

  test("stands beside the quotation that was accepted, and only then", async () => {
    const loanId = await accepted();
    const quotation = await quote(loanId);
    await expect(state(loanId, someLines())).rejects.toMatchObject({ reason: "costing.not-accepted" });
    await answer(quotation);
    const actual = [
      aStatedLine("", 25_000, { code: "loan fee" }),
      aStatedLine("", 12_050, { code: "return and recall" }),
      aStatedLine("new lid", 4_000),
    ];
    const statement = await state(loanId, actual);
    const { statements } = await money(loanId, lending.borrowerRegistrar);
    // 250.00 + 120.50 + 40.00 = 410.50, with 25 % = 513.125 → 513.13; quoted were 687.50
    expect(statement.totalMinor).toBe(51_313);
    expect(statements[0]?.content.against).toMatchObject({
      version: 1,
      sha256: quotation.sha256,
      totalMinor: 68_750,
      differenceMinor: -17_437,
      lines: [
        { code: "loan fee", differenceMinor: 0 },
        { code: "return and recall", quotedMinor: 30_000, actualMinor: 12_050, differenceMinor: -17_950 },
        { code: "other", note: "new lid", quotedMinor: null, actualMinor: 4_000, differenceMinor: 4_000 },
      ],
    });
    await expect(
      answerQuotation(lending.borrowerRegistrar, {
        costingId: statement.id,
        sha256: statement.sha256,
        outcome: "accepted",
        remark: "",
      }),
    ).rejects.toMatchObject({ reason: "costing.not-a-quotation" });
  });
});

describe("a loan that is called off", () => {
  beforeAll(scaleToday);

  test("after an acceptance costs its share of the quoted total", async () => {
    const loanId = await accepted();
    await answer(await quote(loanId));
    const { dispatchOn } = await money(loanId);
    passHours(24 * 50);
    await withdrawRequest(lending.registrar, { loanId });
    const { calledOffOn, accepted: quotation } = await money(loanId);
    expect(calledOffOn).toBe(today());
    const { totalMinor, currency, cancellation } = quotation?.content ?? {};
    if (
      totalMinor === undefined ||
      currency === undefined ||
      cancellation === undefined ||
      calledOffOn === null
    )
      throw new Error("the quotation was accepted");
    const charge = cancellationCharge({
      totalMinor,
      currency,
      scale: cancellation,
      dispatchOn,
      cancelledOn: calledOffOn,
    });
    // asked for in 90 days, 14 of them before delivery: 26 are left; 25 % of 687.50 is 171.875
    expect(charge).toEqual({ daysBefore: 26, percent: "25", chargeMinor: 17_188 });
  });
});

describe("a replacement cost", () => {
  test("older than twelve months is due while its specimen is asked for", async () => {
    const old = await aLendableSpecimen(lending, { replacementCostOn: toDate(addDays(today(), -400)) });
    const dueOf = async (viewer = lending.registrar) =>
      (await listDue(viewer)).filter(({ code, about }) => code === "due.cost-old" && about.id === old.id);
    expect(await dueOf()).toEqual([]);
    await walk(lending, [old], "requested");
    expect(await dueOf()).toMatchObject([{ parameters: { specimen: old.accessionNumber } }]);
    expect(await dueOf(lending.borrowerRegistrar)).toEqual([]);
  });
});
