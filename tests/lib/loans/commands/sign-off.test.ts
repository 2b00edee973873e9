/** A poor condition and the conservator's word: before the decision, after it, and at the release. */

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { z } from "zod";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { DecisionInput } from "#lib/loans/schema.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { aMandate, aViewer, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import {
  aCheckOf,
  aFinding,
  aLendableSpecimen,
  aLending,
  aRequestDraft,
  type Lending,
} from "#tests/support/lending.ts";
import { accept, agree, cover, passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const poorCheck = (specimenId: string, said = {}) => {
  const { check, ...record } = aCheckOf(specimenId, said);
  return { ...record, check: { ...check, findings: [aFinding({ severity: "moderate" })] } };
};
const word = (loanId: string, said: Partial<DecisionInput> = {}): z.input<typeof DecisionInput> => ({
  loanId,
  office: "conservator",
  outcome: "accept",
  conditions: "Lies on its side, never stands.",
  grounds: "The crack is old and padded.",
  reference: "",
  ...said,
});
const aPoorSpecimen = async (): Promise<Made> => {
  const specimen = await aLendableSpecimen(lending);
  await recordCheck(lending.conservator, poorCheck(specimen.id, { checkedOn: addDays(today(), -1) }));
  return specimen;
};
const stepsOf = async (loanId: string) =>
  (await getLoan(lending.conservator, loanId)).nextSteps.map(({ code, action, parameters }) => [
    code,
    action,
    parameters.office ?? null,
  ]);

describe("a request for a specimen in poor condition", () => {
  test("waits for the conservator's word, and is decided with it", async () => {
    const specimen = await aPoorSpecimen();
    const { id } = await walk(lending, [specimen], "requested");
    expect(await getLoan(lending.curator, id)).toMatchObject({
      matrix: { [specimen.id]: { condition: "attend" } },
      officesNeeded: ["conservator", "curator"],
    });
    expect(await stepsOf(id)).toContainEqual(["next.word-of-office", "decideLoan", "conservator"]);
    await expect(accept(lending, id)).rejects.toMatchObject({
      reason: "decision.office-missing",
      parameters: { office: "conservator" },
    });
    await decideLoan(lending.conservator, word(id));
    const signed = await getLoan(lending.curator, id);
    expect(signed.matrix[specimen.id]).toMatchObject({ condition: "clear" });
    expect(signed.findings.find(({ rule }) => rule === "C1")).toMatchObject({
      fact: "condition.grade-signed-off",
      parameters: { signedOffOn: today() },
    });
    expect(signed.officesNeeded).toEqual(["conservator", "curator"]);
    await accept(lending, id);
    expect(await getLoan(lending.curator, id)).toMatchObject({ state: "accepted" });
  });

  test("ends with the conservator's no", async () => {
    const { id } = await walk(lending, [await aPoorSpecimen()], "requested");
    await decideLoan(lending.conservator, word(id, { outcome: "decline" }));
    expect(await getLoan(lending.curator, id)).toMatchObject({ state: "declined" });
  });

  test("is decided by two persons, whatever roles one account holds", async () => {
    const { id } = await walk(lending, [await aPoorSpecimen()], "requested");
    const both = aViewer(["conservator", "curator"]);
    await decideLoan(both, word(id));
    await expect(decideLoan(both, word(id, { office: "curator" }))).rejects.toMatchObject({
      reason: "decision.same-person",
      parameters: { office: "conservator" },
    });
    await accept(lending, id);
  });

  test("asks again when it was stated anew", async () => {
    const { id } = await walk(lending, [await aPoorSpecimen()], "requested");
    await decideLoan(lending.conservator, word(id));
    passHours(1);
    await stateRequest(lending.lecturer, { loanId: id, request: aRequestDraft(lending, { note: "Later." }) });
    await expect(accept(lending, id)).rejects.toMatchObject({ parameters: { office: "conservator" } });
  });

  test("is signed off by a conservator, and by nobody else", async () => {
    const { id } = await walk(lending, [await aPoorSpecimen()], "requested");
    for (const viewer of [lending.curator, lending.manager, lending.donorOfficer])
      await expect(decideLoan(viewer, word(id))).rejects.toMatchObject({
        reason: "decision.not-your-office",
      });
    await expect(decideLoan(lending.registrar, word(id))).rejects.toMatchObject({ kind: "forbidden" });
    await expect(decideLoan(lending.conservator, word(id, { office: "curator" }))).rejects.toMatchObject({
      reason: "decision.not-your-office",
    });
  });

  test("asks nobody but the curator while the condition is good, and one may hold both roles then", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    const both = aViewer(["conservator", "curator"]);
    await aMandate(both);
    await decideLoan(both, word(id));
    await decideLoan(both, word(id, { office: "curator" }));
    expect(await getLoan(lending.curator, id)).toMatchObject({ state: "accepted" });
  });
});

describe("a condition that turns out poor after the decision", () => {
  const found = async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "accepted", {
      startsOn: addDays(today(), 20),
      endsOn: addDays(today(), 60),
    });
    await agree(lending, loanId);
    await cover(lending, loanId);
    await planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] });
    await planStage(lending.registrar, {
      loanId,
      direction: "out",
      carrier: "Gentle Freight",
      carrierEmail: "",
      through: [],
      vehicle: "",
      departsOn: today(),
      arrivesOn: addDays(today(), 1),
    });
    const [crate] = (await getLoan(lending.registrar, loanId)).crates;
    await sealCrate(lending.conservator, {
      crateId: crate?.id ?? "",
      sealNumber: "S 1",
      packed: [{ specimenId: specimen.id, componentsComplete: true }],
    });
    await recordCheck(lending.conservator, poorCheck(specimen.id, { loanId, occasion: "out" }));
    return { specimen, loanId };
  };
  const dispatch = (loanId: string) => dispatchLoan(lending.registrar, { loanId });

  test("holds the specimen back until it is signed off", async () => {
    const { specimen, loanId } = await found();
    await expect(dispatch(loanId)).rejects.toMatchObject({
      reason: "loan.gate-fails",
      parameters: {
        gate: "condition",
        fact: "gate.grade-not-signed-off",
        specimen: specimen.accessionNumber,
      },
    });
    expect(await stepsOf(loanId)).toEqual([["next.gate", "decideLoan", "conservator"]]);
    await decideLoan(lending.conservator, word(loanId));
    expect(await stepsOf(loanId)).toEqual([["next.dispatch", "dispatchLoan", null]]);
    await dispatch(loanId);
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({ state: "travelling out" });
    await expect(decideLoan(lending.conservator, word(loanId))).rejects.toMatchObject({
      reason: "loan.not-now",
    });
  });

  test("is not signed off by who decided, and can no longer be declined", async () => {
    const { loanId } = await found();
    const decider = { ...lending.curator, roles: ["curator", "conservator"] as const };
    await expect(decideLoan({ ...decider, roles: [...decider.roles] }, word(loanId))).rejects.toMatchObject({
      reason: "decision.same-person",
    });
    await expect(decideLoan(lending.conservator, word(loanId, { outcome: "decline" }))).rejects.toMatchObject(
      { reason: "loan.not-now" },
    );
  });

  test("is the only thing that a word is still taken for", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "accepted");
    await expect(decideLoan(lending.conservator, word(id))).rejects.toMatchObject({
      reason: "decision.nothing-to-sign-off",
    });
  });
});
