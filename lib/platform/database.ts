/**
 * The one connection to Postgres. The application connects with the owner's
 * address but steps down to the role `anatheca_app`, which owns nothing, before
 * the first statement; what the database must refuse, it refuses to this role.
 *
 * Several servers may share one database: nothing is kept in memory here.
 */
import "server-only";
import { PrismaPg } from "@prisma/adapter-pg";
import pg from "pg";
import { type Prisma, PrismaClient } from "#.generated/prisma/client.ts";
import { readConfig } from "#lib/platform/config.ts";
import { OneAtATime } from "#lib/platform/one-at-a-time.ts";

export type Database = PrismaClient;
/** A client inside a transaction. */
export type Transaction = Prisma.TransactionClient;

type Connection = { pool: pg.Pool; database: Database };

/** Opens a pool in the application's role. Tests call it with the address of their own database. */
export function connect(databaseUrl: string, connections = 20): Connection {
  const pool = new pg.Pool({
    connectionString: databaseUrl,
    max: connections,
    options: "-c role=anatheca_app",
    Client: OneAtATime,
  });
  return { pool, database: new PrismaClient({ adapter: new PrismaPg(pool) }) };
}

// A development server reloads modules; one pool is kept over the reloads.
const kept = globalThis as typeof globalThis & { anathecaConnection?: Connection };

function connection(): Connection {
  kept.anathecaConnection ??= connect(readConfig().databaseUrl);
  return kept.anathecaConnection;
}

export function database(): Database {
  return connection().database;
}

/** The pool under the client, for the sign-in library and for streams. */
export function databasePool(): pg.Pool {
  return connection().pool;
}

/** Points the program at another database: tests and seeds. */
export function useDatabase(databaseUrl: string, connections?: number): Connection {
  kept.anathecaConnection = connect(databaseUrl, connections);
  return kept.anathecaConnection;
}

export async function closeDatabase(): Promise<void> {
  const open = kept.anathecaConnection;
  if (!open) return;
  delete kept.anathecaConnection;
  await open.database.$disconnect();
  if (!open.pool.ended) await open.pool.end();
}
