/** The stored pictures that a paper shows, made as small as a thumbnail needs. For a query that has authorised. */
import sharp from "sharp";
import type { Pictures, SizedPicture } from "#lib/papers/thumbnail.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";

/** Twice what a printer resolves on 20 mm at 200 dots an inch. */
const packingListPx = 320;
/** Stored pictures are large: so many are held at once. */
const atOnce = 12;

export async function paperPicturesOf(
  reader: Database | Transaction,
  fileIds: readonly string[],
  longestSidePx = packingListPx,
): Promise<Pictures> {
  const pictures = new Map<string, SizedPicture>();
  const ids = [...new Set(fileIds)].sort();
  for (let from = 0; from < ids.length; from += atOnce) {
    const rows = await reader.storedFile.findMany({
      where: { id: { in: ids.slice(from, from + atOnce) } },
      select: { id: true, content: true },
    });
    for (const { id, content } of rows) {
      const { data, info } = await sharp(content)
        .resize(longestSidePx, longestSidePx, { fit: "inside", withoutEnlargement: true })
        .flatten({ background: "#ffffff" })
        .jpeg({ quality: 80 })
        .toBuffer({ resolveWithObject: true });
      pictures.set(id, {
        mime: "image/jpeg",
        bytes: new Uint8Array(data),
        widthPx: info.width,
        heightPx: info.height,
      });
    }
  }
  return pictures;
}
