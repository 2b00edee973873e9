/**
 * Giving a specimen its picture. The picture before it stays stored, so that an
 * earlier state can still be looked at.
 */
import { z } from "zod";
import { command } from "#lib/people/command.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { readPicture } from "#lib/specimens/picture.ts";

/** The bytes of the file as it was sent. */
export const PictureInput = z.object({
  specimenId: Id,
  content: z.instanceof(Uint8Array, { error: "picture.unreadable" }),
});
export type PictureInput = z.infer<typeof PictureInput>;

export const addPicture = command(
  "addPicture",
  PictureInput,
  async ({ transaction }, { specimenId, content }) => {
    const specimen = await transaction.specimen.findUnique({
      where: { id: specimenId },
      select: { id: true },
    });
    if (!specimen) throw notFound("specimen");
    const picture = await readPicture(content);
    const id = newId();
    await transaction.storedFile.create({ data: { id, ...picture } });
    await transaction.specimen.update({ where: { id: specimenId }, data: { pictureId: id } });
    return { id, widthPx: picture.widthPx, heightPx: picture.heightPx };
  },
);
