/** `GET /api/v1/specimens` searches the catalogue; `POST` records a specimen. */
import { idempotencyKey, readBody, runOperation } from "#app/_server/api.ts";
import { recordSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import { listSpecimens } from "#lib/specimens/queries.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";

export async function GET(request: Request): Promise<Response> {
  const { after, before, size, ...filter } = Object.fromEntries(new URL(request.url).searchParams);
  const page = {
    ...(after ? { after } : {}),
    ...(before ? { before } : {}),
    ...(size ? { size: Number(size) } : {}),
  };
  return await runOperation((viewer) =>
    listSpecimens(viewer, filter as Parameters<typeof listSpecimens>[1], page),
  );
}

export async function POST(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    const input = (await readBody(request)) as SpecimenInput;
    return await recordSpecimen(viewer, input, idempotencyKey(request));
  }, 201);
}
