/** `GET /venues/{id}/records/{record}`: a logger's file as it came, to be kept and not shown in the page. */
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { institutionsWords } from "#app/_words/en/institutions.ts";
import { getLoggerFile } from "#lib/loans/queries/climate-records.ts";
import { Refusal } from "#lib/platform/refusal.ts";

type Context = { params: Promise<{ id: string; recordId: string }> };

export async function GET(request: Request, context: Context): Promise<Response> {
  try {
    const { id, recordId } = await context.params;
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { content } = await getLoggerFile(viewer, id, recordId);
    return new Response(new Uint8Array(content), {
      headers: {
        "content-type": "text/csv",
        "content-disposition": 'attachment; filename="climate-record.csv"',
        "x-content-type-options": "nosniff",
        "cache-control": "private, no-store",
      },
    });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return fileRefusal(request, error, { address: "/institutions", label: institutionsWords.title });
  }
}
