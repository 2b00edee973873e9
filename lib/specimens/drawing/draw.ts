/**
 * The one door to the schematic plates: a specimen's facts in, a drawing out. The
 * same facts give the same drawing for ever. A left-sided specimen is the mirrored
 * right one, what is kept in fluid stands in its jar, a sheet lies in its pane.
 */
import {
  drawBowel,
  drawKidney,
  drawKidneyHalved,
  drawLiver,
  drawPancreas,
  drawSpleen,
  drawStomach,
  drawUterus,
} from "#lib/specimens/drawing/abdomen-organs.ts";
import { drawEquineFoot } from "#lib/specimens/drawing/animal-limb.ts";
import { type Animal, animals, drawAnimal } from "#lib/specimens/drawing/animals.ts";
import { type BodySystem, drawBody, systems } from "#lib/specimens/drawing/body.ts";
import {
  drawFemur,
  drawPelvis,
  drawRibCage,
  drawScapula,
  drawVertebra,
} from "#lib/specimens/drawing/bones.ts";
import { drawBrainBelow, drawBrainSide, drawSpinalCord } from "#lib/specimens/drawing/brain.ts";
import { type CastOrgan, drawCast } from "#lib/specimens/drawing/cast.ts";
import { animalOf, chooseMotif, type DrawingRequest, type Motif } from "#lib/specimens/drawing/choose.ts";
import { drawHead, drawSkullFront, drawSkullSide } from "#lib/specimens/drawing/head.ts";
import { drawLimbSection } from "#lib/specimens/drawing/limb-section.ts";
import { drawFoot, drawKnee, drawLowerLimb } from "#lib/specimens/drawing/lower-limb.ts";
import {
  type Drawing,
  mirrorSketch,
  moveSketch,
  type Sketch,
  setOnPlate,
} from "#lib/specimens/drawing/plate.ts";
import { drawSagittalHead } from "#lib/specimens/drawing/sagittal-head.ts";
import { drawSkeleton } from "#lib/specimens/drawing/skeleton.ts";
import { drawSlide, type Tissue } from "#lib/specimens/drawing/slide.ts";
import { drawHeart, drawHeartOpened, drawLarynx, drawLungs } from "#lib/specimens/drawing/thorax-organs.ts";
import { drawTransverseHead } from "#lib/specimens/drawing/transverse-head.ts";
import { drawTrunkSection } from "#lib/specimens/drawing/trunk-section.ts";
import { drawHand, drawUpperLimb } from "#lib/specimens/drawing/upper-limb.ts";
import { type Variation, variation } from "#lib/specimens/drawing/variation.ts";
import { centred, drawClosedBox, drawInJar, drawInPane } from "#lib/specimens/drawing/vessel-jar.ts";

const plain: Partial<Record<Motif, (vary: Variation) => Sketch>> = {
  "closed-box": drawClosedBox,
  skeleton: drawSkeleton,
  "equine-foot": drawEquineFoot,
  "upper-limb": drawUpperLimb,
  hand: drawHand,
  "lower-limb": drawLowerLimb,
  foot: drawFoot,
  knee: drawKnee,
  head: drawHead,
  skull: drawSkullSide,
  "skull-front": drawSkullFront,
  brain: drawBrainSide,
  "brain-below": drawBrainBelow,
  "spinal-cord": drawSpinalCord,
  vertebra: drawVertebra,
  femur: drawFemur,
  scapula: drawScapula,
  pelvis: drawPelvis,
  "rib-cage": drawRibCage,
  heart: drawHeart,
  "heart-opened": drawHeartOpened,
  lungs: drawLungs,
  larynx: drawLarynx,
  liver: drawLiver,
  stomach: drawStomach,
  kidney: drawKidney,
  "kidney-halved": drawKidneyHalved,
  spleen: drawSpleen,
  pancreas: drawPancreas,
  bowel: drawBowel,
  uterus: drawUterus,
};

/** Drawings that have a side: a left one is the right one in a mirror. */
const sided: ReadonlySet<Motif> = new Set<Motif>([
  "upper-limb",
  "hand",
  "lower-limb",
  "foot",
  "knee",
  "kidney",
  "kidney-halved",
  "femur",
  "scapula",
  "limb-sheet",
  "cast-kidney",
]);

function wordsOf(request: DrawingRequest): string {
  return [request.title, request.kind, ...(request.regions ?? []), ...(request.structures ?? [])]
    .join(" ")
    .toLowerCase()
    .replaceAll("-", " ");
}

function systemOf(request: DrawingRequest, vary: Variation): BodySystem {
  const words = wordsOf(request);
  if (/nerv|neur|cord/.test(words)) return "nerves";
  if (/vascul|vessel|arter|vein|circulat|cardio/.test(words)) return "vessels";
  if (/musc/.test(words)) return "muscles";
  if (/viscer|organ|digest|aliment|urin|trunk|thorax|abdom/.test(words)) return "organs";
  return vary.pick(systems);
}

function tissueOf(request: DrawingRequest, vary: Variation): Tissue {
  const words = wordsOf(request);
  if (/musc|heart|myocard/.test(words)) return "muscle";
  if (/nerv|brain|cord|cereb|ganglion|retina/.test(words)) return "nerve";
  if (/bone|osteo|cartil/.test(words)) return "bone";
  if (/gland|liver|kidney|pancrea|thyroid|skin|gut|intestin/.test(words)) return "gland";
  return vary.pick(["gland", "muscle", "nerve", "bone"]);
}

function drawnAnimal(request: DrawingRequest, vary: Variation, bare: boolean): Sketch {
  const found = animalOf(request.species);
  const animal = animals.find((each) => each === found) satisfies Animal | undefined;
  if (animal === undefined) return drawClosedBox(vary);
  const words = wordsOf(request);
  const organs = /viscer|organ|situs/.test(words) || (!/musc/.test(words) && vary.chance(0.4));
  return drawAnimal(vary, animal, bare ? "skeleton" : organs ? "organs" : "muscles");
}

function sheetOf(motif: Motif, vary: Variation, level: number): Sketch {
  if (motif === "sagittal-head-sheet") {
    return drawInPane(
      moveSketch(drawSagittalHead(vary, level), ([x, y]) => [x - 97, y - 115]),
      132,
      122,
    );
  }
  if (motif === "head-sheet") return drawInPane(drawTransverseHead(vary, level), 100, 92);
  if (motif === "limb-sheet") return drawInPane(drawLimbSection(vary, level), 92, 68);
  return drawInPane(drawTrunkSection(vary, level), 150, 82);
}

function sketchOf(motif: Motif, request: DrawingRequest): Sketch {
  const vary = variation(request.seed);
  const direct = plain[motif];
  if (direct !== undefined) return direct(vary);
  if (motif === "body") return drawBody(vary, systemOf(request, vary));
  if (motif === "slide") return drawSlide(vary, tissueOf(request, vary));
  if (motif === "animal" || motif === "animal-skeleton") {
    return drawnAnimal(request, vary, motif === "animal-skeleton");
  }
  if (motif.startsWith("cast-")) return drawCast(vary, motif.slice("cast-".length) as CastOrgan);
  const level = request.level ?? vary.share();
  return sheetOf(motif, vary, level);
}

/** @throws {RangeError} when the level of a sheet is not between 0 and 1 */
export function drawSpecimen(request: DrawingRequest): Drawing {
  const { level } = request;
  if (level !== undefined && !(level >= 0 && level <= 1)) {
    throw new RangeError("the level of a sheet lies between 0 and 1");
  }
  const motif = chooseMotif(request);
  const sketch = sketchOf(motif, request);
  const turned = sided.has(motif) && /left|sinist/i.test(request.side ?? "") ? mirrorSketch(sketch) : sketch;
  const wet = /fluid|formal|alcohol|ethanol|glycerol/i.test(`${request.kind} ${request.preparation ?? ""}`);
  const kept =
    wet && motif !== "slide" && motif !== "closed-box" && !motif.endsWith("sheet")
      ? drawInJar(variation(`jar ${request.seed}`), centred(turned))
      : turned;
  return setOnPlate(kept, request.named ?? false, request.small ?? false);
}
