/**
 * The days for which the lines of a loan keep their specimens, set anew: wider
 * where a stage leaves sooner or comes home later, narrower where it no longer
 * does. Days that are past stay as they were. Days that somebody else has are
 * left to them: what is kept ends where theirs begin, and the answer says so, for
 * who sets the days to refuse or to tell.
 */
import type { Work } from "#lib/people/command.ts";
import { addDays, type DateText, rangesOverlap, toDate, toDateText } from "#lib/platform/dates.ts";
import { lockSpecimens } from "#lib/whereabouts/commands/take-bookings.ts";
import { mergePeriods } from "#lib/whereabouts/free-periods.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

/** Days of somebody else among those that were asked for. */
export type DaysTaken = { accessionNumber: string; takenFrom: DateText; freeFrom: DateText };

/** How far ahead somebody else's days are looked at, to say from when a specimen is free again. */
const LOOK_AHEAD_DAYS = 3_650;

/** What may be kept of the wanted days around those that are kept now. */
function withoutOthers(wanted: Period, kept: Period, others: readonly Period[]): Period {
  const before = others.filter((other) => other.endsOn <= kept.startsOn).map((other) => other.endsOn);
  const after = others.filter((other) => other.startsOn >= kept.endsOn).map((other) => other.startsOn);
  return {
    startsOn: [wanted.startsOn, ...before].sort().at(-1) ?? wanted.startsOn,
    endsOn: [wanted.endsOn, ...after].sort()[0] ?? wanted.endsOn,
  };
}

/** Of days that begin in the past, those that were kept stay, and what was not kept cannot be. */
function fromToday(wanted: Period, kept: Period, today: DateText): Period {
  if (wanted.startsOn >= today) return wanted;
  return { ...wanted, startsOn: kept.startsOn < today ? kept.startsOn : today };
}

/** The live bookings of the lines, the line's own specimen beside what it takes along. */
async function keptByLine({ transaction }: Work, lineIds: readonly string[]) {
  const rows = await transaction.booking.findMany({
    where: { loanLineId: { in: [...lineIds] }, releasedAt: null },
    select: {
      loanLineId: true,
      specimenId: true,
      startsOn: true,
      endsOn: true,
      line: { select: { specimenId: true } },
    },
  });
  return rows.map(({ startsOn, endsOn, ...row }) => ({
    ...row,
    kept: { startsOn: toDateText(startsOn), endsOn: toDateText(endsOn) },
  }));
}

/** @returns for each line the first days that somebody else has among the wanted ones; none when all are kept */
export async function setLineDays(
  work: Work,
  lineIds: readonly string[],
  wanted: Period,
): Promise<DaysTaken[]> {
  const { transaction, now, today } = work;
  const numberOf = await lockSpecimens(
    work,
    (await keptByLine(work, lineIds)).map(({ specimenId }) => specimenId),
  );
  const rows = await keptByLine(work, lineIds);
  await transaction.booking.deleteMany({
    where: {
      strength: "hold",
      releasedAt: null,
      expiresAt: { lte: now },
      specimenId: { in: [...numberOf.keys()] },
      loanLineId: { notIn: [...lineIds] },
    },
  });
  const own = rows.filter(({ line, specimenId }) => line?.specimenId === specimenId);
  const busy = await busyPeriodsOf(
    transaction,
    own.map(({ specimenId }) => specimenId),
    [wanted.startsOn, ...own.map(({ kept }) => kept.startsOn)].sort()[0] ?? wanted.startsOn,
    addDays(wanted.endsOn, LOOK_AHEAD_DAYS),
  );
  const taken: DaysTaken[] = [];
  const linesByDays = new Map<string, { days: Period; lineIds: string[] }>();
  for (const { loanLineId, specimenId, kept } of own) {
    if (loanLineId === null) continue;
    const others = mergePeriods(
      (busy.get(specimenId) ?? []).filter(
        (period) => period.loanLineId === null || !lineIds.includes(period.loanLineId),
      ),
    );
    const asked = fromToday(wanted, kept, today);
    const theirs = others.find((other) => rangesOverlap(other, asked));
    if (theirs)
      taken.push({
        accessionNumber: numberOf.get(specimenId) ?? "",
        takenFrom: theirs.startsOn,
        freeFrom: theirs.endsOn,
      });
    const days = withoutOthers(asked, kept, others);
    const key = `${days.startsOn} ${days.endsOn}`;
    const group = linesByDays.get(key) ?? { days, lineIds: [] };
    group.lineIds.push(loanLineId);
    linesByDays.set(key, group);
  }
  for (const { days, lineIds: alike } of linesByDays.values())
    await transaction.booking.updateMany({
      where: { loanLineId: { in: alike }, releasedAt: null },
      data: { startsOn: toDate(days.startsOn), endsOn: toDate(days.endsOn) },
    });
  return taken;
}
