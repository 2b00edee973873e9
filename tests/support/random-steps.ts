/**
 * What can be tried on a loan in a random walk: every command of its way with a fitting
 * input, and when it fits. Some is done badly on purpose: a specimen is missing, a part
 * is refused, somebody looks in the wrong place.
 */
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { recallLoan } from "#lib/loans/commands/recall.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate, receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type { Act } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Made } from "#tests/support/builders.ts";
import { aCheckOf, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { cover, newSeals } from "#tests/support/loan-walk.ts";

export type Situation = { loan: LoanSheet; lending: Lending; more: readonly Made[]; dice: () => number };
export type Step = {
  act: Act;
  /** Lines in these states, or the loan before it was agreed, make it fit. */
  fits: (situation: Situation) => boolean;
  run: (viewer: Viewer, situation: Situation) => Promise<unknown>;
};

const has =
  (...states: LineState[]) =>
  ({ loan }: Situation) =>
    loan.lines.some(({ state }) => states.includes(state));
const linesIn = ({ loan }: Situation, ...states: LineState[]) =>
  loan.lines.filter(({ state }) => states.includes(state));
const mostly = ({ dice }: Situation) => dice() < 0.9;
const idsOf = (lines: readonly { specimenId: string }[]) => lines.map(({ specimenId }) => specimenId);
const unknownAir = { outsideC: null, roomC: null, roomHumidity: null };

export function oneOf<Item>(items: readonly Item[], dice: () => number): Item | undefined {
  return items[Math.floor(dice() * items.length)];
}

const looksAt = (situation: Situation) =>
  situation.loan.crates
    .filter(({ state }) => state === "with the carrier")
    .map(({ id }) => ({ crateId: id, arrived: mostly(situation), sealIntact: true, outsideDamage: "" }));

export const steps: readonly Step[] = [
  {
    act: "noteSpecimen",
    fits: ({ loan, more }) => loan.state === "enquiry" && loan.lines.length < 3 && more.length > 0,
    run: (viewer, { loan, more }) =>
      noteSpecimen(viewer, { loanId: loan.id, specimenIds: more.map(({ id }) => id), seriesId: null }),
  },
  {
    act: "stateRequest",
    fits: ({ loan }) => loan.missingFields.length > 0,
    run: (viewer, { loan, lending }) =>
      stateRequest(viewer, { loanId: loan.id, request: aRequestDraft(lending) }),
  },
  {
    act: "submitRequest",
    fits: has("noted"),
    run: (viewer, { loan }) => submitRequest(viewer, { loanId: loan.id }),
  },
  {
    act: "removeSpecimen",
    fits: ({ dice }) => dice() < 0.05,
    run: (viewer, situation) =>
      removeSpecimen(viewer, {
        loanId: situation.loan.id,
        specimenId: oneOf(situation.loan.lines, situation.dice)?.specimenId ?? "",
      }),
  },
  {
    act: "withdrawRequest",
    fits: ({ dice }) => dice() < 0.03,
    run: (viewer, { loan }) => withdrawRequest(viewer, { loanId: loan.id }),
  },
  {
    act: "decideLoan",
    fits: has("requested"),
    run: (viewer, situation) =>
      decideLoan(viewer, {
        loanId: situation.loan.id,
        office: "curator",
        outcome: mostly(situation) ? "accept" : "decline",
        specimenIds: mostly(situation) ? [] : idsOf(linesIn(situation, "requested")).slice(0, 1),
        conditions: "",
        grounds: "As the dice have it.",
        reference: "",
      }),
  },
  {
    act: "drawUpAgreement",
    fits: (situation) => has("accepted")(situation) && situation.loan.agreements.length === 0,
    run: (viewer, { loan }) => drawUpAgreement(viewer, { loanId: loan.id }),
  },
  {
    act: "signAgreement",
    fits: (situation) =>
      has("accepted")(situation) &&
      situation.loan.state === "accepted" &&
      situation.loan.agreements.length > 0,
    run: (viewer, { loan }) => {
      const agreement = loan.agreements.reduce<LoanSheet["agreements"][number] | undefined>(
        (newest, one) => (newest === undefined || one.version > newest.version ? one : newest),
        undefined,
      );
      return signAgreement(viewer, {
        agreementId: agreement?.id ?? "",
        sha256: agreement?.sha256 ?? "",
        strokes: "",
        electronic: true,
        signerRole: "Signs by lot",
      });
    },
  },
  {
    act: "recordCover",
    fits: (situation) => has("accepted")(situation) && (situation.loan.covers ?? []).length === 0,
    run: (viewer, { loan, lending }) => cover({ ...lending, borrowerRegistrar: viewer }, loan.id),
  },
  {
    act: "recordCheck",
    fits: has("accepted", "packed", "resting at home"),
    run: async (viewer, situation) => {
      const line = oneOf(linesIn(situation, "accepted", "packed", "resting at home"), situation.dice);
      const { loan } = situation;
      const occasion = line?.state === "resting at home" ? "home" : "out";
      await recordCheck(viewer, aCheckOf(line?.specimenId ?? "", { loanId: loan.id, occasion }));
    },
  },
  {
    act: "planCrates",
    fits: (situation) => has("accepted")(situation) && situation.loan.crates.length === 0,
    run: (viewer, { loan }) =>
      planCrates(viewer, { loanId: loan.id, carrierClass: "specialist-door-to-door", own: [] }),
  },
  {
    act: "sealCrate",
    fits: (situation) => has("accepted")(situation) && situation.loan.crates.length > 0,
    run: (viewer, { loan, dice }) => {
      const crate = oneOf(loan.crates, dice);
      return sealCrate(viewer, {
        crateId: crate?.id ?? "",
        sealNumber: `S ${crate?.code ?? ""}`,
        packed: (crate?.contents ?? []).map(({ specimenId }) => ({ specimenId, componentsComplete: true })),
      });
    },
  },
  {
    act: "planStage",
    fits: (situation) => has("packed")(situation) && situation.loan.stages.length === 0,
    run: (viewer, { loan }) =>
      planStage(viewer, {
        loanId: loan.id,
        direction: "out",
        carrier: "Gentle Freight",
        carrierEmail: "",
        vehicle: "van",
        through: [],
        departsOn: today(),
        arrivesOn: addDays(today(), 2),
      }),
  },
  {
    act: "dispatchLoan",
    fits: has("packed"),
    run: (viewer, { loan }) => dispatchLoan(viewer, { loanId: loan.id }),
  },
  {
    act: "receiveLoan",
    fits: has("travelling out"),
    run: (viewer, situation) =>
      receiveLoan(viewer, { loanId: situation.loan.id, crates: looksAt(situation), ...unknownAir }),
  },
  {
    act: "openCrate",
    fits: has("resting at venue"),
    run: (viewer, situation) => {
      const crate = oneOf(situation.loan.crates, situation.dice);
      return openCrate(viewer, {
        crateId: crate?.id ?? "",
        counts: (crate?.contents ?? []).map(({ specimenId }) => ({
          specimenId,
          present: mostly(situation),
          remark: "",
        })),
      });
    },
  },
  {
    act: "recallLoan",
    fits: (situation) => has("at venue")(situation) && situation.dice() < 0.2,
    run: (viewer, situation) =>
      recallLoan(viewer, {
        loanId: situation.loan.id,
        specimenIds: idsOf(linesIn(situation, "travelling out", "resting at venue", "at venue")),
        ground: "consent withdrawn",
        text: "The consent was withdrawn.",
        stopUse: true,
        returnBy: addDays(today(), 60),
      }),
  },
  {
    act: "sendHome",
    fits: (situation) =>
      has("at venue")(situation) ||
      (has("travelling out", "resting at venue")(situation) && situation.dice() < 0.1),
    run: async (viewer, situation) => {
      const { loan, lending } = situation;
      const away = linesIn(situation, "travelling out", "resting at venue", "at venue");
      await sendHome(viewer, {
        loanId: loan.id,
        specimenIds: mostly(situation) ? null : idsOf(away).slice(0, 1),
        seals: await newSeals(lending, loan.id),
        carrier: "Gentle Freight",
      });
    },
  },
  {
    act: "receiveHome",
    fits: has("travelling home"),
    run: (viewer, situation) =>
      receiveHome(viewer, { loanId: situation.loan.id, crates: looksAt(situation), ...unknownAir }),
  },
  {
    act: "countReturn",
    fits: has("resting at home", "missing"),
    run: (viewer, situation) =>
      countReturn(viewer, {
        loanId: situation.loan.id,
        counts: linesIn(situation, "resting at home", "missing").map(({ specimenId }) => ({
          specimenId,
          present: mostly(situation),
          remark: "",
          missingComponents: [],
        })),
      }),
  },
  {
    act: "checkIn",
    fits: has("resting at home"),
    run: (viewer, situation) =>
      checkIn(viewer, {
        loanId: situation.loan.id,
        specimenId: oneOf(linesIn(situation, "resting at home"), situation.dice)?.specimenId ?? "",
        verdict: "no change",
        remark: "",
      }),
  },
  {
    act: "closeLoan",
    fits: has("checked in"),
    run: (viewer, { loan }) => closeLoan(viewer, { loanId: loan.id }),
  },
];
