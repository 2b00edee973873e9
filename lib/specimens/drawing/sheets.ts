/**
 * Sheets in their panes. What a sheet of a series shows is a function of the series,
 * its number and its level, and of nothing else, so it is the same on every page; how
 * it is turned follows from the face that was imaged. Without a level that is known,
 * the pane holds a broken outline.
 */
import { drawEquineDigitSection } from "#lib/specimens/drawing/animal-limb.ts";
import { drawCoronalBrain } from "#lib/specimens/drawing/brain-parts.ts";
import { chooseMotif, type DrawingRequest, titleSays } from "#lib/specimens/drawing/choose.ts";
import { drawFootSection } from "#lib/specimens/drawing/foot-parts.ts";
import { drawSomething } from "#lib/specimens/drawing/neutral.ts";
import { mirrorSketch, moveSketch, type Sketch } from "#lib/specimens/drawing/plate.ts";
import { drawSagittalHead } from "#lib/specimens/drawing/sagittal-head.ts";
import { sagittalHeadLevel, trunkLevel, vertebraNamed } from "#lib/specimens/drawing/sheet-place.ts";
import { drawTransverseHead } from "#lib/specimens/drawing/transverse-head.ts";
import { drawTrunkSection } from "#lib/specimens/drawing/trunk-section.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";
import { centred, drawInPane } from "#lib/specimens/drawing/vessel-jar.ts";

/** Where the drawing of a head cut across has the middle of the eyes. */
const levelOfEyes = 0.58;

type Cut = { content: Sketch | null; halfWidth: number; halfHeight: number };

function cutOf(vary: Variation, request: DrawingRequest): Cut {
  const { sheet, title, side } = request;
  switch (chooseMotif(request)) {
    case "trunk-sheet": {
      const level = trunkLevel(sheet ? sheet.vertebra : vertebraNamed(title));
      return {
        content: level === null ? null : drawTrunkSection(vary, level),
        halfWidth: 150,
        halfHeight: 82,
      };
    }
    case "head-sheet": {
      const atEyes = sheet === null && titleSays(request, /\blevel of the eyes\b|\bper bulbos oculi\b/);
      return {
        content: atEyes ? drawTransverseHead(vary, levelOfEyes) : null,
        halfWidth: 100,
        halfHeight: 92,
      };
    }
    case "sagittal-head-sheet": {
      const level = sagittalHeadLevel(sheet?.fromMedianMm ?? null);
      const head = level === null ? null : drawSagittalHead(vary, level);
      return {
        content: head && moveSketch(head, ([x, y]) => [x - 97, y - 115]),
        halfWidth: 132,
        halfHeight: 122,
      };
    }
    case "coronal-brain-sheet":
      return { content: centred(drawCoronalBrain(vary)), halfWidth: 96, halfHeight: 74 };
    case "foot-sheet": {
      const foot = centred(drawFootSection(vary));
      return { content: side === "left" ? mirrorSketch(foot) : foot, halfWidth: 124, halfHeight: 94 };
    }
    case "equine-digit-sheet": {
      const digit = centred(drawEquineDigitSection(vary));
      return { content: side === "right" ? mirrorSketch(digit) : digit, halfWidth: 76, halfHeight: 94 };
    }
    default:
      return { content: null, halfWidth: 120, halfHeight: 84 };
  }
}

/** Drawings are of the lower face, and of the face towards the left; of the other they are the mirror. */
function isOtherFace(request: DrawingRequest): boolean {
  const face = request.sheet?.imagedFace ?? "";
  return request.sheet?.plane === "sagittal" ? /\bright\b/i.test(face) : /\bupper\b/i.test(face);
}

export function drawSheet(vary: Variation, request: DrawingRequest): Sketch {
  const { content, halfWidth, halfHeight } = cutOf(vary, request);
  const shown = content ?? drawSomething(vary, halfWidth * 0.7, halfHeight * 0.7);
  return drawInPane(isOtherFace(request) ? mirrorSketch(shown) : shown, halfWidth, halfHeight);
}
