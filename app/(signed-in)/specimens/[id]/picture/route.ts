/** The picture of a specimen, as the safe type it was re-encoded to. */
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { getPicture } from "#lib/specimens/queries.ts";

export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  try {
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const picture = await getPicture(viewer, (await context.params).id);
    return new Response(new Uint8Array(picture.content), {
      headers: {
        "content-type": picture.mediaType,
        "cache-control": "private, max-age=3600",
        "content-disposition": "inline",
      },
    });
  } catch (error) {
    if (error instanceof Refusal)
      return fileRefusal(request, error, { address: "/specimens", label: placeWords.specimens });
    throw error;
  }
}
