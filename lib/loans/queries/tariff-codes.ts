/** The tariff codes of one loan: for each stage that touches several countries, what is decided and what is open. */
import { isLive } from "#lib/loans/loan-state.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { tariffCountries } from "#lib/loans/tariff.ts";
import { centreSettings } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import type { Direction } from "#lib/shipments/schema.ts";

type Named = { id: string; accessionNumber: string; human: boolean };

export type TariffDecision = {
  countryCode: string;
  code: string;
  decidedBy: string;
  decidedOn: DateText;
  note: string;
  specimens: Named[];
};

export type TariffSheet = {
  stageId: string;
  direction: Direction;
  countries: string[];
  specimens: Named[];
  decisions: TariffDecision[];
  /** For each country the specimens without a code. */
  open: { countryCode: string; specimens: Named[] }[];
};

/** Nothing for stages that stay in one country. @throws {Refusal} "not-found" for what is not theirs */
export async function tariffCodesOf(viewer: Viewer, loanId: string): Promise<TariffSheet[]> {
  await requireLoanFile(viewer, loanId);
  const loan = await database().loan.findUniqueOrThrow({
    where: { id: loanId },
    select: {
      venue: { select: { countryCode: true } },
      lines: {
        select: {
          state: true,
          specimen: { select: { id: true, accessionNumber: true, human: true } },
        },
        orderBy: { specimen: { accessionNumber: "asc" } },
      },
      stages: {
        select: {
          id: true,
          direction: true,
          through: true,
          tariffCodes: { orderBy: [{ countryCode: "asc" }, { code: "asc" }] },
        },
        orderBy: { direction: "desc" },
      },
    },
  });
  const { countryCode: house } = await centreSettings();
  const specimens = loan.lines
    .filter(({ state }) => isLive(state as LineState) || state === "closed")
    .map((line) => line.specimen);
  return loan.stages.flatMap(({ id, direction, through, tariffCodes }): TariffSheet[] => {
    const countries = tariffCountries([house, loan.venue.countryCode], through);
    if (countries.length === 0) return [];
    const decisions = new Map<string, TariffDecision>();
    for (const { countryCode, code, decidedBy, decidedOn, note, specimenId } of tariffCodes) {
      const specimen = specimens.find((one) => one.id === specimenId);
      if (!specimen) continue;
      const on = toDateText(decidedOn);
      const key = JSON.stringify([countryCode, code, decidedBy, on, note]);
      const decision = decisions.get(key) ?? {
        countryCode,
        code,
        decidedBy,
        decidedOn: on,
        note,
        specimens: [],
      };
      decision.specimens.push(specimen);
      decisions.set(key, decision);
    }
    const decided = new Set(tariffCodes.map(({ countryCode, specimenId }) => `${countryCode} ${specimenId}`));
    return [
      {
        stageId: id,
        direction: direction as Direction,
        countries,
        specimens,
        decisions: [...decisions.values()],
        open: countries
          .map((countryCode) => ({
            countryCode,
            specimens: specimens.filter((one) => !decided.has(`${countryCode} ${one.id}`)),
          }))
          .filter((country) => country.specimens.length > 0),
      },
    ];
  });
}

/** Keys of the decisions of one loan, as the audit knows them; for who may read its file. */
export async function listTariffKeys(viewer: Viewer, loanId: string): Promise<string[]> {
  await requireLoanFile(viewer, loanId);
  const rows = await database().tariffCode.findMany({
    where: { stage: { loanId } },
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}
