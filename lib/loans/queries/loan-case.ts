/**
 * Everything that rules, gates and terms need to know of one loan, loaded with a
 * fixed number of statements whatever the loan holds. For commands and queries
 * that have already authorised: guarded facts are included.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import type { TermsSubject } from "#lib/agreements/terms.ts";
import { type CheckSheet, latestChecksOf } from "#lib/condition/queries.ts";
import type { CheckInVerdict } from "#lib/loans/inputs.ts";
import { isLive } from "#lib/loans/loan-state.ts";
import { borrowerRecordOf } from "#lib/loans/queries/borrower-record.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { type PastLoan, spentLxHours } from "#lib/loans/spent-light.ts";
import { conservatorWord, oversightWord, toCoverFacts, toRequest } from "#lib/loans/stored-request.ts";
import { awayStates, homeStates } from "#lib/loans/transitions.ts";
import { practiceOf } from "#lib/people/practice.ts";
import { centreSettings, venueFactsOf } from "#lib/people/queries.ts";
import type { CentreSettings, InstitutionInput } from "#lib/people/schema.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import {
  addDays,
  type DateText,
  daysBetween,
  rangesOverlap,
  toDate,
  toDateText,
} from "#lib/platform/dates.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";
import { type SpecimenFacts, sheetNumbersOf, specimenFactsOf } from "#lib/specimens/queries.ts";
import { bookedRange, busyRange, type Days } from "#lib/suitability/period.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import type { SetAside } from "#lib/suitability/rules/set-aside.ts";
import { nextFreeStart } from "#lib/whereabouts/free-periods.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";

type Reader = Database | Transaction;

const loanParts = {
  borrower: true,
  lines: {
    orderBy: { specimen: { accessionNumber: "asc" } },
    include: {
      specimen: {
        select: {
          accessionNumber: true,
          title: true,
          numberInSeries: true,
          series: { select: { code: true } },
        },
      },
    },
  },
  covers: { orderBy: { startsAt: "asc" } },
  decisions: { orderBy: { decidedAt: "asc" } },
  overrides: { orderBy: { at: "asc" } },
  stages: {
    select: { through: true, tariffCodes: { select: { countryCode: true, specimenId: true } } },
  },
} as const satisfies Prisma.LoanInclude;
export type LoanRow = Prisma.LoanGetPayload<{ include: typeof loanParts }>;

export type CaseLine = {
  id: string;
  specimenId: string;
  accessionNumber: string;
  title: string;
  state: LineState;
  stateSince: string;
  /** What the check at home came to; null until it is checked in. */
  checkIn: { verdict: CheckInVerdict; remark: string } | null;
  /** Of a sheet, its series and its number in it. */
  series: { code: string; number: number } | null;
};

export type CaseSubject = TermsSubject & { latestSheet: CheckSheet | null; facts: SpecimenFacts };

export type LoanCase = {
  row: LoanRow;
  centre: CentreSettings;
  lines: CaseLine[];
  request: RequestFacts;
  /** The specimens of lines that still count, in the order of the lines. */
  subjects: CaseSubject[];
};

/** What the rules take for the purpose of a slip that has none yet. */
const purposeUntilChosen: RequestFacts["purpose"] = "teaching";

async function requestFacts(
  reader: Reader,
  row: LoanRow,
  centre: CentreSettings,
  today: DateText,
): Promise<RequestFacts> {
  const {
    venueId,
    cover,
    title: _title,
    contactName: _name,
    contactEmail: _mail,
    contactPhone: _phone,
    note: _note,
    ...stated
  } = toRequest(row);
  return {
    ...stated,
    purpose: stated.purpose === "" ? purposeUntilChosen : stated.purpose,
    daysBefore: row.daysBefore,
    daysAfter: row.daysAfter,
    today,
    lenderCountry: centre.countryCode,
    practice: practiceOf(centre.practice),
    borrower: {
      id: row.borrower.id,
      standing: row.borrower.standing as InstitutionInput["standing"],
      verified: row.borrower.verifiedOn !== null,
      kind: row.borrower.kind as InstitutionInput["kind"],
      town: row.borrower.city,
      record: await borrowerRecordOf(reader, { borrowerId: row.borrower.id, loanId: row.id }, today),
    },
    requestedOn: row.submittedAt === null ? today : toDateText(row.submittedAt),
    venue: await venueFactsOf(reader, venueId),
    statedCover: cover,
    covers: row.covers.map(toCoverFacts),
    through: [...new Set(row.stages.flatMap((stage) => stage.through))].sort(),
    oversight: oversightWord(row.decisions, row.submittedAt),
    conservator: conservatorWord(row.decisions, row.submittedAt),
    setAside: row.overrides.map(({ specimenId, rule, fact, office, decidedBy, grounds, evidence, at }) => ({
      specimenId,
      rule,
      fact,
      office: office as SetAside["office"],
      by: decidedBy,
      grounds,
      evidence,
      on: toDateText(at),
    })),
  };
}

/** Somebody else's bookings on the days of this loan, by specimen. */
async function takenDays(reader: Reader, row: LoanRow, specimenIds: string[], request: RequestFacts) {
  const busy = busyRange(request);
  const asked: Days = busy.endsOn > request.today ? bookedRange(request, request.today) : busy;
  const ownLines = new Set(row.lines.map((line) => line.id));
  // Looking years ahead, so that "free from" is true of all the days asked for.
  const periods = await busyPeriodsOf(reader, specimenIds, asked.startsOn, addDays(asked.endsOn, 3_650));
  return new Map(
    specimenIds.map((id) => {
      const others = (periods.get(id) ?? []).filter(
        ({ loanLineId }) => loanLineId === null || !ownLines.has(loanLineId),
      );
      const meets = others.some((period) => rangesOverlap(period, asked));
      return [id, meets ? { freeFrom: nextFreeStart(others, asked) } : null];
    }),
  );
}

const shownStates: LineState[] = [
  "resting at venue",
  "at venue",
  "travelling home",
  "resting at home",
  "checked in",
  "closed",
  "missing",
];

/** Other loans of the same specimens: those they are not home from, and those of the past year. */
async function otherLoans(reader: Reader, loanId: string, specimenIds: string[], today: DateText) {
  const lines = await reader.loanLine.findMany({
    where: {
      specimenId: { in: specimenIds },
      loanId: { not: loanId },
      state: { in: [...new Set([...shownStates, ...awayStates])] },
      OR: [{ state: { in: [...awayStates] } }, { loan: { endsOn: { gt: toDate(addDays(today, -365)) } } }],
    },
    select: {
      specimenId: true,
      state: true,
      loan: {
        select: {
          number: true,
          startsOn: true,
          endsOn: true,
          closedAt: true,
          venue: { select: { illuminanceLx: true, hoursOpenPerDay: true, daysOpenPerWeek: true } },
        },
      },
    },
  });
  const elsewhere = new Map<string, { loanNumber: string; missing: boolean; dueOn: DateText }>();
  const past = new Map<string, PastLoan[]>();
  const last = new Map<string, NonNullable<SpecimenCase["lastLoan"]>>();
  for (const { specimenId, state, loan } of lines) {
    const dueOn = toDateText(loan.endsOn);
    if ((awayStates as readonly string[]).includes(state)) {
      const before = elsewhere.get(specimenId);
      const missing = state === "missing";
      if (!before || (missing && !before.missing))
        elsewhere.set(specimenId, { loanNumber: loan.number, missing, dueOn });
    }
    if ((shownStates as readonly string[]).includes(state)) {
      const closedOn = loan.closedAt === null ? dueOn : toDateText(loan.closedAt);
      const endsOn = [closedOn, dueOn].sort()[0] ?? dueOn;
      const startedOn = toDateText(loan.startsOn);
      const endedOn = endsOn < today ? endsOn : today;
      if (
        (homeStates as readonly string[]).includes(state) &&
        endedOn > (last.get(specimenId)?.endedOn ?? "")
      )
        last.set(specimenId, { endedOn, days: Math.max(0, daysBetween(startedOn, endedOn)) });
      past.set(specimenId, [...(past.get(specimenId) ?? []), { ...loan.venue, startsOn: startedOn, endsOn }]);
    }
  }
  return { elsewhere, past, last };
}

async function subjectsOf(
  reader: Reader,
  row: LoanRow,
  lines: readonly CaseLine[],
  request: RequestFacts,
): Promise<CaseSubject[]> {
  const ids = lines.filter((line) => isLive(line.state)).map((line) => line.specimenId);
  if (ids.length === 0) return [];
  const specimens = await specimenFactsOf(reader, ids);
  const provenance = await provenanceFactsOf(reader, ids);
  const checks = await latestChecksOf(reader, ids);
  const taken = await takenDays(reader, row, ids, request);
  const { elsewhere, past, last } = await otherLoans(reader, row.id, ids, request.today);
  const numbersHeld = await sheetNumbersOf(
    reader,
    [...specimens.values()].flatMap(({ seriesId }) => seriesId ?? []),
  );
  return ids.flatMap((id) => {
    const facts = specimens.get(id);
    const known = provenance.get(id);
    if (!facts || !known) return [];
    const sheet = checks.get(id) ?? null;
    const { seriesCode, numberInSeries } = facts;
    return [
      {
        specimen: facts,
        facts,
        provenance: known,
        latestCheck: sheet && {
          findings: sheet.findings,
          verdict: sheet.verdict,
          checkedOn: sheet.checkedOn,
        },
        latestSheet: sheet,
        taken: taken.get(id) ?? null,
        elsewhere: elsewhere.get(id) ?? null,
        lastLoan: last.get(id) ?? null,
        numbersOfSeries: facts.seriesId === null ? null : (numbersHeld.get(facts.seriesId) ?? []),
        tariffCountries: row.stages.flatMap(({ tariffCodes }) =>
          tariffCodes.filter(({ specimenId }) => specimenId === id).map(({ countryCode }) => countryCode),
        ),
        spentLxHours: spentLxHours(past.get(id) ?? [], request.today),
        latinTitle: facts.latinTitle,
        series:
          seriesCode === null || numberInSeries === null
            ? null
            : { code: seriesCode, number: numberInSeries },
        condition: sheet && { checkedOn: sheet.checkedOn, grade: sheet.grade },
      },
    ];
  });
}

/**
 * @param endsOn as if the loan ran until this day
 * @throws {Refusal} "not-found"
 */
export async function loanCaseOf(
  reader: Reader,
  loanId: string,
  today: DateText,
  endsOn?: DateText,
): Promise<LoanCase> {
  const kept = await reader.loan.findUnique({ where: { id: loanId }, include: loanParts });
  if (!kept) throw notFound("loan");
  const row = endsOn === undefined ? kept : { ...kept, endsOn: toDate(endsOn) };
  const centre = await centreSettings(reader);
  const lines = row.lines.map(({ id, specimenId, state, stateSince, verdict, remark, specimen }) => ({
    id,
    specimenId,
    accessionNumber: specimen.accessionNumber,
    title: specimen.title,
    state: state as LineState,
    stateSince: stateSince.toISOString(),
    checkIn: verdict === null ? null : { verdict: verdict as CheckInVerdict, remark },
    series:
      specimen.series === null || specimen.numberInSeries === null
        ? null
        : { code: specimen.series.code, number: specimen.numberInSeries },
  }));
  const request = await requestFacts(reader, row, centre, today);
  return { row, centre, lines, request, subjects: await subjectsOf(reader, row, lines, request) };
}
