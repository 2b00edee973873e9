/** Pictures on their way in: what is kept of them, and which are refused. */
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { leastLongerSidePx, longestSidePx, readPicture } from "#lib/specimens/picture.ts";
import { mostPictureBytes } from "#lib/specimens/schema.ts";

const plain = (width: number, height: number, channels: 3 | 4 = 3) =>
  sharp({ create: { width, height, channels, background: { r: 200, g: 60, b: 40, alpha: 0.5 } } });
const noisy = (width: number, height: number) =>
  sharp(
    Buffer.from(
      Uint8Array.from({ length: width * height * 3 }, (_, at) => (Math.imul(at, 2_654_435_761) >>> 13) & 255),
    ),
    {
      raw: { width, height, channels: 3 },
    },
  );

describe("a picture that is taken", () => {
  test.each(["jpeg", "png", "webp", "tiff"] as const)("as %s becomes a JPEG", async (format) => {
    const picture = await readPicture(await plain(300, 200).toFormat(format).toBuffer());
    expect(picture).toMatchObject({
      mediaType: "image/jpeg",
      widthPx: 300,
      heightPx: 200,
      byteCount: picture.content.byteLength,
    });
    expect(picture.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect((await sharp(picture.content).metadata()).format).toBe("jpeg");
  });

  test("is made no larger than a screen needs, and never enlarged", async () => {
    const wide = await readPicture(await plain(6_000, 3_000).jpeg().toBuffer());
    expect([wide.widthPx, wide.heightPx]).toEqual([longestSidePx, longestSidePx / 2]);
    const tall = await readPicture(await plain(100, 4_800).png().toBuffer());
    expect([tall.widthPx, tall.heightPx]).toEqual([50, longestSidePx]);
  });

  test("keeps nothing of the file beside the image", async () => {
    const source = await plain(600, 400)
      .withExif({
        IFD0: { Copyright: "somebody", Model: "a device" },
        IFD3: { GPSLatitude: "51/1 30/1 0/1" },
      })
      .withXmp("<x:xmpmeta xmlns:x='adobe:ns:meta/'>somebody</x:xmpmeta>")
      .jpeg()
      .toBuffer();
    expect((await sharp(source).metadata()).exif).toBeDefined();
    const picture = await readPicture(source);
    const { exif, xmp, iptc, orientation } = await sharp(picture.content).metadata();
    expect([exif, xmp, iptc, orientation]).toEqual([undefined, undefined, undefined, undefined]);
    expect(Buffer.from(picture.content).includes("somebody")).toBe(false);
  });

  test("is turned upright", async () => {
    const lying = await plain(400, 200).jpeg().withMetadata({ orientation: 6 }).toBuffer();
    const picture = await readPicture(lying);
    expect([picture.widthPx, picture.heightPx]).toEqual([200, 400]);
  });

  test("stands on white where it was transparent", async () => {
    const clear = await sharp({
      create: { width: 240, height: 8, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
    })
      .png()
      .toBuffer();
    const { data } = await sharp((await readPicture(clear)).content)
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(Math.min(...data)).toBeGreaterThan(250);
  });
});

describe("a picture that is refused", () => {
  const refused = async (bytes: Uint8Array, reason: string) =>
    await expect(readPicture(bytes)).rejects.toMatchObject({
      kind: "invalid",
      reason,
      issues: [{ path: "content", message: reason }],
    });

  test("holds nothing", async () => await refused(new Uint8Array(), "picture.unreadable"));
  test("is text", async () => await refused(Buffer.from("not a picture at all"), "picture.unreadable"));
  test("is a drawing with instructions", async () =>
    await refused(
      Buffer.from(
        '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><image href="file:///etc/passwd"/></svg>',
      ),
      "picture.unreadable",
    ));
  test.each(["gif", "avif"] as const)(
    "is of another kind: %s",
    async (format) => await refused(await plain(16, 16).toFormat(format).toBuffer(), "picture.unreadable"),
  );

  test.each([
    [1, 1],
    [16, 16],
    [leastLongerSidePx - 1, leastLongerSidePx - 1],
  ])("has %d by %d pixels", async (width, height) => {
    await refused(await plain(width, height).png().toBuffer(), "picture.too-small");
  });

  test("is measured by its longer side", async () => {
    const narrow = await readPicture(await plain(40, leastLongerSidePx).png().toBuffer());
    expect([narrow.widthPx, narrow.heightPx]).toEqual([40, leastLongerSidePx]);
  });

  test("is larger than 15 MB", async () =>
    await refused(new Uint8Array(mostPictureBytes + 1), "picture.too-large"));

  test("has more than 60 million pixels, however small its file", async () => {
    const bomb = await plain(10_000, 7_000).png({ compressionLevel: 9 }).toBuffer();
    expect(bomb.byteLength).toBeLessThan(mostPictureBytes);
    await refused(bomb, "picture.too-many-pixels");
  });

  test.each(["jpeg", "png", "webp"] as const)("is a %s that breaks off", async (format) => {
    const whole = await noisy(400, 300).toFormat(format).toBuffer();
    await refused(whole.subarray(0, Math.floor(whole.byteLength / 2)), "picture.unreadable");
  });

  test("has damaged bytes in its midst", async () => {
    const whole = await noisy(400, 300).png().toBuffer();
    const damaged = Buffer.from(whole);
    damaged.fill(0, Math.floor(whole.byteLength / 2), Math.floor(whole.byteLength / 2) + 2_000);
    await refused(damaged, "picture.unreadable");
  });
});
