/** Carries a loan along its way through commands, up to the step that a test is about. */

import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate, receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { recordCover } from "#lib/loans/commands/record-cover.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { submitRequest } from "#lib/loans/commands/submit-request.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { now, setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Made } from "#tests/support/builders.ts";
import { aCheckOf, aRequestDraft, type Lending } from "#tests/support/lending.ts";

export const steps = [
  "requested",
  "accepted",
  "agreed",
  "packed",
  "out",
  "resting",
  "at venue",
  "sent home",
  "home",
  "counted",
] as const;
export type Step = (typeof steps)[number];

const reached = (wanted: Step, step: Step) => steps.indexOf(wanted) >= steps.indexOf(step);
/** Lets hours pass. */
export function passHours(hours: number): void {
  const moment = now().getTime() + hours * 3_600_000;
  setClock(() => new Date(moment));
}

export type Walked = { id: string; number: string };

const unknownAir = { outsideC: null, roomC: null, roomHumidity: null };

export async function accept(lending: Lending, loanId: string): Promise<void> {
  await decideLoan(lending.curator, {
    loanId,
    office: "curator",
    outcome: "accept",
    conditions: "",
    grounds: "Fits the course.",
    reference: "",
  });
}

/** Draws up a version and has both sides sign it. */
export async function agree(lending: Lending, loanId: string): Promise<string> {
  const { id, sha256 } = await drawUpAgreement(lending.registrar, { loanId });
  const shown = { agreementId: id, sha256, strokes: "", electronic: true } as const;
  await signAgreement(lending.manager, { ...shown, signerRole: "Head of collections" });
  await signAgreement(lending.borrowerRegistrar, { ...shown, signerRole: "Registrar of the faculty" });
  return id;
}

export async function cover(
  lending: Lending,
  loanId: string,
  said: { startsAt?: string; endsAt?: string } = {},
): Promise<void> {
  await recordCover(lending.borrowerRegistrar, {
    loanId,
    insurer: "Mutual cover",
    policyNumber: `P ${loanId.slice(-6)} ${said.startsAt ?? ""}`,
    minor: 90_000_000,
    currency: "EUR",
    startsAt: `${addDays(today(), -1)}T00:00:00Z`,
    endsAt: `${addDays(today(), 400)}T00:00:00Z`,
    coversTransit: true,
    territories: ["NO", "DE", "FR"],
    ...said,
  });
}

async function pack(lending: Lending, loanId: string, specimens: readonly Made[]): Promise<void> {
  for (const { id } of specimens)
    await recordCheck(lending.conservator, aCheckOf(id, { loanId, occasion: "out" }));
  await planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] });
  for (const crate of (await getLoan(lending.registrar, loanId)).crates)
    await sealCrate(lending.conservator, {
      crateId: crate.id,
      sealNumber: `S ${crate.code}`,
      packed: crate.contents.map(({ specimenId }) => ({ specimenId, componentsComplete: true })),
    });
  await planStage(lending.registrar, {
    loanId,
    direction: "out",
    carrier: "Gentle Freight",
    carrierEmail: "",
    vehicle: "van",
    through: [],
    departsOn: today(),
    arrivesOn: addDays(today(), 2),
  });
}

async function looks(lending: Lending, loanId: string) {
  const { crates } = await getLoan(lending.registrar, loanId);
  return crates
    .filter((crate) => crate.state === "with the carrier")
    .map((crate) => ({ crateId: crate.id, arrived: true, sealIntact: true, outsideDamage: "" }));
}

/** A new seal for every crate of a loan. */
export async function newSeals(lending: Lending, loanId: string) {
  const { crates } = await getLoan(lending.registrar, loanId);
  return crates.map(({ id, code }) => ({ crateId: id, sealNumber: `H ${code}` }));
}

async function unpackAtVenue(lending: Lending, loanId: string): Promise<void> {
  for (const crate of (await getLoan(lending.registrar, loanId)).crates)
    await openCrate(lending.lecturer, {
      crateId: crate.id,
      counts: crate.contents.map(({ specimenId }) => ({ specimenId, present: true, remark: "" })),
    });
}

/** Days from the request until the specimens leave. */
const UNTIL_LEAVING = 80;

/** Walks a loan of these specimens as far as the step. Time goes on with it; the clock is set. */
export async function walk(
  lending: Lending,
  specimens: readonly Made[],
  upTo: Step,
  said: Partial<RequestDraft> = {},
): Promise<Walked> {
  const loan = await openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending, said),
    specimenIds: specimens.map(({ id }) => id),
  });
  const loanId = loan.id;
  await submitRequest(lending.lecturer, { loanId });
  if (reached(upTo, "accepted")) await accept(lending, loanId);
  if (reached(upTo, "agreed")) {
    await agree(lending, loanId);
    await cover(lending, loanId);
  }
  if (reached(upTo, "packed")) {
    passHours(24 * UNTIL_LEAVING);
    await pack(lending, loanId, specimens);
  }
  if (reached(upTo, "out")) await dispatchLoan(lending.registrar, { loanId });
  if (reached(upTo, "resting")) {
    passHours(48);
    await receiveLoan(lending.borrowerRegistrar, {
      loanId,
      crates: await looks(lending, loanId),
      ...unknownAir,
    });
  }
  if (reached(upTo, "at venue")) {
    passHours(49);
    await unpackAtVenue(lending, loanId);
  }
  if (reached(upTo, "sent home")) {
    passHours(24 * 60);
    await sendHome(lending.lecturer, {
      loanId,
      specimenIds: null,
      seals: await newSeals(lending, loanId),
      carrier: "Gentle Freight",
    });
  }
  if (reached(upTo, "home")) {
    passHours(48);
    await receiveHome(lending.registrar, { loanId, crates: await looks(lending, loanId), ...unknownAir });
  }
  if (reached(upTo, "counted")) {
    passHours(49);
    await countReturn(lending.curator, {
      loanId,
      counts: specimens.map(({ id }) => ({
        specimenId: id,
        present: true,
        remark: "",
        missingComponents: [],
      })),
    });
  }
  return loan;
}

/** The moment each loan test starts from. */
export function startClock(): void {
  const moment = new Date("2026-11-25T09:00:00.000Z");
  setClock(() => moment);
}
