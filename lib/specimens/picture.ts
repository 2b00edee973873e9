/**
 * A picture on its way in: looked at, turned upright, made no larger than a screen
 * needs and written anew as a JPEG, so that nothing of the file that was sent is
 * kept: no place, no time, no device, nothing hidden behind the image. What cannot
 * be read to its end is refused.
 */

import sharp from "sharp";
import { bytesSha256 } from "#lib/platform/hash.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { mostPictureBytes } from "#lib/specimens/schema.ts";

export const mostPicturePixels = 60_000_000;
export const longestSidePx = 2_400;
/** Less on the longer side is a dot or an icon, on which no specimen is known again. Common practice, no source. */
export const leastLongerSidePx = 200;

const readableFormats: readonly string[] = ["jpeg", "png", "webp", "tiff"];
const paper = "#ffffff";

export type Picture = {
  mediaType: "image/jpeg";
  content: Uint8Array<ArrayBuffer>;
  sha256: string;
  byteCount: number;
  widthPx: number;
  heightPx: number;
};

const refuse = (reason: string) => new Refusal("invalid", reason, {}, [{ path: "content", message: reason }]);

/** @throws {Refusal} "invalid" for too many bytes, too many pixels or too few, no picture, or a damaged one */
export async function readPicture(bytes: Uint8Array): Promise<Picture> {
  if (bytes.byteLength > mostPictureBytes) throw refuse("picture.too-large");
  if (bytes.byteLength === 0) throw refuse("picture.unreadable");
  const source = sharp(bytes, { failOn: "warning", limitInputPixels: mostPicturePixels, pages: 1 });
  const head = await source.metadata().catch((error: unknown) => {
    throw refuse(/pixel limit/i.test(String(error)) ? "picture.too-many-pixels" : "picture.unreadable");
  });
  if (!readableFormats.includes(head.format ?? "")) throw refuse("picture.unreadable");
  if (head.width * head.height > mostPicturePixels) throw refuse("picture.too-many-pixels");
  if (!(Math.max(head.width, head.height) >= leastLongerSidePx)) throw refuse("picture.too-small");
  const { data, info } = await source
    .autoOrient()
    .resize({ width: longestSidePx, height: longestSidePx, fit: "inside", withoutEnlargement: true })
    .flatten({ background: paper })
    .toColourspace("srgb")
    .jpeg({ quality: 84, progressive: true })
    .toBuffer({ resolveWithObject: true })
    .catch((error: unknown) => {
      throw refuse(/pixel limit/i.test(String(error)) ? "picture.too-many-pixels" : "picture.unreadable");
    });
  return {
    mediaType: "image/jpeg",
    content: new Uint8Array(data),
    sha256: bytesSha256(data),
    byteCount: data.byteLength,
    widthPx: info.width,
    heightPx: info.height,
  };
}
