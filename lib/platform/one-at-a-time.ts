/**
 * A connection that runs one statement at a time. The database client reads
 * several relations of one record side by side, inside a transaction as well, and
 * the driver warns of a statement that is handed over while another still waits:
 * its queue goes with its next major version. Here the later one waits for the
 * earlier to end, however that ends. Statements with a callback, which the pool
 * sends on a connection that is free, and streams go straight through.
 */
import pg from "pg";

type Query = (...args: unknown[]) => Promise<unknown>;

/** Ends when every statement so far has ended; it never fails. */
const settled = async (statement: Promise<unknown>): Promise<void> => {
  await statement.catch(() => {});
};

const isSubmittable = (first: unknown): boolean =>
  typeof (first as { submit?: unknown } | null | undefined)?.submit === "function";

export class OneAtATime extends pg.Client {
  #before: Promise<void> = Promise.resolve();

  // The overloads of the driver are many and say nothing more here than "as the driver's own".
  override query = ((...args: unknown[]) => {
    const run = pg.Client.prototype.query as unknown as Query;
    if (isSubmittable(args[0]) || typeof args.at(-1) === "function") return run.apply(this, args);
    const statement = this.#before.then(() => run.apply(this, args));
    this.#before = settled(statement);
    return statement;
  }) as pg.Client["query"];
}
