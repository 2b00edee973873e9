/** Setting a bar aside: who may, with what, and what the decision then finds; the kept run holds what it looked at. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { type SetAsideInput, setAsideBar } from "#lib/loans/commands/set-aside.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { rulebookVersion } from "#lib/suitability/rules/book.ts";
import { mayGoAgainst } from "#lib/suitability/rules/set-aside.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { accept, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const barred = async () => {
  const specimen = await aLendableSpecimen(lending, { use: "viewing only" });
  const { id: loanId } = await walk(lending, [specimen], "requested", { teachingUse: "handling" });
  const found = (await getLoan(lending.curator, loanId)).findings.find(({ outcome }) => outcome === "bar");
  if (!found) throw new Error("Nothing bars it.");
  const input: SetAsideInput = {
    loanId,
    specimenIds: [specimen.id],
    rule: found.rule,
    fact: found.fact,
    office: "curator",
    grounds: "Under my eyes, for one hour.",
    evidence: "Note of the curator 7",
  };
  return { specimen, loanId, found, input };
};

test("a bar that the curator may set aside is attend afterwards, with the word, and the request can be accepted", async () => {
  const { specimen, loanId, found, input } = await barred();
  expect(mayGoAgainst(found.rule)).toContain("curator");
  await expect(accept(lending, loanId)).rejects.toMatchObject({ reason: "decision.barred" });
  await setAsideBar(lending.curator, input);
  const after = (await getLoan(lending.curator, loanId)).findings.find(({ fact }) => fact === found.fact);
  expect(after).toMatchObject({
    outcome: "attend",
    specimenId: specimen.id,
    setAside: { office: "curator", by: lending.curator.name, evidence: "Note of the curator 7" },
  });
  await accept(lending, loanId);
  const run = await database().suitabilityRun.findFirstOrThrow({ where: { loanId, occasion: "decision" } });
  expect(run.rulebook).toBe(rulebookVersion);
  expect(run.inputs).toMatchObject({
    request: { teachingUse: "handling", setAside: [{ rule: found.rule }] },
    subjects: [{ specimen: { id: specimen.id, use: "viewing only" } }],
  });
});

test("it is not everybody's, nor every office's, and only for a bar that stands", async () => {
  const { input } = await barred();
  await expect(setAsideBar(lending.registrar, input)).rejects.toMatchObject({ kind: "forbidden" });
  await expect(setAsideBar(lending.lecturer, input)).rejects.toMatchObject({ kind: "forbidden" });
  await expect(setAsideBar(lending.curator, { ...input, office: "donor officer" })).rejects.toMatchObject({
    reason: "decision.not-your-office",
  });
  await expect(setAsideBar(lending.conservator, { ...input, office: "conservator" })).rejects.toMatchObject({
    reason: "suitability.not-to-set-aside",
  });
  await expect(setAsideBar(lending.curator, { ...input, fact: "use.as-allowed" })).rejects.toMatchObject({
    reason: "suitability.no-such-bar",
  });
  await expect(setAsideBar(lending.curator, { ...input, grounds: "ok" })).rejects.toMatchObject({
    issues: [{ path: "grounds", message: "decision.grounds-short" }],
  });
});
