/**
 * Loans as a page by key, the newest first, and the slip that a borrower is
 * gathering. A borrower sees the loans of its own institution; a loan's state is
 * computed from its lines for each row.
 */
import { z } from "zod";
import type { Prisma } from "#.generated/prisma/client.ts";
import { loanState } from "#lib/loans/loan-state.ts";
import { type LineState, type LoanState, lineStates } from "#lib/loans/schema.ts";
import { awayStates, endedStates } from "#lib/loans/transitions.ts";
import { requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";

/** Where loans stand, coarsely: a loan may be in two phases when its lines are. */
export const loanPhases = ["slips", "requests", "accepted", "away", "home", "ended"] as const;
export type LoanPhase = (typeof loanPhases)[number];

export const LoanFilter = z.object({
  phase: z.enum(loanPhases).nullable().default(null),
  overdue: z.boolean().default(false),
  borrowerId: Id.nullable().default(null),
  /** A part of the number, the title or the borrower's name. */
  text: z.string().trim().max(120).default(""),
});
export const LoanPage = z.object({
  after: Id.nullable().default(null),
  limit: z.number().int().min(1).max(200).default(40),
});

export type LoanListRow = {
  id: string;
  number: string;
  title: string;
  state: LoanState;
  borrower: string;
  venue: string;
  countryCode: string;
  startsOn: DateText;
  /** Return-by. */
  endsOn: DateText;
  specimens: number;
  missing: number;
  isOverdue: boolean;
};
export type LoanList = { rows: LoanListRow[]; next: string | null };

const liveStates = lineStates.filter((state) => !endedStates.includes(state));
const some = (...states: LineState[]): Prisma.LoanWhereInput => ({
  lines: { some: { state: { in: states } } },
});
const away = some(...awayStates);

const ofPhase: Record<LoanPhase, Prisma.LoanWhereInput> = {
  slips: { closedAt: null, lines: { every: { state: "noted" } } },
  requests: some("requested"),
  accepted: some("accepted", "packed"),
  away,
  home: some("resting at home", "checked in"),
  ended: { closedAt: { not: null }, lines: { none: { state: { in: liveStates } } } },
};

/** Whose loans these are. @throws {Refusal} "forbidden" for who may see none */
function ownLoans(viewer: Viewer): Prisma.LoanWhereInput {
  if (!isBorrower(viewer)) {
    requireSight(viewer, "allLoans");
    return {};
  }
  return viewer.institutionId === null ? { id: { in: [] } } : { borrowerId: viewer.institutionId };
}

const rowParts = {
  borrower: { select: { name: true } },
  venue: { select: { name: true, countryCode: true } },
  lines: { select: { state: true } },
  agreements: {
    orderBy: { version: "desc" },
    take: 1,
    select: { _count: { select: { signatures: true } } },
  },
  _count: { select: { crates: true } },
} as const satisfies Prisma.LoanInclude;

function toRow(row: Prisma.LoanGetPayload<{ include: typeof rowParts }>, day: DateText): LoanListRow {
  const states = row.lines.map((line) => line.state as LineState);
  const endsOn = toDateText(row.endsOn);
  const isAway = states.some((state) => awayStates.includes(state));
  return {
    id: row.id,
    number: row.number,
    title: row.title,
    state: loanState({
      lines: states,
      signedByBoth: row.agreements[0]?._count.signatures === 2,
      hasCrates: row._count.crates > 0,
      isEnded: row.closedAt !== null,
    }),
    borrower: row.borrower.name,
    venue: row.venue.name,
    countryCode: row.venue.countryCode,
    startsOn: toDateText(row.startsOn),
    endsOn,
    specimens: states.filter((state) => !["declined", "withdrawn"].includes(state)).length,
    missing: states.filter((state) => state === "missing").length,
    isOverdue: isAway && endsOn <= day,
  };
}

export async function listLoans(
  viewer: Viewer,
  filter: z.input<typeof LoanFilter> = {},
  page: z.input<typeof LoanPage> = {},
): Promise<LoanList> {
  const own = ownLoans(viewer);
  const { phase, overdue, borrowerId, text } = parseInput(LoanFilter, filter);
  const { after, limit } = parseInput(LoanPage, page);
  const day = today();
  // What stands for any letter in the database's pattern stands for itself here.
  const contains = { contains: text.replace(/[\\%_]/g, "\\$&"), mode: "insensitive" } as const;
  const rows = await database().loan.findMany({
    where: {
      AND: [
        own,
        phase === null ? {} : ofPhase[phase],
        overdue ? { ...away, endsOn: { lte: toDate(day) } } : {},
        borrowerId === null ? {} : { borrowerId },
        text === ""
          ? {}
          : { OR: [{ number: contains }, { title: contains }, { borrower: { name: contains } }] },
        after === null ? {} : { id: { lt: after } },
      ],
    },
    include: rowParts,
    orderBy: { id: "desc" },
    take: limit + 1,
  });
  const shown = rows.slice(0, limit).map((row) => toRow(row, day));
  return { rows: shown, next: rows.length > limit ? (shown.at(-1)?.id ?? null) : null };
}

export type Slip = {
  id: string;
  number: string;
  title: string;
  startsOn: DateText;
  endsOn: DateText;
  specimens: { id: string; accessionNumber: string; title: string }[];
};

/** The slip that this person is gathering: the newest of their own that was not submitted. */
export async function findSlip(viewer: Viewer): Promise<Slip | null> {
  const row = await database().loan.findFirst({
    where: { AND: [ownLoans(viewer), ofPhase.slips, { createdById: viewer.accountId, submittedAt: null }] },
    include: {
      lines: {
        select: { specimen: { select: { id: true, accessionNumber: true, title: true } } },
        orderBy: { specimen: { accessionNumber: "asc" } },
      },
    },
    orderBy: { id: "desc" },
  });
  if (!row) return null;
  return {
    id: row.id,
    number: row.number,
    title: row.title,
    startsOn: toDateText(row.startsOn),
    endsOn: toDateText(row.endsOn),
    specimens: row.lines.map((line) => line.specimen),
  };
}
