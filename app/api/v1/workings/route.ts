/** `GET /api/v1/workings`: every computation with its schemas, sources and cautions. */
import { jsonResponse } from "#app/_server/api.ts";
import { describeWorking, listWorkings } from "#app/_server/workings.ts";

export function GET(): Response {
  return jsonResponse(listWorkings().map(describeWorking));
}
