/**
 * Letters by mail as a page by key, the newest first: all of them for who keeps
 * the post, for everybody else those to their own account or address. A letter's
 * text is made where it is shown.
 */
import { z } from "zod";
import type { Prisma } from "#.generated/prisma/client.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { readMailServer } from "#lib/platform/config.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import {
  type LetterFacts,
  type LetterState,
  letterStateOf,
  letterStates,
  oldestToSend,
} from "#lib/platform/mail.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const LetterFilter = z.object({
  state: z.enum(letterStates).nullable().default(null),
  loanId: Id.nullable().default(null),
});
export const LetterPage = z.object({
  after: Id.nullable().default(null),
  limit: z.number().int().min(1).max(200).default(50),
});

export type LetterSheet = {
  id: string;
  address: string;
  /** Whose account it went to; null for an address without one. */
  to: string | null;
  language: string;
  code: string;
  parameters: LetterFacts;
  loanId: string | null;
  queuedAt: string;
  sentAt: string | null;
  attempts: number;
  /** What the mail server said; for who keeps the post. */
  fault: string;
  state: LetterState;
};

const keepsPost = (viewer: Viewer) => maySee(viewer, "letters") && !isBorrower(viewer);

/** Which letters are the viewer's to read. */
function readableBy(viewer: Viewer): Prisma.MailWhereInput {
  if (keepsPost(viewer)) return {};
  const { accountId, email } = viewer;
  return {
    OR: [
      { accountId },
      ...(email === "" ? [] : [{ address: { equals: email, mode: "insensitive" as const } }]),
    ],
  };
}

function inState(state: LetterState, moment: Date, hasServer: boolean): Prisma.MailWhereInput {
  const young = { gte: oldestToSend(moment) };
  switch (state) {
    case "sent":
      return { sentAt: { not: null } };
    case "fault":
      return { sentAt: null, fault: { not: "" } };
    case "waiting":
      return hasServer ? { sentAt: null, fault: "", queuedAt: young } : { id: { in: [] } };
    case "kept":
      return { sentAt: null, fault: "", ...(hasServer ? { NOT: { queuedAt: young } } : {}) };
  }
}

type MailRow = Prisma.MailGetPayload<object>;

function toSheet(row: MailRow, to: string | null, state: LetterState, viewer: Viewer): LetterSheet {
  return {
    id: row.id,
    address: row.address,
    to,
    language: row.language,
    code: row.code,
    parameters: row.parameters as LetterFacts,
    loanId: /^loan\/(.+)$/.exec(row.about)?.[1] ?? null,
    queuedAt: row.queuedAt.toISOString(),
    sentAt: row.sentAt?.toISOString() ?? null,
    attempts: row.attempts,
    fault: keepsPost(viewer) ? row.fault : "",
    state,
  };
}

async function toSheets(viewer: Viewer, rows: readonly MailRow[]): Promise<LetterSheet[]> {
  const names = await database().account.findMany({
    where: { id: { in: rows.flatMap(({ accountId }) => accountId ?? []) } },
    select: { id: true, name: true },
  });
  const nameOf = new Map(names.map(({ id, name }) => [id, name]));
  const standing = { hasServer: readMailServer() !== null, now: now() };
  return rows.map((row) =>
    toSheet(row, nameOf.get(row.accountId ?? "") ?? null, letterStateOf(row, standing), viewer),
  );
}

export async function listLetters(
  viewer: Viewer,
  filter: z.input<typeof LetterFilter> = {},
  page: z.input<typeof LetterPage> = {},
): Promise<{ rows: LetterSheet[]; next: string | null; all: boolean; hasServer: boolean }> {
  const { state, loanId } = parseInput(LetterFilter, filter);
  const { after, limit } = parseInput(LetterPage, page);
  const hasServer = readMailServer() !== null;
  const rows = await database().mail.findMany({
    where: {
      AND: [
        readableBy(viewer),
        state === null ? {} : inState(state, now(), hasServer),
        loanId === null ? {} : { about: `loan/${loanId}` },
        after === null ? {} : { id: { lt: after } },
      ],
    },
    orderBy: { id: "desc" },
    take: limit + 1,
  });
  const shown = await toSheets(viewer, rows.slice(0, limit));
  const next = rows.length > limit ? (shown.at(-1)?.id ?? null) : null;
  return { rows: shown, next, all: keepsPost(viewer), hasServer };
}

/** @throws {Refusal} "not-found" for what is not there and for what is somebody else's */
export async function getLetter(
  viewer: Viewer,
  letterId: string,
): Promise<LetterSheet & { mayGoAgain: boolean }> {
  if (!Id.safeParse(letterId).success) throw notFound("letter");
  const row = await database().mail.findFirst({ where: { AND: [{ id: letterId }, readableBy(viewer)] } });
  const [letter] = row ? await toSheets(viewer, [row]) : [];
  if (!letter) throw notFound("letter");
  // Where there is no mail server it would go nowhere, and what waits goes by itself.
  const restsHere = readMailServer() !== null && (letter.state === "fault" || letter.state === "kept");
  return { ...letter, mayGoAgain: restsHere && mayDo(viewer, "sendLetterAgain") };
}
