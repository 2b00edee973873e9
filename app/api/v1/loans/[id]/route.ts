/** `GET /api/v1/loans/{id}` reads one loan's file, in the sight of who asks. */
import { runOperation } from "#app/_server/api.ts";
import { getLoan } from "#lib/loans/queries.ts";

type Context = { params: Promise<{ id: string }> };

export async function GET(_request: Request, context: Context): Promise<Response> {
  return await runOperation(async (viewer) => await getLoan(viewer, (await context.params).id));
}
