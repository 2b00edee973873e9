/** Writing down tariff codes: whose decision, for which specimens, where, and what takes its place. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { decideTariffCode } from "#lib/loans/commands/tariff.ts";
import { listTariffKeys, tariffCodesOf } from "#lib/loans/queries/tariff-codes.ts";
import { issuePaper } from "#lib/papers/commands/issue-paper.ts";
import { papersOfLoan } from "#lib/papers/queries/loan-papers.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { now, setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDateText } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, type Walked, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let loan: Walked;
let stageId = "";
let house = "";
let specimenIds: string[] = [];
let day: DateText = "2026-01-01";

const decide = (said: Partial<Parameters<typeof decideTariffCode>[1]> = {}, viewer = lending.registrar) =>
  decideTariffCode(viewer, {
    stageId,
    countryCode: "SE",
    specimenIds,
    code: "9705.21.00",
    decidedBy: "Harbour Brokers",
    decidedOn: day,
    note: "",
    ...said,
  });
const sheetOf = async () =>
  (await tariffCodesOf(lending.registrar, loan.id)).find((one) => one.stageId === stageId);

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  const specimens = [
    await aLendableSpecimen(lending, { title: "Heart" }),
    await aLendableSpecimen(lending, { title: "Liver" }),
  ];
  loan = await walk(lending, specimens, "packed");
  day = toDateText(now());
  const stage = await database().stage.findFirstOrThrow({ where: { loanId: loan.id, direction: "out" } });
  stageId = stage.id;
  await inTransaction(programViewer, "planStage", async (transaction) => {
    await transaction.stage.update({ where: { id: stageId }, data: { through: ["SE"] } });
  });
  specimenIds = (await database().loanLine.findMany({ where: { loanId: loan.id } })).map(
    (line) => line.specimenId,
  );
  house = (await sheetOf())?.countries.find((code) => code !== "SE") ?? "";
});
afterAll(() => setClock());

test("until somebody decides, every specimen is open in every country of the way", async () => {
  const sheet = await sheetOf();
  expect(sheet?.countries).toContain("SE");
  expect(sheet?.decisions).toEqual([]);
  expect(sheet?.open.map(({ specimens }) => specimens.length)).toEqual(sheet?.countries.map(() => 2));
});

test("a decision is kept with who made it and when, for its country only", async () => {
  await decide();
  const sheet = await sheetOf();
  expect(sheet?.decisions).toMatchObject([
    { countryCode: "SE", code: "9705.21.00", decidedBy: "Harbour Brokers", decidedOn: day },
  ]);
  expect(sheet?.open.map(({ countryCode }) => countryCode)).not.toContain("SE");
  expect(sheet?.open.map(({ countryCode }) => countryCode)).toContain(house);
});

test("a new decision takes the place of the old, and the audit keeps both", async () => {
  const [first = ""] = specimenIds;
  await decide({ specimenIds: [first], code: "9705.29", decidedBy: "Customs office, Port Selwyn" });
  const sheet = await sheetOf();
  expect(sheet?.decisions.map(({ code, specimens }) => [code, specimens.length])).toEqual([
    ["9705.21.00", 1],
    ["9705.29", 1],
  ]);
  expect(await listTariffKeys(lending.registrar, loan.id)).toHaveLength(2);
  const entries = await database().auditEntry.findMany({ where: { tableName: "tariff_code" } });
  expect(entries.map(({ operation }) => operation).sort()).toEqual(["insert", "insert", "update"]);
});

test("the pro-forma invoice says the code, and becomes a new version with a new decision", async () => {
  const issue = () =>
    issuePaper(lending.registrar, {
      loanId: loan.id,
      kind: "pro-forma invoice",
      subjects: [stageId],
      language: "en",
    });
  await issue();
  await expect(issue()).rejects.toMatchObject({ reason: "paper.unchanged" });
  await decide({ countryCode: house, code: "9705.21" });
  expect((await issue())[0]?.version).toBe(2);
  const { content } = await database().issuedPaper.findFirstOrThrow({ where: { version: 2 } });
  expect(JSON.parse(content)).toMatchObject({ undecided: [] });
  const kindsFor = async (viewer: typeof lending.registrar) =>
    (await papersOfLoan(viewer, loan.id)).papers.map(({ kind }) => kind);
  expect(await kindsFor(lending.borrowerRegistrar)).toContain("pro-forma invoice");
  expect(await kindsFor(lending.lecturer)).not.toContain("pro-forma invoice");
});

test.each([
  ["a country that the way does not touch", { countryCode: "JP" }, "tariff.country-off-way"],
  ["a stage that nobody planned", { stageId: newId() }, "record.not-found"],
  ["a specimen of another loan", { specimenIds: [newId()] }, "record.not-found"],
  ["a code that is none", { code: "human" }, "input.invalid"],
  ["nobody's decision", { decidedBy: " " }, "input.invalid"],
])("refused: %s", async (_what, said, reason) => {
  await expect(decide(said)).rejects.toMatchObject({ reason });
});

test("refused: a decision of a day to come, and one by who may not", async () => {
  await expect(decide({ decidedOn: addDays(day, 3) })).rejects.toMatchObject({ reason: "input.invalid" });
  await expect(decide({}, lending.lecturer)).rejects.toMatchObject({ kind: "forbidden" });
  await expect(tariffCodesOf(lending.stranger, loan.id)).rejects.toMatchObject({ kind: "not-found" });
});
