/**
 * One loan as its papers are written from it, for a command or query that has
 * authorised. A fixed number of statements, whatever the loan holds; donors and
 * permits are not read. Which paper names a cost is for the paper to say.
 */
import { type CheckSheet, checksOfLoan, latestChecksOf } from "#lib/condition/queries.ts";
import { readCosting } from "#lib/costing/frozen.ts";
import { costingKinds } from "#lib/costing/schema.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import { isLive, loanState } from "#lib/loans/loan-state.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type {
  CaseCheck,
  CaseCosting,
  CaseCrate,
  CaseGoods,
  CaseHandover,
  CaseSpecimen,
  CaseTariff,
  PaperCase,
} from "#lib/papers/paper-case.ts";
import { emergencyLine } from "#lib/people/emergency.ts";
import { centreSettings } from "#lib/people/queries.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { type CrateSheet, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import { drawingRequestOf } from "#lib/specimens/drawing/request.ts";
import { drawnFactsOf } from "#lib/specimens/queries/drawn-facts.ts";
import { type SpecimenFacts, specimenFactsOf } from "#lib/specimens/queries.ts";
import { CratePlan } from "#lib/transport/crate-plan.ts";

type Reader = Database | Transaction;

/** Standard acceleration of free fall, CGPM 1901. */
const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

function toCaseCrate(sheet: CrateSheet): CaseCrate {
  const { plan } = sheet.plan as { plan: unknown };
  const known = CratePlan.pick({
    handling: true,
    orientation: true,
    innerCaseWallMm: true,
    cushion: true,
    crate: true,
    absorbentMl: true,
  }).parse(plan);
  const tenths = (massKg: number) => Math.round(massKg * 10) / 10;
  return {
    id: sheet.id,
    code: sheet.code,
    kind: sheet.kind,
    outer: {
      lengthMm: sheet.outerLengthMm,
      widthMm: sheet.outerWidthMm,
      heightMm: sheet.outerHeightMm,
    },
    grossMassKg: tenths(sheet.grossMassKg),
    contentsKg: tenths(known.crate.partsKg.contents),
    innerCaseWallMm: known.innerCaseWallMm,
    cushionMm: known.cushion.thicknessMm,
    absorbentMl: known.absorbentMl,
    centreOfGravityHeightMm: known.crate.centreOfGravityHeightMm,
    lidLoadKg: (known.crate.lidLoadKn * 1_000) / STANDARD_GRAVITY_M_PER_S2,
    handling: known.handling.mode,
    orientation: known.orientation,
    sealNumber: sheet.sealNumber,
    contents: sheet.contents.map(({ specimenId }) => specimenId),
  };
}

/** How the chain of custody names the hand-overs of each way. */
const endingsOf: Readonly<Record<Direction, readonly string[]>> = {
  out: [", going out", ", received"],
  home: [", going home", ", back home", ", found"],
};

function directionOf(reason: string): Direction | null {
  if (endingsOf.out.some((ending) => reason.endsWith(ending))) return "out";
  return endingsOf.home.some((ending) => reason.endsWith(ending)) ? "home" : null;
}

async function handoversOf(reader: Reader, loanId: string): Promise<CaseHandover[]> {
  const rows = await reader.custodyEvent.findMany({
    where: { loanId },
    include: { specimen: { select: { accessionNumber: true } } },
    orderBy: [{ handedOverAt: "asc" }, { sequence: "asc" }],
  });
  return rows.flatMap(({ reason, handedOverAt, specimen, fromParty, toParty, releasedBy, receivedBy }) => {
    const direction = directionOf(reason);
    if (direction === null) return [];
    return [
      {
        direction,
        at: handedOverAt.toISOString(),
        fromParty,
        toParty,
        releasedBy,
        receivedBy,
        accessionNumber: specimen.accessionNumber,
      },
    ];
  });
}

function toGoods(facts: SpecimenFacts): CaseGoods {
  const { human, scientificName, preparation, fluidName, hazards, replacementCost } = facts;
  return {
    human,
    scientificName,
    preparation,
    fluidName,
    hazards: hazards.map(({ substance }) => substance),
    massKg: facts.mountedMassKg ?? facts.massKg,
    originCountry: facts.legal.originCountry,
    cost: replacementCost && {
      minor: replacementCost.minor,
      currency: replacementCost.currency,
      basis: replacementCost.basis,
      statedOn: replacementCost.statedOn,
    },
  };
}

function toCheck({ occasion, checkedOn, checkedBy, grade, findings }: CheckSheet): CaseCheck {
  return {
    occasion,
    checkedOn,
    checkedBy,
    grade,
    findings: findings.map(({ term, place, extentMm, extentPercent, severity, activity, note }) => ({
      term,
      place,
      extentMm: extentMm ?? null,
      extentPercent: extentPercent ?? null,
      severity,
      activity,
      note,
    })),
  };
}

const gradeAt = (checks: readonly CheckSheet[], occasion: CheckSheet["occasion"]) => {
  const check = checks.findLast((one) => one.occasion === occasion);
  return check ? { checkedOn: check.checkedOn, grade: check.grade } : null;
};

async function tariffsOf(reader: Reader, loanId: string): Promise<CaseTariff[]> {
  const rows = await reader.tariffCode.findMany({
    where: { stage: { loanId } },
    orderBy: [{ stageId: "asc" }, { countryCode: "asc" }, { specimen: { accessionNumber: "asc" } }],
  });
  return rows.map(({ id: _id, decidedOn, ...row }) => ({ ...row, decidedOn: toDateText(decidedOn) }));
}

async function costingsOf(reader: Reader, loanId: string): Promise<CaseCosting[]> {
  const rows = await reader.costing.findMany({
    where: { loanId },
    orderBy: { version: "desc" },
    distinct: ["kind"],
    select: { kind: true, content: true, sha256: true },
  });
  return costingKinds.flatMap((kind) =>
    rows
      .filter((row) => row.kind === kind)
      .map(({ content, sha256 }) => ({ content: readCosting(content), sha256 })),
  );
}

type CaseLine = { specimenId: string; state: LineState; verdict: string | null; remark: string };

async function specimensOf(
  reader: Reader,
  loanId: string,
  lines: readonly CaseLine[],
): Promise<CaseSpecimen[]> {
  const ids = lines.map(({ specimenId }) => specimenId);
  const facts = await specimenFactsOf(reader, ids);
  const drawn = await drawnFactsOf(reader, ids);
  const checks = await latestChecksOf(reader, ids);
  const pictures = new Map(
    (
      await reader.specimen.findMany({
        where: { id: { in: ids }, human: false, pictureId: { not: null } },
        select: { id: true, pictureId: true },
      })
    ).map(({ id, pictureId }) => [id, pictureId]),
  );
  const onLoan = await checksOfLoan(reader, loanId);
  const lineOf = new Map(lines.map((line) => [line.specimenId, line]));
  return [...facts.values()].map((one) => {
    const check = checks.get(one.id);
    const { state, verdict, remark } = lineOf.get(one.id) ?? {
      state: "withdrawn" as const,
      verdict: null,
      remark: "",
    };
    const own = onLoan.get(one.id) ?? [];
    const { low, high } = limitsOfSpecimen(one).transitTemperatureC.alarm;
    return {
      id: one.id,
      accessionNumber: one.accessionNumber,
      title: one.title,
      latinTitle: one.latinTitle,
      kind: one.kind,
      components: one.components.map(({ name, count }) => ({ name, count })),
      condition: check ? { checkedOn: check.checkedOn, grade: check.grade } : null,
      isLive: isLive(state) || state === "closed",
      drawing: drawingRequestOf({
        ...one,
        shown: drawn.get(one.id)?.shown ?? [],
        sheetPlace: drawn.get(one.id)?.sheetPlace ?? null,
      }),
      pictureId: pictures.get(one.id) ?? null,
      transitC: { low, high },
      goods: toGoods(one),
      check: check ? toCheck(check) : null,
      ending: { state, verdict, remark, out: gradeAt(own, "out"), home: gradeAt(own, "home") },
    };
  });
}

/** @throws {Refusal} "not-found" */
export async function paperCaseOf(reader: Reader, loanId: string): Promise<PaperCase> {
  const row = await reader.loan.findUnique({
    where: { id: loanId },
    include: {
      borrower: true,
      venue: { include: { institution: true } },
      lines: { select: { specimenId: true, state: true, verdict: true, remark: true } },
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        select: { _count: { select: { signatures: true } } },
      },
    },
  });
  if (!row) throw notFound("loan");
  const centre = await centreSettings(reader);
  const lines = row.lines.map((line): CaseLine => ({ ...line, state: line.state as LineState }));
  const crates = await cratesOf(reader, loanId);
  const { venue } = row;
  return {
    loan: {
      number: row.number,
      title: row.title,
      state: loanState({
        lines: lines.map(({ state }) => state),
        signedByBoth: row.agreements[0]?._count.signatures === 2,
        hasCrates: crates.length > 0,
        isEnded: row.closedAt !== null,
      }),
      purpose: row.purpose,
      startsOn: toDateText(row.startsOn),
      returnBy: toDateText(row.endsOn),
      closedOn: row.closedAt === null ? null : toDateText(row.closedAt),
      contactName: row.contactName,
    },
    house: {
      organisation: centre.name,
      place: "",
      address: [centre.address, centre.city].join(", "),
      countryCode: centre.countryCode,
      phone: centre.phone,
    },
    emergency: emergencyLine(centre),
    venue: {
      organisation: venue.institution.name,
      place: venue.name,
      address: venue.address,
      countryCode: venue.countryCode,
      phone: row.contactPhone || venue.institution.phone,
    },
    stages: (await stagesOf(reader, loanId)).map(
      ({ id, direction, carrier, vehicle, through, departsOn, arrivesOn }) => ({
        id,
        direction,
        carrier,
        vehicle,
        through,
        departsOn,
        arrivesOn,
      }),
    ),
    crates: crates.map(toCaseCrate),
    specimens: await specimensOf(reader, loanId, lines),
    handovers: await handoversOf(reader, loanId),
    tariffs: await tariffsOf(reader, loanId),
    costings: await costingsOf(reader, loanId),
  };
}
