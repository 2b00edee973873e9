/** Opening and following a claim: for what left the house, one at a time, forward only. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { openClaim, recordClaimEvent } from "#lib/loans/commands/claims.ts";
import { listClaims } from "#lib/loans/queries/claims.ts";
import { setClock } from "#lib/platform/clock.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const note = "A crack at the rim, not there before it left.";

test("a claim is opened for what left the house, goes forward only, and ends", async () => {
  const specimen = await aLendableSpecimen(lending);
  const { id: loanId, number } = await walk(lending, [specimen], "counted");
  const claim = await openClaim(lending.registrar, { loanId, specimenId: specimen.id, note });
  expect(claim.number).toBe(`${number} C1`);
  await expect(
    openClaim(lending.conservator, { loanId, specimenId: specimen.id, note }),
  ).rejects.toMatchObject({ reason: "claim.open-already", parameters: { claim: claim.number } });
  const step = (kind: "notified" | "surveyed" | "settled", minor: number | null = null) =>
    recordClaimEvent(lending.registrar, {
      claimId: claim.id,
      kind,
      amount: minor === null ? null : { minor, currency: "EUR" },
      note: "",
    });
  await step("surveyed");
  await expect(step("notified")).rejects.toMatchObject({ reason: "claim.not-now" });
  await step("settled", 480_00);
  await expect(step("settled", 1)).rejects.toMatchObject({ reason: "claim.not-now" });
  expect(await listClaims(lending.borrowerRegistrar, loanId)).toMatchObject([
    {
      accessionNumber: specimen.accessionNumber,
      state: "settled",
      isOpen: false,
      events: [
        { kind: "opened", note },
        { kind: "surveyed" },
        { amount: { minor: 480_00, currency: "EUR" } },
      ],
    },
  ]);
  expect((await openClaim(lending.registrar, { loanId, specimenId: specimen.id, note })).number).toBe(
    `${number} C2`,
  );
});

test("none is opened for what never left, none by the borrower, and a lecturer sees none", async () => {
  const specimen = await aLendableSpecimen(lending);
  const { id: loanId } = await walk(lending, [specimen], "accepted");
  const input = { loanId, specimenId: specimen.id, note };
  await expect(openClaim(lending.registrar, input)).rejects.toMatchObject({ reason: "claim.never-left" });
  await expect(openClaim(lending.borrowerRegistrar, input)).rejects.toMatchObject({ kind: "forbidden" });
  const away = await aLendableSpecimen(lending);
  const { id } = await walk(lending, [away], "at venue");
  await openClaim(lending.registrar, { loanId: id, specimenId: away.id, note });
  expect(await listClaims(lending.lecturer, id)).toEqual([]);
  await expect(listClaims(lending.stranger, id)).rejects.toMatchObject({ kind: "not-found" });
});
