/**
 * Everything the program does by itself, registered in one place: letters as they
 * come, loans to be judged again as they are noted, reminders once a day and when
 * it starts. Several servers may run it on one
 * database; the queue gives each piece of work to one of them.
 */
import type PgBoss from "pg-boss";
import { letterQueue, relayLetters, workLetters } from "#app/_server/jobs/send-letters.ts";
import { openQueue, prepareStore, type Queue } from "#app/_server/jobs/store.ts";
import { judgeAgain, noteWhatEnded } from "#lib/loans/commands/judge-again.ts";
import { takeReminders } from "#lib/loans/commands/take-reminders.ts";
import { warnOfCover } from "#lib/loans/commands/warn-of-cover.ts";
import { programViewer } from "#lib/people/viewer.ts";
import type { Config, MailServer } from "#lib/platform/config.ts";
import { databasePool } from "#lib/platform/database.ts";

/** Early in the morning, in universal time, before anybody works. */
const dailyAt = "20 4 * * *";
const reminderQueue: Queue = { name: "reminders", retryLimit: 3, retryDelay: 60, retryBackoff: true };

export type JobSettings = Pick<Config, "databaseUrl" | "url"> & {
  mailServer: MailServer | null;
  /** Hears of what went wrong with the queue itself. */
  onTrouble: (error: unknown) => void;
  /** How often the outbox and the queue are looked at. */
  lookEverySeconds?: number;
  /** After how long a letter that a dead server was sending is taken up again, and how long it rests before that. */
  letterPatience?: Pick<Queue, "expireInSeconds" | "retryDelay">;
};

async function beginReminders(boss: PgBoss): Promise<void> {
  await boss.schedule(reminderQueue.name, dailyAt);
  await boss.send(reminderQueue.name, {});
  await boss.work(reminderQueue.name, { pollingIntervalSeconds: 30 }, async () => {
    await takeReminders(programViewer);
    await warnOfCover(programViewer);
    await noteWhatEnded(programViewer);
  });
}

/** One look after the other, with a pause between. @returns what ends them */
function keepLooking(look: () => Promise<unknown>, everyMs: number, onTrouble: (error: unknown) => void) {
  let ended = false;
  let timer: NodeJS.Timeout | undefined;
  let under: Promise<void> = Promise.resolve();
  const again = () => {
    under = look()
      .then(() => {}, onTrouble)
      .then(() => {
        if (!ended) timer = setTimeout(again, everyMs);
      });
  };
  again();
  return async () => {
    ended = true;
    clearTimeout(timer);
    await under;
  };
}

/** Begins everything. @returns what ends it, once what is under way is done */
export async function startJobs(settings: JobSettings): Promise<() => Promise<void>> {
  const { databaseUrl, url, mailServer, onTrouble, lookEverySeconds = 2, letterPatience } = settings;
  const letters: Queue = { ...letterQueue, ...letterPatience };
  await prepareStore(databaseUrl, [letters, reminderQueue]);
  const boss = openQueue(databasePool());
  boss.on("error", onTrouble);
  await boss.start();
  await beginReminders(boss);
  const stopJudging = keepLooking(() => judgeAgain(programViewer), lookEverySeconds * 1_000, onTrouble);
  let stopLooking = async () => {};
  if (mailServer) {
    await workLetters(boss, { server: mailServer, url }, lookEverySeconds);
    stopLooking = keepLooking(
      async () => {
        // What a server that died was sending is given back to the queue.
        await boss.expire();
        await relayLetters(boss);
      },
      lookEverySeconds * 1_000,
      onTrouble,
    );
  }
  return async () => {
    await stopJudging();
    await stopLooking();
    await boss.stop({ timeout: 5_000 });
  };
}
