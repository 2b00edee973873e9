/**
 * The outbox. A letter is one row, written in the transaction of the change that
 * it tells of: both are there or neither. It holds a code and facts, never a
 * sentence; the sentence is made when it is sent or read, in its language. A
 * letter goes out by itself for a week; after that it is kept and shown.
 */
import type { Transaction } from "#lib/platform/database.ts";
import { type Id, newId } from "#lib/platform/identity.ts";

/** Languages for which there is a catalogue of letters. */
export const mailLanguages = ["en"] as const;
export type MailLanguage = (typeof mailLanguages)[number];

/** The first language of somebody for which there is a catalogue; English else. @param tags BCP 47 */
export function mailLanguageOf(tags: readonly string[]): MailLanguage {
  const spoken = tags.map((tag) => tag.slice(0, 2));
  return mailLanguages.find((language) => spoken.includes(language)) ?? "en";
}

export type LetterFacts = Readonly<Record<string, string | number>>;

export type Letter = {
  /** Null for an address without an account. */
  accountId: string | null;
  address: string;
  language: MailLanguage;
  code: string;
  parameters: LetterFacts;
  /** Kind and id of the record: "loan/…". */
  about: string;
};

/** Puts letters into the outbox. @param work the change that they tell of */
export async function queueMail(
  work: { transaction: Transaction; now: Date },
  letters: readonly Letter[],
): Promise<void> {
  if (letters.length === 0) return;
  await work.transaction.mail.createMany({
    data: letters.map((letter) => ({ id: newId(), ...letter, queuedAt: work.now })),
  });
}

export type LetterRow = { id: Id; queuedAt: Date; sentAt: Date | null; fault: string };

const dayMs = 86_400_000;
/** How long a letter goes out by itself: what is older tells of what has passed. */
export const LETTER_DAYS = 7;

/** Letters queued before this moment stay where they are. */
export function oldestToSend(now: Date): Date {
  return new Date(now.getTime() - LETTER_DAYS * dayMs);
}

export const letterStates = ["waiting", "sent", "fault", "kept"] as const;
export type LetterState = (typeof letterStates)[number];

/** @param hasServer whether a mail server is named */
export function letterStateOf(
  { queuedAt, sentAt, fault }: Pick<LetterRow, "queuedAt" | "sentAt" | "fault">,
  { hasServer, now }: { hasServer: boolean; now: Date },
): LetterState {
  if (sentAt !== null) return "sent";
  if (fault !== "") return "fault";
  return hasServer && queuedAt >= oldestToSend(now) ? "waiting" : "kept";
}
