/** `GET /api/v1/specimens/{id}` reads one specimen; `PUT` revises it, with the version that was read. */
import { idempotencyKey, readBody, runOperation } from "#app/_server/api.ts";
import { reviseSpecimen, type SpecimenRevision } from "#lib/specimens/commands/record-specimen.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

type Context = { params: Promise<{ id: string }> };

export async function GET(_request: Request, context: Context): Promise<Response> {
  return await runOperation(async (viewer) => await getSpecimen(viewer, (await context.params).id));
}

export async function PUT(request: Request, context: Context): Promise<Response> {
  return await runOperation(async (viewer) => {
    const { id } = await context.params;
    const body = (await readBody(request)) as object;
    return await reviseSpecimen(viewer, { ...body, id } as SpecimenRevision, idempotencyKey(request));
  });
}
