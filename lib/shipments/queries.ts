/**
 * Reads of crates and stages. A crate's state is derived from its events. For
 * whoever has authorised, or, by the link's token, for a carrier without an
 * account, who sees crates and addresses and nothing of donors, titles or costs.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { now } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { sha256Hex } from "#lib/platform/hash.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { crateState, notBeforeOf, sealHolds } from "#lib/shipments/crate-state.ts";
import type { CrateEventKind, CrateState, Direction } from "#lib/shipments/schema.ts";

type Reader = Database | Transaction;

export type CrateHappening = {
  id: string;
  kind: CrateEventKind;
  at: string;
  by: string;
  stageId: string | null;
  sealNumber: string | null;
  sealIntact: boolean | null;
  outsideDamage: string;
  notBefore: string | null;
  counts: { specimenId: string; present: boolean; remark: string }[];
};

export type CrateSheet = {
  id: string;
  loanId: string;
  code: string;
  kind: string;
  outerLengthMm: number;
  outerWidthMm: number;
  outerHeightMm: number;
  grossMassKg: number;
  /** The question and the plan as they were when the crate was planned. */
  plan: unknown;
  state: CrateState;
  notBefore: string | null;
  sealNumber: string | null;
  sealHolds: boolean | null;
  contents: { specimenId: string; accessionNumber: string; title: string; position: number }[];
  events: CrateHappening[];
};

const crateParts = {
  contents: {
    orderBy: { position: "asc" },
    include: { specimen: { select: { accessionNumber: true, title: true } } },
  },
  events: { orderBy: { sequence: "asc" }, include: { counts: true } },
} as const satisfies Prisma.CrateInclude;
type CrateRow = Prisma.CrateGetPayload<{ include: typeof crateParts }>;

function toCrate(row: CrateRow): CrateSheet {
  const { contents, events, ...crate } = row;
  const happened = events.map(
    ({ crateId: _crate, sequence: _sequence, kind, at, notBefore, counts, ...event }): CrateHappening => ({
      ...event,
      kind: kind as CrateEventKind,
      at: at.toISOString(),
      notBefore: notBefore?.toISOString() ?? null,
      counts: counts.map(({ eventId: _event, ...count }) => count),
    }),
  );
  return {
    ...crate,
    state: crateState(happened),
    notBefore: notBeforeOf(happened),
    sealNumber: happened.findLast((event) => event.kind === "sealed")?.sealNumber ?? null,
    sealHolds: sealHolds(happened),
    contents: contents.map(({ specimen, specimenId, position }) => ({ specimenId, position, ...specimen })),
    events: happened,
  };
}

/** The crates of a loan by their code. */
export async function cratesOf(reader: Reader, loanId: string): Promise<CrateSheet[]> {
  const rows = await reader.crate.findMany({
    where: { loanId },
    include: crateParts,
    orderBy: { code: "asc" },
  });
  return rows.map(toCrate).sort((a, b) => a.code.localeCompare(b.code, "en", { numeric: true }));
}

/** One crate. @throws {Refusal} "not-found" */
export async function crateOf(reader: Reader, crateId: string): Promise<CrateSheet> {
  const row = await reader.crate.findUnique({ where: { id: crateId }, include: crateParts });
  if (!row) throw notFound("crate");
  return toCrate(row);
}

export type StageSheet = {
  id: string;
  loanId: string;
  direction: Direction;
  carrier: string;
  carrierEmail: string;
  vehicle: string;
  /** Countries between the two ends. */
  through: string[];
  departsOn: DateText;
  arrivesOn: DateText;
  linkExpiresAt: string | null;
};

function toStage(row: Prisma.StageGetPayload<object>): StageSheet {
  const { linkHash: _hash, linkExpiresAt, direction, departsOn, arrivesOn, ...stage } = row;
  return {
    ...stage,
    direction: direction as Direction,
    departsOn: toDateText(departsOn),
    arrivesOn: toDateText(arrivesOn),
    linkExpiresAt: linkExpiresAt?.toISOString() ?? null,
  };
}

/** The stages of a loan, the way out first. */
export async function stagesOf(reader: Reader, loanId: string): Promise<StageSheet[]> {
  const rows = await reader.stage.findMany({ where: { loanId } });
  return rows.map(toStage).sort((a, b) => Number(a.direction === "home") - Number(b.direction === "home"));
}

export type CarrierSheet = {
  stageId: string;
  loanId: string;
  loanNumber: string;
  direction: Direction;
  carrier: string;
  vehicle: string;
  departsOn: DateText;
  arrivesOn: DateText;
  validUntil: string;
  lenderPhone: string;
  venue: { name: string; institution: string; address: string; phone: string };
  crates: (Omit<CrateSheet, "contents" | "plan" | "loanId" | "events"> & {
    events: Omit<CrateHappening, "counts">[];
  })[];
};

/**
 * What a carrier sees on its link, or nothing for a link that is unknown or has
 * run out: the two answer the same.
 */
export async function carrierView(token: string, reader: Reader = database()): Promise<CarrierSheet | null> {
  const row = await reader.stage.findUnique({
    where: { linkHash: sha256Hex(token) },
    include: { loan: { include: { venue: { include: { institution: true } } } } },
  });
  if (!row || row.linkExpiresAt === null || row.linkExpiresAt <= now()) return null;
  const { loan } = row;
  const setting = await reader.setting.findUnique({ where: { key: "centre" }, select: { value: true } });
  const centre = setting?.value as { phone?: string; emergencyPhone?: string } | undefined;
  const crates = (await cratesOf(reader, loan.id)).filter((crate) => crate.contents.length > 0);
  const { id, carrier, vehicle, departsOn, arrivesOn, direction } = toStage(row);
  return {
    stageId: id,
    loanId: loan.id,
    loanNumber: loan.number,
    direction,
    carrier,
    vehicle,
    departsOn,
    arrivesOn,
    validUntil: row.linkExpiresAt.toISOString(),
    lenderPhone: centre?.emergencyPhone ?? centre?.phone ?? "",
    venue: {
      name: loan.venue.name,
      institution: loan.venue.institution.name,
      address: loan.venue.address,
      phone: loan.venue.institution.phone,
    },
    crates: crates.map(({ contents: _contents, plan: _plan, loanId: _loan, events, ...crate }) => ({
      ...crate,
      events: events.map(({ counts: _counts, ...event }) => event),
    })),
  };
}
