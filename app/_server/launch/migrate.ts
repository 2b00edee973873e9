/**
 * Applies the migrations to DATABASE_URL and says what it did: the names of the
 * migrations applied, one a line, or one sentence on standard error and status 1.
 */
import { applyMigrations, MigrationFailure } from "#lib/platform/migrate.ts";

try {
  for (const name of await applyMigrations(process.env.DATABASE_URL ?? "")) console.log(name);
  // The engine's wait for its lock leaves a timer of ten seconds behind.
  process.exit(0);
} catch (error) {
  if (!(error instanceof MigrationFailure)) throw error;
  console.error(error.message);
  process.exit(1);
}
