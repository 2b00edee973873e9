/** The loans as far as they stay in the house: asked, decided, agreed, covered, packed. */
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { decideLoan } from "#lib/loans/commands/decide-loan.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { recordCover } from "#lib/loans/commands/record-cover.ts";
import { countersignAgreement, signAgreement } from "#lib/loans/commands/sign-agreement.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { substituteSpecimen } from "#lib/loans/commands/substitute.ts";
import { toDate } from "#lib/platform/dates.ts";
import { planClaims, planSetAside } from "#seed/loading/load-exceptions.ts";
import { planJourney } from "#seed/loading/load-journeys.ts";
import { planMessages } from "#seed/loading/load-messages.ts";
import { planMoney } from "#seed/loading/load-money.ts";
import { planTimes } from "#seed/loading/load-times.ts";
import { LoanTale } from "#seed/loading/loan-tale.ts";
import { sealNumber } from "#seed/loading/seal-number.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { type AccountKey, accounts } from "#seed/scenario/accounts.ts";
import { type BorrowerKey, borrowers } from "#seed/scenario/borrowers.ts";
import { centre } from "#seed/scenario/centre.ts";
import type { ChosenTerms, ScenarioLoan } from "#seed/scenario/loan-words.ts";
import { loans } from "#seed/scenario/loans.ts";
import type { Day } from "#seed/scenario/shape.ts";
import type { ScenarioInstitution } from "#seed/scenario/venue-words.ts";

function borrowerOf({ venue }: ScenarioLoan): BorrowerKey {
  const all = Object.entries(borrowers) as [BorrowerKey, ScenarioInstitution][];
  const found = all.find(([, { venues }]) => venue in venues);
  if (!found) throw new Error(`The venue "${venue}" belongs to nobody.`);
  return found[0];
}

const venueCountry = (loan: ScenarioLoan): string => borrowers[borrowerOf(loan)].countryCode;

function planSubstitute({ story, lecturer }: ScenarioLoan, tale: LoanTale): void {
  const { substituted } = story;
  if (!substituted) return;
  const { day, by, specimen, standIn, submittedAgain } = substituted;
  tale.at(day, () =>
    substituteSpecimen(tale.as(by), {
      loanId: tale.id,
      specimenId: tale.world.specimen(specimen),
      standInId: tale.world.specimen(standIn),
    }),
  );
  tale.at(submittedAgain, () => submitRequest(tale.as(lecturer), { loanId: tale.id }));
}

function planRequest(tale: LoanTale): void {
  const { loan, timeline, world } = tale;
  const { asked, story, lecturer } = loan;
  const { starts, ends, coverEuros, ...words } = asked;
  const { name, email, borrower } = accounts[lecturer];
  const phone = borrower === null ? centre.phone : borrowers[borrower].phone;
  tale.at(story.opened, async () => {
    const { id } = await openLoan(tale.as(lecturer), {
      borrowerId: borrower === null ? world.borrower(borrowerOf(loan)) : null,
      request: {
        ...words,
        venueId: world.venue(loan.venue),
        startsOn: timeline.on(starts),
        endsOn: timeline.on(ends),
        // A show opens a week after delivery; of a course nobody has said when it begins.
        opensOn: words.purpose === "exhibition" ? timeline.on(Math.min(starts + 7, ends - 1)) : null,
        factsConfirmed: story.submitted !== undefined,
        contactName: name,
        contactEmail: email,
        contactPhone: phone,
        cover: coverEuros === null ? null : { minor: coverEuros * 100, currency: "EUR" },
      },
      specimenIds: loan.specimens.map(world.specimen),
    });
    tale.id = id;
  });
  tale.at(story.submitted, () => submitRequest(tale.as(lecturer), { loanId: tale.id }));
  planSubstitute(loan, tale);
  tale.at(story.withdrawn, () => withdrawRequest(tale.as(lecturer), { loanId: tale.id }));
  for (const { by, day, conditions = "", reference = "", specimens = [], ...word } of story.decided ?? [])
    tale.at(day, () =>
      decideLoan(tale.as(by), {
        ...word,
        loanId: tale.id,
        conditions,
        reference,
        specimenIds: specimens.map(world.specimen),
      }),
    );
}

/** The smallest PDF there is, in the place of a scan: one empty page with a note of who signed. */
function scanOf(name: string): Uint8Array<ArrayBuffer> {
  const page = `%PDF-1.4
% Signed on paper: ${name}
1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj
2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj
3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]>>endobj
trailer<</Root 1 0 R>>
%%EOF
`;
  return new TextEncoder().encode(page);
}

function planAgreement(tale: LoanTale): void {
  const { story, asked } = tale.loan;
  const { covered, amended } = story;
  const drawUp = (day: Day | undefined, terms: ChosenTerms = {}) =>
    tale.at(day, async () => {
      tale.agreement = await drawUpAgreement(tale.as("registrar"), { loanId: tale.id, ...terms });
    });
  drawUp(story.drawnUp, story.terms);
  const sign = (by: AccountKey, signerRole: string, strokes = "") =>
    signAgreement(tale.as(by), {
      agreementId: tale.agreement.id,
      sha256: tale.agreement.sha256,
      signerRole,
      strokes,
      electronic: true,
    });
  tale.at(story.signedByLender, () => sign("collection manager", "Collection manager"));
  const onPaper = story.signedOnPaper;
  tale.at(story.signedByBorrower, () =>
    onPaper === undefined
      ? sign(tale.signer, "Registrar", story.drawnByBorrower)
      : countersignAgreement(tale.as("registrar"), {
          agreementId: tale.agreement.id,
          sha256: tale.agreement.sha256,
          party: "borrower",
          signerName: onPaper.name,
          signerRole: onPaper.role,
          content: scanOf(onPaper.name),
        }),
  );
  drawUp(amended?.day, amended?.terms);
  tale.at(amended?.signedByLender, () => sign("collection manager", "Collection manager"));
  tale.at(amended?.signedByBorrower, () => sign(tale.signer, "Registrar"));
  if (covered)
    tale.at(covered.day, () =>
      recordCover(tale.as(tale.signer), {
        loanId: tale.id,
        insurer: covered.insurer,
        policyNumber: covered.policy,
        minor: (asked.coverEuros ?? 0) * 100,
        currency: "EUR",
        startsAt: toDate(tale.timeline.on(covered.from)).toISOString(),
        endsAt: toDate(tale.timeline.on(covered.until)).toISOString(),
        coversTransit: true,
        territories: [centre.countryCode, venueCountry(tale.loan)],
      }),
    );
}

function planPacking(tale: LoanTale, index: number): void {
  const { story, specimens } = tale.loan;
  const { out, checkedOut } = story;
  if (out) tale.at(out.planned, () => tale.planStage("out", out));
  tale.at(story.cratesPlanned, () =>
    planCrates(tale.as("registrar"), {
      loanId: tale.id,
      carrierClass: "specialist-door-to-door",
      own: [],
    }),
  );
  if (checkedOut) tale.at(checkedOut.day, () => tale.look("out", checkedOut, specimens));
  tale.at(story.sealed, async () => {
    for (const [at, crate] of (await tale.crates()).entries())
      await sealCrate(tale.as("conservator"), {
        crateId: crate.id,
        sealNumber: sealNumber(index, "A", at),
        packed: crate.contents.map(({ specimenId }) => ({ specimenId, componentsComplete: true })),
      });
  });
}

export function planLoans(timeline: Timeline, world: World): void {
  for (const [index, loan] of loans.entries()) {
    const tale = new LoanTale(loan, timeline, world);
    planRequest(tale);
    planSetAside(tale);
    planAgreement(tale);
    planPacking(tale, index);
    planJourney(tale, index);
    planTimes(tale);
    planMessages(tale);
    planMoney(tale);
    planClaims(tale);
  }
}
