/**
 * Reads of condition checks. The latest check is the one with the latest day, and
 * among those of one day the one recorded last. A borrower sees the checks of its
 * own loans only.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { checkBeside } from "#lib/condition/beside.ts";
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import type { Grade } from "#lib/condition/grade.ts";
import { Finding, type Occasion, type Verdict } from "#lib/condition/schema.ts";
import { requireSight } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

type Reader = Database | Transaction;

export type CheckSheet = {
  id: string;
  specimenId: string;
  loanId: string | null;
  occasion: Occasion;
  checkedOn: DateText;
  recordedAt: string;
  checkedBy: string;
  witness: string | null;
  verdict: Verdict;
  grounds: string;
  grade: Grade;
  findings: Finding[];
};

type CheckRow = Prisma.ConditionCheckGetPayload<{ include: { findings: true } }>;

function toFinding(row: CheckRow["findings"][number]): Finding {
  const { x, y, extentMm, extentPercent, answer } = row;
  return Finding.parse({
    markId: row.markId,
    term: row.term,
    place: row.place,
    ...(x === null || y === null ? {} : { picturePoint: { x, y } }),
    ...(extentMm === null ? {} : { extentMm }),
    ...(extentPercent === null ? {} : { extentPercent }),
    severity: row.severity,
    activity: row.activity,
    ...(answer === "" ? {} : { answer }),
    note: row.note,
  });
}

function toSheet(row: CheckRow): CheckSheet {
  const findings = row.findings.map(toFinding);
  return {
    id: row.id,
    specimenId: row.specimenId,
    loanId: row.loanId,
    occasion: row.occasion as Occasion,
    checkedOn: toDateText(row.checkedOn),
    recordedAt: row.recordedAt.toISOString(),
    checkedBy: row.checkedBy,
    witness: row.witness,
    verdict: { fitToShow: row.fitToShow, fitToHandle: row.fitToHandle, fitToTravel: row.fitToTravel },
    grounds: row.grounds,
    grade: row.grade as Grade,
    findings,
  };
}

const withFindings = { findings: { orderBy: { id: "asc" } } } as const satisfies Prisma.ConditionCheckInclude;

/** What of the checks is the viewer's to see. */
function ownChecks(viewer: Viewer): Prisma.ConditionCheckWhereInput {
  requireSight(viewer, "conditionRecords");
  if (!isBorrower(viewer)) return {};
  return viewer.institutionId === null ? { id: { in: [] } } : { loan: { borrowerId: viewer.institutionId } };
}

/** The checks of a specimen, newest first. */
export async function checksOf(viewer: Viewer, specimenId: string): Promise<CheckSheet[]> {
  const own = ownChecks(viewer);
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  const rows = await database().conditionCheck.findMany({
    where: { specimenId, ...own },
    include: withFindings,
    orderBy: [{ checkedOn: "desc" }, { sequence: "desc" }],
    take: 500,
  });
  return rows.map(toSheet);
}

export type ShownCheck = {
  check: CheckSheet;
  /** The one that it was made beside; null for the first. */
  beside: CheckSheet | null;
  comparison: CheckComparison | null;
};

/** One check and the one that it was made beside. @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function getCheck(viewer: Viewer, checkId: string): Promise<ShownCheck> {
  const own = ownChecks(viewer);
  if (!Id.safeParse(checkId).success) throw notFound("check");
  const row = await database().conditionCheck.findFirst({
    where: { id: checkId, ...own },
    include: withFindings,
  });
  if (row === null) throw notFound("check");
  const check = toSheet(row);
  const checks = await checksOf(viewer, check.specimenId);
  const beside = checkBeside(check, checks.slice(checks.findIndex(({ id }) => id === check.id) + 1));
  return { check, beside, comparison: beside && compareChecks(beside, check) };
}

/** The latest check of each specimen, for a command or a query that has authorised. */
export async function latestChecksOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, CheckSheet>> {
  if (specimenIds.length === 0) return new Map();
  const latest = await reader.$queryRaw<{ id: string }[]>`
    SELECT DISTINCT ON (specimen_id) id::text AS id FROM condition_check
    WHERE specimen_id = ANY(${[...specimenIds]}::uuid[])
    ORDER BY specimen_id, checked_on DESC, sequence DESC`;
  const rows = await reader.conditionCheck.findMany({
    where: { id: { in: latest.map(({ id }) => id) } },
    include: withFindings,
  });
  return new Map(rows.map((row) => [row.specimenId, toSheet(row)]));
}

/** The checks of one loan by specimen, oldest first, for whoever has authorised. */
export async function checksOfLoan(reader: Reader, loanId: string): Promise<Map<string, CheckSheet[]>> {
  const rows = await reader.conditionCheck.findMany({
    where: { loanId },
    include: withFindings,
    orderBy: [{ checkedOn: "asc" }, { sequence: "asc" }],
  });
  const sheets = new Map<string, CheckSheet[]>();
  for (const row of rows) sheets.set(row.specimenId, [...(sheets.get(row.specimenId) ?? []), toSheet(row)]);
  return sheets;
}
