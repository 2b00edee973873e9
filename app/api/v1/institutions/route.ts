/** `GET /api/v1/institutions`: all of them by name. `POST`: a new one, or one with its id to change it. */
import { z } from "zod";
import { idempotencyKey, readBody, readQuery, runOperation, runReading } from "#app/_server/api.ts";
import { keepInstitution } from "#lib/people/commands.ts";
import { listInstitutions } from "#lib/people/queries.ts";
import type { InstitutionInput } from "#lib/people/schema.ts";

export async function GET(request: Request): Promise<Response> {
  return await runReading(async (viewer) => {
    readQuery(request, z.strictObject({}));
    return { rows: await listInstitutions(viewer) };
  });
}

export async function POST(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    // The command reads it by its schema; nothing of it is believed here.
    const input = (await readBody(request)) as InstitutionInput;
    return { id: await keepInstitution(viewer, input, idempotencyKey(request)) };
  }, 201);
}
