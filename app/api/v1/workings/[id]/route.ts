/** `POST /api/v1/workings/{id}`: runs one computation and shows its steps. */
import { readBody, runOperation } from "#app/_server/api.ts";
import { getWorking } from "#app/_server/workings.ts";

export async function POST(
  request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  return await runOperation(async () => {
    const { id } = await context.params;
    return getWorking(id).explain(await readBody(request));
  });
}
