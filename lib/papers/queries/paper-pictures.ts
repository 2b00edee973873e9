/** The stored pictures that a paper shows, made as small as a thumbnail needs. For a query that has authorised. */
import sharp from "sharp";
import type { Pictures } from "#lib/papers/packing-list/document.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";

/** Twice what a printer resolves on 20 mm at 200 dots an inch. */
const longestSidePx = 320;

export async function paperPicturesOf(
  reader: Database | Transaction,
  fileIds: readonly string[],
): Promise<Pictures> {
  const pictures = new Map<string, Pictures extends ReadonlyMap<string, infer Value> ? Value : never>();
  if (fileIds.length === 0) return pictures;
  const rows = await reader.storedFile.findMany({
    where: { id: { in: [...fileIds] } },
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
  return pictures;
}
