/** `GET /api/v1/workings`: every computation with its schemas, sources and cautions. */
import { z } from "zod";
import { readQuery, runReading } from "#app/_server/api.ts";
import { describeWorking, listWorkings } from "#app/_server/workings.ts";

export async function GET(request: Request): Promise<Response> {
  return await runReading(async () => {
    readQuery(request, z.strictObject({}));
    return listWorkings().map(describeWorking);
  });
}
