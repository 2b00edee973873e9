/**
 * Sending what is in the outbox. The outbox is the truth: a letter that has no job
 * under way gets one, so that what was queued and forgotten in a crash is found
 * again. A job locks its row and sends it; what was sent is marked in the same
 * transaction. A server that dies in between has sent it, or will: a letter may
 * come twice and is never lost, and both copies bear the same number.
 */
import { createTransport } from "nodemailer";
import type PgBoss from "pg-boss";
import { jobTable, type Queue } from "#app/_server/jobs/store.ts";
import { letterText } from "#app/_words/letter-text.ts";
import type { Parameters } from "#app/_words/sentences.ts";
import { now } from "#lib/platform/clock.ts";
import type { MailServer } from "#lib/platform/config.ts";
import { database, databasePool } from "#lib/platform/database.ts";
import { oldestToSend } from "#lib/platform/mail.ts";

/** Tried again after half a minute, then each time after twice as long, for about four hours. */
export const letterQueue: Queue = {
  name: "letters",
  retryLimit: 9,
  retryDelay: 30,
  retryBackoff: true,
  expireInSeconds: 60,
  retentionDays: 2,
};
const restHours = 6;
const mostAtOnce = 100;

export type Post = { server: MailServer; url: string };
type LetterJob = { mailId: string };

/**
 * Gives every letter that waits, and that nobody is sending, to the queue. What
 * failed for good rests for some hours and is then begun anew; what somebody put
 * back into the outbox goes at once.
 */
export async function relayLetters(boss: PgBoss): Promise<number> {
  const { rows } = await databasePool().query<{ id: string }>(
    `SELECT mail.id FROM mail
      WHERE mail.sent_at IS NULL AND mail.queued_at >= $1
        AND NOT EXISTS (
          SELECT 1 FROM ${jobTable} job
           WHERE job.name = $2 AND job.singleton_key = mail.id::text
             AND (job.state IN ('created', 'retry', 'active')
                  OR (job.state = 'failed' AND mail.attempts > 0
                      AND job.completed_on > now() - $3 * interval '1 hour')))
      ORDER BY mail.queued_at
      LIMIT $4`,
    [oldestToSend(now()), letterQueue.name, restHours, mostAtOnce],
  );
  for (const { id } of rows)
    await boss.send(letterQueue.name, { mailId: id } satisfies LetterJob, { singletonKey: id });
  return rows.length;
}

/** What a mail server or the way to it said, in one line. */
function faultOf(error: unknown): string {
  const { code, response, message } = error as { code?: string; response?: string; message?: string };
  return [code, response ?? message ?? String(error)]
    .filter(Boolean)
    .join(": ")
    .replace(/\s+/g, " ")
    .slice(0, 300);
}

const senderOf = (from: string) => /<([^>]+)>/.exec(from)?.[1] ?? from;

/** @returns what went wrong, or null: it was sent, now or before, or somebody else is sending it */
export async function sendLetter(post: Post, mailId: string): Promise<string | null> {
  return await database().$transaction(
    async (transaction) => {
      const locked = await transaction.$queryRaw<{ id: string }[]>`
        SELECT id FROM mail WHERE id = ${mailId}::uuid AND sent_at IS NULL FOR UPDATE SKIP LOCKED`;
      if (locked.length === 0) return null;
      const letter = await transaction.mail.findUniqueOrThrow({ where: { id: mailId } });
      const transport = createTransport({
        url: post.server.smtpUrl,
        connectionTimeout: 10_000,
        greetingTimeout: 10_000,
        socketTimeout: 20_000,
      });
      const { subject, text } = letterText(
        letter.code,
        letter.parameters as Parameters,
        `${post.url}/${letter.about.replace(/^loan\//, "loans/")}`,
      );
      const attempts = letter.attempts + 1;
      const domain = senderOf(post.server.from).split("@").at(-1);
      try {
        await transport.sendMail({
          from: post.server.from,
          to: { name: "", address: letter.address },
          subject,
          text,
          messageId: `<${letter.id}@${domain}>`,
          headers: { "Auto-Submitted": "auto-generated" },
        });
      } catch (error) {
        const fault = faultOf(error);
        await transaction.mail.update({ where: { id: mailId }, data: { attempts, fault } });
        return fault;
      } finally {
        transport.close();
      }
      await transaction.mail.update({
        where: { id: mailId },
        data: { attempts, fault: "", sentAt: now() },
      });
      return null;
    },
    { maxWait: 20_000, timeout: 55_000 },
  );
}

/** Letters that go out side by side. */
const batchSize = 4;

/** Works off the queue; what failed the queue tries again. */
export async function workLetters(boss: PgBoss, post: Post, pollingIntervalSeconds: number): Promise<void> {
  await boss.work<LetterJob>(letterQueue.name, { batchSize, pollingIntervalSeconds }, async (jobs) => {
    await Promise.all(
      jobs.map(async ({ id, data }) => {
        const fault = await sendLetter(post, data.mailId);
        if (fault !== null) await boss.fail(letterQueue.name, id, { fault });
      }),
    );
  });
}
