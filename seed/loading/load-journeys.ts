/** The loans from the dock to the venue and home again: received, opened, counted, checked, closed. */
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { recordCustomsDischarge } from "#lib/loans/commands/discharge.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate, receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { findClosing } from "#lib/loans/queries/closing.ts";
import { issuePapersOf, issuePapersOfLoan } from "#seed/loading/load-papers.ts";
import { decideCodesOf } from "#seed/loading/load-tariffs.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";
import { sealNumber } from "#seed/loading/seal-number.ts";

/** The air that is read at the dock and in the room where crates rest. */
const air = { outsideC: 7, roomC: 20, roomHumidity: 0.5 };

async function looksAtCrates(tale: LoanTale) {
  const crates = await tale.crates();
  return crates.map(({ id }) => ({ crateId: id, arrived: true, sealIntact: true, outsideDamage: "" }));
}

/** What came back over a customs border is discharged before its file is closed. */
async function dischargeOf(tale: LoanTale): Promise<void> {
  const registrar = tale.as("registrar");
  const closing = await findClosing(registrar, tale.id);
  if (closing === null || closing.countries.length === 0) return;
  const { story } = tale.loan;
  await recordCustomsDischarge(registrar, {
    loanId: tale.id,
    dischargedOn: tale.timeline.on(story.receivedHome ?? 0),
    office: "Customs, harbour office",
    reference: `T ${tale.loan.key.length}${Math.abs(story.receivedHome ?? 0)}`,
    note: "Counterfoil of the way home is in the file.",
  });
}

function planStay(tale: LoanTale): void {
  const { story } = tale.loan;
  const { unpacked } = story;
  tale.at(story.dispatched, async () => {
    await decideCodesOf(tale);
    await issuePapersOf(tale, "out", [
      "packing list",
      "crate label",
      "dispatch note",
      "pro-forma invoice",
      "travel sheet",
    ]);
    await issuePapersOfLoan(tale, ["quotation", "condition form"]);
    await dispatchLoan(tale.as("registrar"), { loanId: tale.id });
  });
  tale.at(story.received, async () => {
    await receiveLoan(tale.as(tale.signer), {
      loanId: tale.id,
      crates: await looksAtCrates(tale),
      ...air,
    });
    await issuePapersOf(tale, "out", ["outgoing receipt"]);
  });
  if (!unpacked) return;
  tale.at(unpacked.day, async () => {
    for (const crate of await tale.crates())
      await openCrate(tale.as(tale.signer), {
        crateId: crate.id,
        counts: crate.contents.map(({ specimenId }) => ({ specimenId, present: true, remark: "" })),
      });
    const looks = unpacked.looks ?? {};
    await tale.look("arrival", { day: unpacked.day, by: tale.signer, looks }, Object.keys(looks));
  });
}

function planReturn(tale: LoanTale, index: number): void {
  const { specimens, story } = tale.loan;
  const { home, counted, checkedHome, verdicts = {} } = story;
  const missing = counted?.missing ?? {};
  if (home) tale.at(home.planned, () => tale.planStage("home", home));
  tale.at(story.sentHome, async () => {
    const crates = await tale.crates();
    await sendHome(tale.as(tale.signer), {
      loanId: tale.id,
      specimenIds: null,
      seals: crates.map(({ id }, at) => ({ crateId: id, sealNumber: sealNumber(index, "B", at) })),
      carrier: "",
    });
  });
  tale.at(story.receivedHome, async () => {
    await receiveHome(tale.as("registrar"), {
      loanId: tale.id,
      crates: await looksAtCrates(tale),
      ...air,
    });
    await issuePapersOf(tale, "home", ["incoming receipt"]);
  });
  tale.at(counted?.day, () =>
    countReturn(tale.as("conservator"), {
      loanId: tale.id,
      counts: specimens.map((accessionNumber) => ({
        specimenId: tale.world.specimen(accessionNumber),
        present: missing[accessionNumber] === undefined,
        remark: missing[accessionNumber] ?? "",
        missingComponents: [],
      })),
    }),
  );
  const there = specimens.filter((accessionNumber) => missing[accessionNumber] === undefined);
  if (checkedHome) tale.at(checkedHome.day, () => tale.look("home", checkedHome, there));
  tale.at(story.checkedIn, async () => {
    for (const accessionNumber of there) {
      const { verdict, remark } = verdicts[accessionNumber] ?? { verdict: "no change", remark: "" };
      const specimenId = tale.world.specimen(accessionNumber);
      await checkIn(tale.as("curator"), { loanId: tale.id, specimenId, verdict, remark });
    }
  });
  tale.at(story.closed, async () => {
    await dischargeOf(tale);
    await closeLoan(tale.as("registrar"), { loanId: tale.id });
    await issuePapersOfLoan(tale, ["loan closure"]);
  });
}

export function planJourney(tale: LoanTale, index: number): void {
  planStay(tale);
  planReturn(tale, index);
}
