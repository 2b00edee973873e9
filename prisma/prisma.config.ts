/**
 * Makes the database client from the schema, without a network:
 * `npx prisma generate --config prisma/prisma.config.ts`. Prisma looks for its
 * downloaded schema engine even where it needs none; it is shown a file that
 * exists. Migrations are made by `prisma/make-migration.ts` and applied at start.
 */
import path from "node:path";
import { defineConfig } from "prisma/config";

if (process.argv.includes("generate")) process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;

export default defineConfig({
  schema: path.join(import.meta.dirname, "schema"),
  migrations: { path: path.join(import.meta.dirname, "migrations") },
});
