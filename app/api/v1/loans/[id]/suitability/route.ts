/** `GET /api/v1/loans/{id}/suitability`: what the rules find for each specimen, as far as the viewer may read it. */
import { runOperation } from "#app/_server/api.ts";
import { getLoan } from "#lib/loans/queries.ts";

type Context = { params: Promise<{ id: string }> };

export async function GET(_request: Request, context: Context): Promise<Response> {
  return await runOperation(async (viewer) => {
    const { id, number, state, matrix, findings, officesNeeded } = await getLoan(
      viewer,
      (await context.params).id,
    );
    return { id, number, state, matrix, findings, officesNeeded };
  });
}
