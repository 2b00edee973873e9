/** Stand-ins: what could take a specimen's place, and one doing so in one act. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { substituteSpecimen } from "#lib/loans/commands/substitute.ts";
import { findStandIns } from "#lib/loans/queries/stand-ins.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";
import { aShown } from "#tests/support/specimen-records.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const showing = async (...structureIds: string[]) => {
  const specimen = await aLendableSpecimen(lending);
  await recordShown(lending.curator, {
    specimenId: specimen.id,
    shown: structureIds.map((structureId) => aShown(structureId)),
  });
  return specimen;
};
const idsOf = async (loanId: string, { id }: Made) =>
  (await findStandIns(lending.registrar, loanId, id)).rows.map((row) => [row.id, row.shared]);

test("those that show most of the same come first, without what is taken or on the loan already", async () => {
  const wanted = await showing("heart", "liver", "spleen");
  const two = await showing("heart", "liver");
  const one = await showing("spleen");
  const taken = await showing("heart", "liver", "spleen");
  await showing("kidney");
  await walk(lending, [taken], "accepted");
  const { id: loanId } = await walk(lending, [wanted], "requested");
  expect(await idsOf(loanId, wanted)).toEqual([
    [two.id, 2],
    [one.id, 1],
  ]);
  await substituteSpecimen(lending.registrar, { loanId, specimenId: wanted.id, standInId: two.id });
  const lines = new Map(
    (await getLoan(lending.registrar, loanId)).lines.map(({ specimenId, state }) => [specimenId, state]),
  );
  expect(lines.get(wanted.id)).toBe("withdrawn");
  expect(lines.get(two.id)).toBe("noted");
  const [line] = await database().loanLine.findMany({ where: { loanId, specimenId: two.id } });
  const [left] = await database().loanLine.findMany({ where: { loanId, specimenId: wanted.id } });
  expect(line?.substituteForId).toBe(left?.id);
  expect(await database().booking.count({ where: { specimenId: wanted.id, releasedAt: null } })).toBe(0);
});

test("it is not possible once the request is decided, and not a stranger's", async () => {
  const [wanted, other] = [await showing("liver"), await showing("liver")];
  const { id: loanId } = await walk(lending, [wanted], "accepted");
  const input = { loanId, specimenId: wanted.id, standInId: other.id };
  await expect(substituteSpecimen(lending.registrar, input)).rejects.toMatchObject({
    reason: "loan.not-now",
  });
  await expect(findStandIns(lending.stranger, loanId, wanted.id)).rejects.toMatchObject({
    kind: "not-found",
  });
});
