/** `GET /loans/{id}/signed/{file}`: the file that stands as a signature, to be kept and not shown in the page. */
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { getSignedFile } from "#lib/loans/queries/signed-file.ts";
import { Refusal } from "#lib/platform/refusal.ts";

type Context = { params: Promise<{ id: string; fileId: string }> };

const extensions: Readonly<Record<string, string>> = { "image/jpeg": "jpg", "image/png": "png" };

export async function GET(request: Request, context: Context): Promise<Response> {
  try {
    const { id, fileId } = await context.params;
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { mediaType, content } = await getSignedFile(viewer, id, fileId);
    return new Response(new Uint8Array(content), {
      headers: {
        "content-type": mediaType,
        // A file from outside is handed over to be saved; no script of it runs here.
        "content-disposition": `attachment; filename="signed-agreement.${extensions[mediaType] ?? "pdf"}"`,
        "x-content-type-options": "nosniff",
        "cache-control": "private, no-store",
      },
    });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return fileRefusal(request, error, { address: "/loans", label: placeWords.loans });
  }
}
