/** The pictures of the scenario, made when they are loaded and given to their specimens as from a camera. */
import sharp from "sharp";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { photographs } from "#seed/scenario/photographs.ts";

export function planPhotographs(timeline: Timeline, world: World): void {
  for (const { accessionNumber, day, by, svg } of photographs)
    timeline.add(day, "pictures", async () => {
      const content = await sharp(new TextEncoder().encode(svg())).jpeg({ quality: 90 }).toBuffer();
      await addPicture(world.as(by), {
        specimenId: world.specimen(accessionNumber),
        content: new Uint8Array(content),
      });
    });
}
