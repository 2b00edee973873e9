/**
 * The shape of every command: authorise, read the input by its schema, then work
 * in one transaction that names the viewer and the act to the audit. A command of
 * a higher room runs one of a lower room inside its own transaction by `within`.
 *
 * Asked again with the same idempotency key, a command answers the same and does
 * nothing twice. Asked something else with it, the command refuses: the answer of
 * before would be taken for the answer to this.
 */
import { z } from "zod";
import { type Act, authorise } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { type DateText, isToCome, toDateText } from "#lib/platform/dates.ts";
import { inputSha256 } from "#lib/platform/hash.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { inTransaction } from "#lib/platform/transaction.ts";

/** What a command works with: who asks, the transaction, and the moment it counts as. */
export type Work = { viewer: Viewer; transaction: Transaction; now: Date; today: DateText };

export type Command<Schema extends z.ZodType, Result> = {
  (viewer: Viewer, input: z.input<Schema>, options?: { idempotencyKey?: string }): Promise<Result>;
  act: Act;
  input: Schema;
  /** Runs inside another command's transaction, under that command's authority. */
  within(work: Work, input: z.input<Schema>): Promise<Result>;
};

/** All commands by name, for the test that walks every command with every role. */
export const commands = new Map<Act, Command<z.ZodType, unknown>>();

/** What happened has happened: its day has begun somewhere. @throws {Refusal} "invalid", at each day to come */
export function refuseDaysToCome(work: Work, days: Readonly<Record<string, DateText | null>>): void {
  const toCome = Object.entries(days).filter(([, day]) => day !== null && isToCome(day, work.now));
  if (toCome.length === 0) return;
  const issues = toCome.map(([path]) => ({ path, message: "date.to-come" }));
  throw new Refusal("invalid", "input.invalid", {}, issues);
}

/** What is kept of a command that was asked with a key. */
const Receipt = z.object({ inputSha256: z.string(), answer: z.unknown() });

export function command<Schema extends z.ZodType, Result>(
  act: Act,
  input: Schema,
  handle: (work: Work, input: z.output<Schema>) => Promise<Result>,
): Command<Schema, Result> {
  const run = async (viewer: Viewer, raw: z.input<Schema>, options: { idempotencyKey?: string } = {}) => {
    authorise(viewer, act);
    const value = parseInput(input, raw);
    return await inTransaction(viewer, act, async (transaction) => {
      const moment = now();
      const work: Work = { viewer, transaction, now: moment, today: toDateText(moment) };
      const { idempotencyKey: key } = options;
      if (!key) return await handle(work, value);
      const id = { accountId_act_key: { accountId: viewer.accountId, act, key } };
      await transaction.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${viewer.accountId}/${act}/${key}`}, 0))`;
      const earlier = await transaction.commandReceipt.findUnique({ where: id });
      const fingerprint = inputSha256(value ?? null);
      if (earlier) {
        const receipt = Receipt.safeParse(earlier.answer).data;
        if (receipt?.inputSha256 !== fingerprint) throw new Refusal("conflict", "command.key-reused");
        return receipt.answer as Result;
      }
      const result = await handle(work, value);
      const receipt = { inputSha256: fingerprint, answer: (result ?? null) as object };
      await transaction.commandReceipt.create({
        data: { accountId: viewer.accountId, act, key, answer: receipt },
      });
      return result;
    });
  };
  const made = Object.assign(run, {
    act,
    input,
    within: async (work: Work, raw: z.input<Schema>) => await handle(work, parseInput(input, raw)),
  });
  commands.set(act, made as unknown as Command<z.ZodType, unknown>);
  return made;
}
