/**
 * Letters on their way out, against a mail server on this machine: sent once, kept
 * with their fault where they cannot be, and found again after a crash.
 */
import { type ChildProcess, fork } from "node:child_process";
import path from "node:path";
import { afterEach, beforeAll, expect, test, vi } from "vitest";
import { startJobs } from "#app/_server/jobs/jobs.ts";
import { sendLetter } from "#app/_server/jobs/send-letters.ts";
import { setClock } from "#lib/platform/clock.ts";
import { readMailServer } from "#lib/platform/config.ts";
import { database, databasePool } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { type Letter, queueMail } from "#lib/platform/mail.ts";
import { inWork } from "#tests/support/builders.ts";
import { type TestDatabase, testDatabase } from "#tests/support/database.ts";
import { catchMail } from "#tests/support/mail-server.ts";

const from = "Loans <loans@house.example>";
const url = "https://loans.example";
let where: TestDatabase;
let ends: (() => Promise<unknown>)[] = [];
const after = <Thing>(thing: Thing, end: () => Promise<unknown>): Thing => {
  ends.push(end);
  return thing;
};

beforeAll(async () => {
  where = await testDatabase("tables");
});
afterEach(async () => {
  for (const end of ends.reverse()) await end();
  ends = [];
  setClock();
  await database().mail.deleteMany();
  // Work that a dead process left is not for the next test.
  await databasePool()
    .query("DELETE FROM jobs.job")
    .catch(() => {});
});

async function aLetter(said: Partial<Letter> = {}): Promise<string> {
  const about = `loan/${newId()}`;
  await inWork((work) =>
    queueMail(work, [
      {
        accountId: null,
        address: "contact@school.example",
        language: "en",
        code: "letter.closed",
        parameters: { loan: "L 2027-001", title: "Course", borrower: "School", centre: "Centre" },
        about,
        ...said,
      },
    ]),
  );
  return (await database().mail.findFirstOrThrow({ where: { about } })).id;
}
const rowOf = (id: string) => database().mail.findUniqueOrThrow({ where: { id } });

async function jobsWith(smtpUrl: string | null) {
  const stop = await startJobs({
    databaseUrl: where.url,
    url,
    mailServer: smtpUrl === null ? null : { smtpUrl, from },
    onTrouble: (error) => {
      throw error;
    },
    lookEverySeconds: 0.5,
  });
  ends.push(stop);
}

/** A worker in a process of its own. */
async function aWorker(smtpUrl: string): Promise<ChildProcess> {
  const child = fork(path.join(import.meta.dirname, "../support/letter-worker.ts"), {
    execArgv: ["--import", "tsx", "--conditions=react-server"],
    env: { ...process.env, DATABASE_URL: where.url, ANATHECA_SMTP: smtpUrl, ANATHECA_MAIL_FROM: from },
  });
  const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  ends.push(async () => {
    child.kill("SIGKILL");
    await gone;
  });
  await new Promise<void>((resolve, reject) => {
    child.once("message", () => resolve());
    child.once("exit", () => reject(new Error("the worker ended before it began")));
  });
  return child;
}

test("a letter of a change that was undone was never written", async () => {
  const about = `loan/${newId()}`;
  await expect(
    inWork(async (work) => {
      await queueMail(work, [
        {
          accountId: null,
          address: "a@b.example",
          language: "en",
          code: "letter.closed",
          parameters: {},
          about,
        },
      ]);
      throw new Error("undone");
    }),
  ).rejects.toThrow("undone");
  expect(await database().mail.count({ where: { about } })).toBe(0);
});

test("the queue sends each letter once, with where the file is, and marks it", async () => {
  const trap = await catchMail();
  after(trap, trap.close);
  const ids = [await aLetter(), await aLetter({ address: "other@school.example" })];
  await jobsWith(trap.url);
  await vi.waitFor(
    async () => {
      for (const id of ids) expect((await rowOf(id)).sentAt).not.toBeNull();
    },
    { timeout: 15_000, interval: 200 },
  );
  await new Promise((resolve) => setTimeout(resolve, 1_000));
  expect(trap.caught.map(({ to }) => to[0]).sort()).toEqual([
    "contact@school.example",
    "other@school.example",
  ]);
  const [first] = trap.caught;
  expect(first?.from).toBe("loans@house.example");
  expect(first?.content).toContain("Subject: L 2027-001: closed");
  expect(first?.content).toContain("https://loans.example/loans/");
  expect(ids.some((id) => first?.content.includes(`<${id}@house.example>`))).toBe(true);
  expect(await rowOf(ids[0] ?? "")).toMatchObject({ attempts: 1, fault: "" });
});

test("two who send the same letter at once send it once", async () => {
  const trap = await catchMail(() => new Promise((resolve) => setTimeout(resolve, 300)));
  after(trap, trap.close);
  const id = await aLetter();
  const post = { server: { smtpUrl: trap.url, from }, url };
  expect(await Promise.all([sendLetter(post, id), sendLetter(post, id)])).toEqual([null, null]);
  expect(await sendLetter(post, id)).toBeNull();
  expect(trap.caught).toHaveLength(1);
});

test("a wrong address of the mail server keeps the letter with its fault, and a right one sends it later", async () => {
  const id = await aLetter();
  const gone = await catchMail();
  await gone.close();
  expect(await sendLetter({ server: { smtpUrl: gone.url, from }, url }, id)).toMatch(/ECONNREFUSED|ESOCKET/);
  expect(await rowOf(id)).toMatchObject({ sentAt: null, attempts: 1, fault: expect.stringMatching(/\w/) });
  const trap = await catchMail();
  after(trap, trap.close);
  expect(await sendLetter({ server: { smtpUrl: trap.url, from }, url }, id)).toBeNull();
  expect(await rowOf(id)).toMatchObject({ sentAt: expect.any(Date), attempts: 2, fault: "" });
});

test("what a mail server refuses is kept with what it said, and does not hold the others up", async () => {
  const trap = await catchMail();
  after(trap, trap.close);
  const refused = await aLetter({ address: "nobody@school.example" });
  const taken = await aLetter();
  await jobsWith(trap.url);
  await vi.waitFor(
    async () => {
      expect((await rowOf(taken)).sentAt).not.toBeNull();
      expect((await rowOf(refused)).fault).toContain("550");
    },
    { timeout: 15_000, interval: 200 },
  );
  expect((await rowOf(refused)).sentAt).toBeNull();
});

test("a letter survives the death of who was sending it", async () => {
  let hang = true;
  const trap = await catchMail(() => (hang ? new Promise(() => {}) : Promise.resolve()));
  after(trap, trap.close);
  const id = await aLetter();
  const first = await aWorker(trap.url);
  await vi.waitFor(() => expect(trap.begun()).toBe(1), { timeout: 15_000, interval: 50 });
  first.kill("SIGKILL");
  expect((await rowOf(id)).sentAt).toBeNull();
  hang = false;
  await aWorker(trap.url);
  await vi.waitFor(async () => expect((await rowOf(id)).sentAt).not.toBeNull(), {
    timeout: 60_000,
    interval: 200,
  });
  expect(trap.caught).toHaveLength(1);
}, 90_000);

test("without a mail server letters are kept, and an old one is not sent when there is one", async () => {
  const kept = await aLetter();
  setClock(() => new Date(Date.now() - 8 * 86_400_000));
  const old = await aLetter();
  setClock();
  await jobsWith(null);
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  expect((await rowOf(kept)).attempts).toBe(0);
  const trap = await catchMail();
  after(trap, trap.close);
  await jobsWith(trap.url);
  await vi.waitFor(async () => expect((await rowOf(kept)).sentAt).not.toBeNull(), {
    timeout: 15_000,
    interval: 200,
  });
  expect(await rowOf(old)).toMatchObject({ sentAt: null, attempts: 0, fault: "" });
});

test("the work runs in the application's role, and the queue is the owner's", async () => {
  await jobsWith(null);
  const { rows } = await databasePool().query<{ owner: string; user: string }>(
    `SELECT tableowner AS owner, current_user AS user FROM pg_tables WHERE schemaname = 'jobs' AND tablename = 'job'`,
  );
  expect(rows[0]?.user).toBe("anatheca_app");
  expect(rows[0]?.owner).not.toBe("anatheca_app");
});

test.each([
  [{}, null],
  [{ ANATHECA_SMTP: "", ANATHECA_MAIL_FROM: "" }, null],
  [{ ANATHECA_MAIL_FROM: from }, null],
  [
    { ANATHECA_SMTP: "smtps://u:p@mail.example:465", ANATHECA_MAIL_FROM: from },
    "smtps://u:p@mail.example:465",
  ],
])("of %j the mail server is %s", (environment, smtpUrl) => {
  const before = { ...process.env };
  try {
    delete process.env.ANATHECA_SMTP;
    delete process.env.ANATHECA_MAIL_FROM;
    Object.assign(process.env, environment);
    expect(readMailServer()?.smtpUrl ?? null).toBe(smtpUrl);
  } finally {
    process.env = before;
  }
});

test.each([
  { ANATHECA_SMTP: "smtp://mail.example", ANATHECA_MAIL_FROM: "" },
  { ANATHECA_SMTP: "http://mail.example", ANATHECA_MAIL_FROM: from },
  { ANATHECA_SMTP: "mail.example:25", ANATHECA_MAIL_FROM: from },
])("a mail server that is half named, as in %j, is refused by the variable's name", (environment) => {
  const before = { ...process.env };
  try {
    Object.assign(process.env, environment);
    expect(() => readMailServer()).toThrow(/ANATHECA_/);
  } finally {
    process.env = before;
  }
});
