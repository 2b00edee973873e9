/** A picture of the open catalogue; of a human specimen only for who has chosen to see it. */
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { publicWords as words } from "#app/_words/en/borrow.ts";
import { showsHumanPictures } from "#app/catalogue/choice.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { getPublicPicture } from "#lib/specimens/queries/public-catalogue.ts";

export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  try {
    const { id } = await context.params;
    const choice = { showsHuman: await showsHumanPictures() };
    const picture = await getPublicPicture(await currentViewer(), id, choice);
    return new Response(new Uint8Array(picture.content), {
      headers: {
        "content-type": picture.mediaType,
        // Not kept where somebody else may look: the choice is this visitor's own.
        "cache-control": "private, no-store",
        "content-disposition": "inline",
      },
    });
  } catch (error) {
    if (error instanceof Refusal)
      return fileRefusal(request, error, { address: "/catalogue", label: words.title });
    throw error;
  }
}
