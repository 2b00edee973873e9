/**
 * `GET /api/v1/specimens` searches the catalogue; `POST` records a specimen. Days that are looked for are
 * free with the days that a request adds around them, as on the pages.
 */
import { idempotencyKey, readBody, runOperation } from "#app/_server/api.ts";
import { loanDaysAround } from "#app/(signed-in)/specimens/days-around.ts";
import { practiceHere } from "#lib/people/queries.ts";
import { recordSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { readSearchQuery } from "#lib/specimens/search-query.ts";
import { bufferDaysOf } from "#lib/suitability/period.ts";

export async function GET(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    const { filter, page } = readSearchQuery(new URL(request.url).searchParams);
    return await listSpecimens(
      viewer,
      { ...filter, around: loanDaysAround(bufferDaysOf(await practiceHere())) },
      page,
    );
  });
}

export async function POST(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    const input = (await readBody(request)) as SpecimenInput;
    return await recordSpecimen(viewer, input, idempotencyKey(request));
  }, 201);
}
