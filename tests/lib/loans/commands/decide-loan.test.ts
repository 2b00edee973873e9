/** The decision: whose word it needs, what refuses it, and what follows for the specimens and their days. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { z } from "zod";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { DecisionInput } from "#lib/loans/schema.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { aMandate, aViewer, type Made } from "#tests/support/builders.ts";
import { allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { accept, passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const open = (specimens: readonly Made[], said = {}) =>
  openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending, said),
    specimenIds: specimens.map(({ id }) => id),
  });
const word = (loanId: string, said: Partial<DecisionInput> = {}): z.input<typeof DecisionInput> => ({
  loanId,
  office: "curator",
  outcome: "accept",
  conditions: "",
  grounds: "Fits the course.",
  reference: "",
  ...said,
});
const bookingsOf = (specimenId: string) =>
  database().booking.findMany({ where: { specimenId, releasedAt: null }, orderBy: { startsOn: "asc" } });

describe("a decision", () => {
  test("accepts, and the days are firm", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await walk(lending, [specimen], "accepted");
    expect(await getLoan(lending.registrar, id)).toMatchObject({
      state: "accepted",
      decisions: [{ office: "curator", counts: true }],
    });
    expect(await bookingsOf(specimen.id)).toMatchObject([{ strength: "firm", expiresAt: null }]);
  });

  test("declines, and the days are free again", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await walk(lending, [specimen], "requested");
    await decideLoan(lending.curator, word(id, { outcome: "decline", grounds: "Too fragile this year." }));
    expect(await getLoan(lending.lecturer, id)).toMatchObject({ state: "declined" });
    expect(await bookingsOf(specimen.id)).toEqual([]);
  });

  test("is not the registrar's, and not a lecturer's", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    for (const viewer of [lending.registrar, lending.lecturer, lending.conservator, aViewer("inspector")])
      await expect(decideLoan(viewer, word(id))).rejects.toMatchObject({ kind: "forbidden" });
    await expect(decideLoan(lending.curator, word(id, { office: "donor officer" }))).rejects.toMatchObject({
      reason: "decision.not-your-office",
    });
    await expect(decideLoan(lending.donorOfficer, word(id))).rejects.toMatchObject({
      reason: "decision.not-your-office",
    });
  });

  test("is refused while a specimen is barred, with the fact", async () => {
    const specimen = await aLendableSpecimen(lending, { use: "viewing only" });
    const { id } = await walk(lending, [specimen], "requested", { teachingUse: "handling" });
    await expect(accept(lending, id)).rejects.toMatchObject({
      reason: "decision.barred",
      parameters: {
        specimen: specimen.accessionNumber,
        fact: "use.viewing-only",
        wayOut: "way.viewing-only",
        bars: 1,
      },
    });
    expect((await getLoan(lending.curator, id)).decisions).toEqual([]);
    await removeSpecimen(lending.lecturer, { loanId: id, specimenId: specimen.id });
    const ended = await getLoan(lending.curator, id);
    expect(ended.state).toBe("withdrawn");
    expect(ended.closedAt).not.toBeNull();
  });

  test("about a human specimen whose donor's wish is not known waits for the donor officer and the oversight body", async () => {
    const specimen = await aLendableSpecimen(
      lending,
      {},
      { answers: allScopes("granted", { "lending to others": "not asked" }) },
    );
    const { id } = await walk(lending, [specimen], "requested");
    expect(await getLoan(lending.curator, id)).toMatchObject({
      matrix: { [specimen.id]: { consent: "bar" } },
      officesNeeded: ["donor officer", "oversight body", "curator"],
    });
    await expect(accept(lending, id)).rejects.toMatchObject({
      reason: "decision.office-missing",
      parameters: { office: "donor officer" },
    });
    await decideLoan(
      lending.donorOfficer,
      word(id, { office: "donor officer", grounds: "The form of that year did not ask." }),
    );
    await expect(accept(lending, id)).rejects.toMatchObject({ parameters: { office: "oversight body" } });
    await expect(decideLoan(lending.manager, word(id, { office: "oversight body" }))).rejects.toMatchObject({
      issues: [{ path: "reference", message: "decision.reference-missing" }],
    });
    await decideLoan(lending.manager, word(id, { office: "oversight body", reference: "OB 2026/14" }));
    expect(await getLoan(lending.curator, id)).toMatchObject({
      matrix: { [specimen.id]: { consent: "attend" } },
    });
    await accept(lending, id);
    expect(await getLoan(lending.curator, id)).toMatchObject({ state: "accepted" });
  });

  test("accepts some of the specimens, and the others are declined with their days free", async () => {
    const [fit, barred] = [
      await aLendableSpecimen(lending),
      await aLendableSpecimen(lending, { use: "viewing only" }),
    ];
    const { id } = await walk(lending, [fit, barred], "requested", { teachingUse: "handling" });
    await expect(accept(lending, id)).rejects.toMatchObject({ reason: "decision.barred" });
    const elsewhere = await aLendableSpecimen(lending);
    await expect(
      decideLoan(lending.curator, word(id, { specimenIds: [elsewhere.id] })),
    ).rejects.toMatchObject({ reason: "decision.no-specimen" });
    await decideLoan(lending.curator, word(id, { specimenIds: [fit.id] }));
    const loan = await getLoan(lending.curator, id);
    expect(loan.state).toBe("accepted");
    expect(new Map(loan.lines.map(({ specimenId, state }) => [specimenId, state]))).toEqual(
      new Map([
        [fit.id, "accepted"],
        [barred.id, "declined"],
      ]),
    );
    expect(await bookingsOf(fit.id)).toMatchObject([{ strength: "firm" }]);
    expect(await bookingsOf(barred.id)).toEqual([]);
  });

  test("is not theirs who have recused themselves, and a recusal decides nothing", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    await decideLoan(
      lending.curator,
      word(id, { outcome: "recuse", grounds: "My own course would borrow it." }),
    );
    expect(await getLoan(lending.curator, id)).toMatchObject({ state: "requested" });
    await expect(accept(lending, id)).rejects.toMatchObject({ reason: "decision.recused" });
    await decideLoan(lending.manager, word(id));
    expect(await getLoan(lending.curator, id)).toMatchObject({
      state: "accepted",
      decisions: [{ outcome: "recuse" }, { outcome: "accept" }],
    });
  });

  test("needs a mandate that reaches the replacement cost", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    const another = aViewer("curator");
    await expect(decideLoan(another, word(id))).rejects.toMatchObject({ reason: "mandate.none" });
    await aMandate(another, { acts: ["decide requests"] });
    await decideLoan(another, word(id));
  });

  test("of two offices is not one person's", async () => {
    const specimen = await aLendableSpecimen(lending, {}, { reviewDueOn: addDays(today(), 100) });
    const { id } = await walk(lending, [specimen], "requested");
    const both = aViewer(["donor officer", "curator"]);
    await decideLoan(both, word(id, { office: "donor officer" }));
    await expect(decideLoan(both, word(id))).rejects.toMatchObject({ reason: "decision.same-person" });
    await accept(lending, id);
  });

  test("on a request that was stated anew asks the offices again", async () => {
    const specimen = await aLendableSpecimen(lending, {}, { reviewDueOn: addDays(today(), 100) });
    const { id } = await walk(lending, [specimen], "requested");
    await decideLoan(lending.donorOfficer, word(id, { office: "donor officer" }));
    passHours(1);
    await stateRequest(lending.lecturer, {
      loanId: id,
      request: aRequestDraft(lending, { note: "A week later." }),
    });
    await expect(accept(lending, id)).rejects.toMatchObject({ reason: "decision.office-missing" });
  });

  test("waits until what was noted later is submitted", async () => {
    const { id } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
    const late = await aLendableSpecimen(lending);
    await noteSpecimen(lending.lecturer, { loanId: id, specimenIds: [late.id], seriesId: null });
    await expect(accept(lending, id)).rejects.toMatchObject({
      reason: "decision.not-submitted",
      parameters: { specimens: late.accessionNumber },
    });
    await submitRequest(lending.lecturer, { loanId: id });
    await accept(lending, id);
  });

  test("takes the hold again where it has run out, and refuses where somebody else has the days now", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await walk(lending, [specimen], "requested");
    passHours(24 * 15);
    const other = await open([specimen], { startsOn: addDays(today(), 80), endsOn: addDays(today(), 100) });
    await submitRequest(lending.lecturer, { loanId: other.id });
    await expect(accept(lending, id)).rejects.toMatchObject({
      reason: "decision.barred",
      parameters: { fact: "free.taken-until", freeFrom: addDays(today(), 114) },
    });
    await withdrawRequest(lending.lecturer, { loanId: other.id });
    await accept(lending, id);
  });
});
