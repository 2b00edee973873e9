/**
 * The queue of the program's own work, in the same Postgres, in a schema of its
 * own. The owner of the database makes and migrates it and its queues, once over
 * all servers that start at the same time; the work itself runs in the role of the
 * application, which owns nothing there either.
 */
import pg from "pg";
import PgBoss from "pg-boss";

const schema = "jobs";
/** A number of our own for the lock that lets one preparation wait for another. */
const advisoryLock = 20_261_125;

/** The library's own queue for what comes at a time of day. */
const scheduleQueue = "__pgboss__send-it";

export type Queue = { name: string } & Omit<PgBoss.Queue, "name">;

async function makeQueues(boss: PgBoss, queues: readonly Queue[]): Promise<void> {
  await boss.createQueue(scheduleQueue);
  for (const queue of queues) {
    await boss.createQueue(queue.name, queue);
    await boss.updateQueue(queue.name, queue);
  }
}

/** @param ownerUrl of the owner of the database */
export async function prepareStore(ownerUrl: string, queues: readonly Queue[]): Promise<void> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  const executeSql = (text: string, values?: unknown[]) => client.query(text, values);
  const boss = new PgBoss({ db: { executeSql }, schema, supervise: false, schedule: false });
  try {
    await client.query("SELECT pg_advisory_lock($1)", [advisoryLock]);
    await boss.start();
    await makeQueues(boss, queues);
    await client.query(
      `GRANT USAGE ON SCHEMA ${schema} TO anatheca_app;
       GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA ${schema} TO anatheca_app;`,
    );
    await boss.stop({ graceful: false });
  } finally {
    await client.end();
  }
}

/** @param pool in the application's role */
export function openQueue(pool: pg.Pool): PgBoss {
  return new PgBoss({
    db: { executeSql: (text, values) => pool.query(text, values) },
    schema,
    migrate: false,
    // What comes at a time of day may come some seconds later.
    cronWorkerIntervalSeconds: 45,
  });
}

/** Where the queue keeps its work, for whoever asks what is under way. */
export const jobTable = `${schema}.job`;
