/** `GET /api/v1/structures?q=`: structures by any of their names, typing errors forgiven. */
import { runOperation } from "#app/_server/api.ts";
import { searchStructures } from "#lib/anatomy/queries.ts";

export async function GET(request: Request): Promise<Response> {
  const text = new URL(request.url).searchParams.get("q") ?? "";
  return await runOperation((viewer) => searchStructures(viewer, text.slice(0, 200)));
}
