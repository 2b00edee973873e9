/** `GET /api/v1/structures?q=`: structures by any of their names, typing errors forgiven. */
import { z } from "zod";
import { readQuery, runReading } from "#app/_server/api.ts";
import { searchStructures } from "#lib/anatomy/queries.ts";

const StructuresQuery = z.strictObject({ q: z.string().max(200).default("") });

export async function GET(request: Request): Promise<Response> {
  return await runReading(async (viewer) => {
    const { q } = readQuery(request, StructuresQuery);
    return await searchStructures(viewer, q);
  });
}
