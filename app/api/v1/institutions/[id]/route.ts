/** `GET /api/v1/institutions/{id}`: one institution with its venues and their facts. */
import { runOperation } from "#app/_server/api.ts";
import { getInstitution } from "#lib/people/queries.ts";

export async function GET(
  _request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  return await runOperation(async (viewer) => {
    const { id } = await context.params;
    return await getInstitution(viewer, id);
  });
}
