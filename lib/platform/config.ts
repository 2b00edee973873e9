/**
 * The only place that reads the environment. Everything here can be set from
 * outside; nothing here is a rule of the trade (those are settings in the database).
 */
import { z } from "zod";

const Environment = z.object({
  /** Owner's address of the database; the application steps down to its own role on it. */
  DATABASE_URL: z.string().min(1),
  /** Signs sessions and carrier links. At least 32 characters. */
  ANATHECA_SECRET: z.string().min(32),
  /** The address people type. */
  ANATHECA_URL: z.url().default("http://localhost:3000"),
});

export type Config = { databaseUrl: string; secret: string; url: string };

/** @throws {Error} naming the variable that is missing or wrong */
export function readConfig(): Config {
  const parsed = Environment.safeParse(process.env);
  if (!parsed.success) {
    const wrong = parsed.error.issues.map((issue) => issue.path.join(".")).join(", ");
    throw new Error(`The environment lacks or garbles: ${wrong}. Start the program with "npm start".`);
  }
  const { DATABASE_URL, ANATHECA_SECRET, ANATHECA_URL } = parsed.data;
  return { databaseUrl: DATABASE_URL, secret: ANATHECA_SECRET, url: ANATHECA_URL };
}
