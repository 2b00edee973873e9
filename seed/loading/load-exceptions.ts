/** What does not go as usual on a loan: a bar that is set aside on evidence, a claim after harm. */
import { openClaim, recordClaimEvent } from "#lib/loans/commands/claims.ts";
import { setAsideBar } from "#lib/loans/commands/set-aside.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";

export function planSetAside(tale: LoanTale): void {
  for (const { day, by, specimens, ...word } of tale.loan.story.setAside ?? [])
    tale.at(day, () =>
      setAsideBar(tale.as(by), {
        ...word,
        loanId: tale.id,
        specimenIds: specimens.map(tale.world.specimen),
      }),
    );
}

export function planClaims(tale: LoanTale): void {
  for (const { day, by, specimen, note, events } of tale.loan.story.claimed ?? []) {
    let claimId = "";
    tale.at(day, async () => {
      const specimenId = tale.world.specimen(specimen);
      claimId = (await openClaim(tale.as(by), { loanId: tale.id, specimenId, note })).id;
    });
    for (const { day: on, kind, euros, note: said } of events)
      tale.at(on, () =>
        recordClaimEvent(tale.as(by), {
          claimId,
          kind,
          amount: euros === undefined ? null : { minor: euros * 100, currency: "EUR" },
          note: said,
        }),
      );
  }
}
