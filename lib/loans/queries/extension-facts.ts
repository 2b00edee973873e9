/** What decides on a longer loan, as if it were that long already. For whoever has authorised. */

import type { ExtensionFacts } from "#lib/loans/extension.ts";
import type { LoanCase } from "#lib/loans/queries/loan-case.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { stagesOf } from "#lib/shipments/queries.ts";
import { coverGaps, nailToNailStretches } from "#lib/suitability/cover-gaps.ts";
import { practiceFor } from "#lib/suitability/rules/case.ts";
import { sumOfCosts } from "#lib/suitability/rules/cover.ts";
import { crossesCustoms } from "#lib/suitability/rules/goods.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";
import type { DaysTaken } from "#lib/whereabouts/commands/set-line-days.ts";

/**
 * @param loanCase the case of the loan with its longer days
 * @param endsOn its return-by before
 * @param taken days of somebody else, where they are known already
 */
export async function extensionFactsOf(
  reader: Database | Transaction,
  loanCase: LoanCase,
  endsOn: DateText,
  taken: readonly Pick<DaysTaken, "accessionNumber" | "takenFrom">[],
): Promise<ExtensionFacts> {
  const { row, request, subjects, lines } = loanCase;
  const stages = await stagesOf(reader, row.id);
  const out = stages.find(({ direction }) => direction === "out") ?? null;
  const home = stages.find(({ direction }) => direction === "home") ?? null;
  const laterHome = home !== null && home.departsOn >= request.endsOn ? home : null;
  const costs = sumOfCosts(subjects);
  const stretches = nailToNailStretches({
    ...request,
    venueCountry: request.venue.countryCode,
    out: out && { departsOn: out.departsOn, arrivesOn: out.arrivesOn },
    home: laterHome && { departsOn: laterHome.departsOn, arrivesOn: laterHome.arrivesOn },
  });
  return {
    today: request.today,
    noticeDays: practiceFor(request).extensionNoticeDays,
    endsOn,
    newEndsOn: request.endsOn,
    leftOn: out?.departsOn ?? request.startsOn,
    crossesBorder: crossesCustoms(request),
    findings: judgeSuitability(request, subjects),
    numbers: new Map(lines.map((line) => [line.specimenId, line.accessionNumber])),
    taken,
    gaps: coverGaps(
      stretches,
      request.covers,
      costs.currency === null ? null : { minor: costs.minor, currency: costs.currency },
    ),
    homeDepartsOn: home?.departsOn ?? null,
  };
}
