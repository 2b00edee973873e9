/** The money of the demo: a scale in two versions, quotations of every standing, a statement, a loan called off. */
import { beforeAll, expect, test } from "vitest";
import { loanCosting } from "#lib/costing/costing.ts";
import { readCosting } from "#lib/costing/frozen.ts";
import { draftOfLine } from "#lib/costing/lines.ts";
import { listFeeScales } from "#lib/costing/queries.ts";
import { findMoney, type MoneySheet } from "#lib/loans/queries/costings.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { testDatabase } from "#tests/support/database.ts";

let all: MoneySheet[];
beforeAll(async () => {
  await testDatabase("demo");
  const loans = await database().costing.findMany({ distinct: ["loanId"], select: { loanId: true } });
  all = [];
  for (const { loanId } of loans) {
    const money = await findMoney(programViewer, loanId);
    if (money) all.push(money);
  }
  // the scenario is loaded by the first file that asks for it
}, 240_000);

test("quotations were accepted, refused and forgotten", () => {
  const states = all.flatMap(({ quotations }) => quotations.map(({ state }) => state));
  for (const state of ["accepted", "refused", "expired"]) expect(states).toContain(state);
});

test("a closed loan came to less than was quoted", () => {
  const stated = all.flatMap(({ statements }) => statements);
  expect(stated).toHaveLength(1);
  const against = stated[0]?.content.against;
  expect(against?.differenceMinor).toBeLessThan(0);
  expect(against?.lines.some(({ actualMinor }) => actualMinor === null)).toBe(true);
});

test("one loan was called off after its quotation was accepted", () => {
  const calledOff = all.filter(({ calledOffOn, accepted }) => calledOffOn !== null && accepted !== null);
  expect(calledOff).toHaveLength(1);
});

test("every paper comes to what it says when it is reckoned again, and says that it recovers costs", async () => {
  const rows = await database().costing.findMany();
  expect(rows.length).toBeGreaterThan(5);
  for (const { content } of rows) {
    const { currency, lines, exchange, netMinor, taxMinor, totalMinor, costRecovery } = readCosting(content);
    expect(loanCosting({ currency, lines: lines.map(draftOfLine), exchange })).toEqual({
      netMinor,
      taxMinor,
      totalMinor,
    });
    expect(costRecovery).toBe(true);
  }
});

test("the scale has two versions, of which the newer counts", async () => {
  const versions = await listFeeScales(programViewer);
  expect(versions.map(({ version, counts }) => [version, counts])).toEqual([
    [2, true],
    [1, false],
  ]);
});

test("hours that the conservator estimated stand on the quotation", async () => {
  const lines = await database().loanLine.findMany({
    where: { treatmentHours: { not: null } },
    select: { loanId: true, treatmentHours: true },
  });
  expect(lines).toHaveLength(2);
  const money = await findMoney(programViewer, lines[0]?.loanId ?? "");
  const line = money?.accepted?.content.lines.find(({ code }) => code === "preparation");
  const hours = lines.reduce((sum, { treatmentHours }) => sum + Number(treatmentHours), 0);
  expect(line?.price).toMatchObject({ kind: "counted", quantity: String(hours), unit: "hour" });
});
