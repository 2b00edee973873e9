/** `GET /api/v1/workings`: every computation with its schemas, sources and cautions. */
import { runOperation } from "#app/_server/api.ts";
import { describeWorking, listWorkings } from "#app/_server/workings.ts";

export async function GET(): Promise<Response> {
  return await runOperation(async () => listWorkings().map(describeWorking));
}
