/**
 * Signs of harm on loans, gathered for all of them with a handful of reads. For
 * whoever has authorised.
 */
import { latestChecksOf } from "#lib/condition/queries.ts";
import { Finding, type Occasion } from "#lib/condition/schema.ts";
import { type CheckOfLine, type Harm, type HarmFacts, signsOfHarm, verdictsOfHarm } from "#lib/loans/harm.ts";
import type { CheckInVerdict } from "#lib/loans/inputs.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { programViewer } from "#lib/people/viewer.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";

type Reader = Database | Transaction;

/** The checks on these loans by loan and specimen, in the order in which they were recorded. */
async function checksOn(
  reader: Reader,
  loanIds: readonly string[],
): Promise<Map<string, Map<string, CheckOfLine[]>>> {
  const rows = await reader.conditionCheck.findMany({
    where: { loanId: { in: [...loanIds] } },
    include: { findings: { orderBy: { id: "asc" } } },
    orderBy: { sequence: "asc" },
  });
  const house = await reader.account.findMany({
    where: { id: { in: [...new Set(rows.map((row) => row.accountId))] }, institutionId: null },
    select: { id: true },
  });
  const inside = new Set([programViewer.accountId, ...house.map(({ id }) => id)]);
  const byLoan = new Map<string, Map<string, CheckOfLine[]>>();
  for (const { loanId, specimenId, occasion, checkedOn, recordedAt, accountId, findings } of rows) {
    if (loanId === null) continue;
    const ofLoan = byLoan.get(loanId) ?? new Map<string, CheckOfLine[]>();
    byLoan.set(loanId, ofLoan);
    const check: CheckOfLine = {
      loanId,
      occasion: occasion as Occasion,
      checkedOn: toDateText(checkedOn),
      recordedAt: recordedAt.toISOString(),
      byHouse: inside.has(accountId),
      findings: findings.map(({ extentMm, extentPercent, answer, markId, ...found }) =>
        Finding.parse({
          markId,
          term: found.term,
          place: found.place,
          severity: found.severity,
          activity: found.activity,
          note: found.note,
          ...(extentMm === null ? {} : { extentMm }),
          ...(extentPercent === null ? {} : { extentPercent }),
          ...(answer === "" ? {} : { answer }),
        }),
      ),
    };
    ofLoan.set(specimenId, [...(ofLoan.get(specimenId) ?? []), check]);
  }
  return byLoan;
}

const looked = { OR: [{ sealIntact: false }, { outsideDamage: { not: "" } }] };

/** By loan; a loan without a sign of harm has no entry. */
export async function harmOf(reader: Reader, loanIds: readonly string[]): Promise<Map<string, Harm[]>> {
  if (loanIds.length === 0) return new Map();
  const loans = await reader.loan.findMany({
    where: { id: { in: [...loanIds] } },
    select: {
      id: true,
      lines: {
        select: {
          specimenId: true,
          state: true,
          verdict: true,
          specimen: { select: { accessionNumber: true } },
        },
        orderBy: { specimen: { accessionNumber: "asc" } },
      },
      crates: {
        where: { events: { some: looked } },
        select: {
          code: true,
          contents: { select: { specimenId: true } },
          events: {
            where: looked,
            orderBy: { sequence: "asc" },
            select: { at: true, sealIntact: true, outsideDamage: true },
          },
        },
        orderBy: { code: "asc" },
      },
    },
  });
  const checks = await checksOn(reader, loanIds);
  const judged = loans.flatMap(({ lines }) =>
    lines.filter(({ verdict }) => verdictsOfHarm.includes(verdict as CheckInVerdict)),
  );
  const latest = await latestChecksOf(
    reader,
    judged.map(({ specimenId }) => specimenId),
  );
  const harm = loans.map((loan): [string, Harm[]] => {
    const facts: HarmFacts = {
      lines: loan.lines.map(({ specimenId, specimen, state, verdict }) => {
        const last = latest.get(specimenId);
        return {
          specimenId,
          accessionNumber: specimen.accessionNumber,
          state: state as LineState,
          verdict: verdict as CheckInVerdict | null,
          checkedAgain: last !== undefined && !(last.loanId === loan.id && last.occasion === "home"),
        };
      }),
      crates: loan.crates.map(({ code, contents, events }) => ({
        code,
        specimenIds: contents.map(({ specimenId }) => specimenId),
        events: events.map((event) => ({ ...event, at: event.at.toISOString() })),
      })),
      checks: checks.get(loan.id) ?? new Map(),
    };
    return [loan.id, signsOfHarm(facts)];
  });
  return new Map(harm.filter(([, signs]) => signs.length > 0));
}

/** Loans, closed ones too, with a specimen that came home to be treated or damaged. */
export async function loansJudgedGravely(reader: Reader): Promise<string[]> {
  const rows = await reader.loanLine.findMany({
    where: { verdict: { in: [...verdictsOfHarm] } },
    distinct: ["loanId"],
    select: { loanId: true },
  });
  return rows.map(({ loanId }) => loanId);
}
