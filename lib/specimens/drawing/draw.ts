/**
 * The one door to the schematic plates: a specimen's facts in, a drawing out. The
 * same facts give the same drawing for ever. What has a side is turned to the
 * specimen's, what is kept in fluid stands in its jar, a sheet lies in its pane.
 */
import {
  drawBowel,
  drawKidney,
  drawKidneyHalved,
  drawLiver,
  drawPancreas,
  drawSpleen,
  drawStomach,
} from "#lib/specimens/drawing/abdomen-organs.ts";
import { drawEquineFoot } from "#lib/specimens/drawing/animal-limb.ts";
import {
  drawAirSacCast,
  drawDogOrgans,
  drawFishOrgans,
  drawRuminantStomach,
} from "#lib/specimens/drawing/animal-organs.ts";
import { type Animal, animals, drawAnimal } from "#lib/specimens/drawing/animals.ts";
import {
  drawCaecum,
  drawLiverBelow,
  drawStomachOpened,
  drawUpperAbdomen,
  drawUrinarySystem,
} from "#lib/specimens/drawing/belly-parts.ts";
import { drawBody, drawNervousSystem, drawSeatedBody, systems } from "#lib/specimens/drawing/body.ts";
import {
  drawFemur,
  drawPelvis,
  drawRibCage,
  drawScapula,
  drawVertebra,
} from "#lib/specimens/drawing/bones.ts";
import { drawBrainBelow, drawBrainSide, drawSpinalCord } from "#lib/specimens/drawing/brain.ts";
import {
  drawBrainstem,
  drawHemisphereFibres,
  drawHemisphereInside,
} from "#lib/specimens/drawing/brain-parts.ts";
import { drawCast } from "#lib/specimens/drawing/cast.ts";
import {
  animalOf,
  chooseMotif,
  type DrawingRequest,
  type Motif,
  shows,
  titleSays,
} from "#lib/specimens/drawing/choose.ts";
import { drawFootArteries } from "#lib/specimens/drawing/foot-parts.ts";
import { drawHalfPelvis } from "#lib/specimens/drawing/half-pelvis.ts";
import { drawHandBones, drawWristLigaments } from "#lib/specimens/drawing/hand-bones.ts";
import { drawHead, drawSkullFront, drawSkullSide } from "#lib/specimens/drawing/head.ts";
import { drawGlutealRegion, drawGroin } from "#lib/specimens/drawing/hip-parts.ts";
import {
  drawForearmFromBehind,
  drawPoplitealFossa,
  drawShoulderJoint,
  drawSole,
} from "#lib/specimens/drawing/limb-parts.ts";
import { drawKnee, drawLowerLimb } from "#lib/specimens/drawing/lower-limb.ts";
import {
  drawDiaphragm,
  drawHeartWithLungs,
  drawLung,
  drawThoracicWall,
} from "#lib/specimens/drawing/lung.ts";
import {
  drawClosedBox,
  drawOnPlinth,
  drawOnStand,
  drawSomething,
  drawUnderDome,
} from "#lib/specimens/drawing/neutral.ts";
import {
  type Drawing,
  mirrorSketch,
  type Sketch,
  setOnPlate,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import { drawSagittalHead } from "#lib/specimens/drawing/sagittal-head.ts";
import { drawSheet } from "#lib/specimens/drawing/sheets.ts";
import { drawSkeleton } from "#lib/specimens/drawing/skeleton.ts";
import {
  drawLowerJaw,
  drawLowerJaws,
  drawNewbornSkull,
  drawSkullApart,
  drawTemporalBone,
} from "#lib/specimens/drawing/skull-bones.ts";
import { drawSlides, type SlideSubject } from "#lib/specimens/drawing/slide.ts";
import { drawSpineWithPelvis } from "#lib/specimens/drawing/spine.ts";
import {
  drawHeart,
  drawHeartOpened,
  drawHeartWithWindow,
  drawLarynx,
  drawLungs,
} from "#lib/specimens/drawing/thorax-organs.ts";
import {
  drawLarynxOpened,
  drawNeck,
  drawOrbitFromAbove,
  drawPharynxFromBehind,
} from "#lib/specimens/drawing/throat.ts";
import { drawPalm, drawUpperLimb, drawUpperLimbWithGirdle } from "#lib/specimens/drawing/upper-limb.ts";
import { drawUterus } from "#lib/specimens/drawing/uterus.ts";
import { type Variation, variation } from "#lib/specimens/drawing/variation.ts";
import { centred, drawInJar } from "#lib/specimens/drawing/vessel-jar.ts";

type Draw = (vary: Variation, request: DrawingRequest) => Sketch;

/** How each motif is drawn; for what has a side, which one the drawing is of. */
const plates: Record<Motif, Draw | { of: "left" | "right"; draw: Draw }> = {
  "neutral-jar": (vary) => drawSomething(vary, 38, 52),
  "neutral-sheet": drawSheet,
  "neutral-dome": drawUnderDome,
  "neutral-stand": drawOnStand,
  "neutral-plinth": drawOnPlinth,
  "closed-box": drawClosedBox,
  slide: (vary, request) => drawSlides(vary, slideSubjectOf(request), countIn(request)),
  body: (vary, request) =>
    drawBody(
      vary,
      systems.filter((system) => titleSays(request, wordsOfSystem[system])),
    ),
  "seated-body": (vary, request) => drawSeatedBody(vary, titleSays(request, wordsOfSystem.nerves)),
  "nervous-system": drawNervousSystem,
  "urinary-system": (vary, request) => drawUrinarySystem(vary, shows(request, "prostate")),
  "heart-with-lungs": drawHeartWithLungs,
  "upper-abdomen": drawUpperAbdomen,
  brainstem: drawBrainstem,
  "hemisphere-fibres": { of: "left", draw: drawHemisphereFibres },
  "hemisphere-inside": { of: "right", draw: drawHemisphereInside },
  "brain-below": drawBrainBelow,
  brain: drawBrainSide,
  "spinal-cord": (vary, request) =>
    isWet(request) ? turnSketch(drawSpinalCord(vary), Math.PI / 2) : drawSpinalCord(vary),
  "heart-window": drawHeartWithWindow,
  "heart-opened": drawHeartOpened,
  heart: drawHeart,
  lung: (vary, { side }) => drawLung(vary, side === "left" ? "left" : "right"),
  lungs: drawLungs,
  "larynx-opened": drawLarynxOpened,
  larynx: (vary, request) => drawLarynx(vary, shows(request, "thyroid-gland")),
  pharynx: drawPharynxFromBehind,
  diaphragm: drawDiaphragm,
  "thoracic-wall": { of: "right", draw: drawThoracicWall },
  "stomach-opened": drawStomachOpened,
  stomach: drawStomach,
  caecum: drawCaecum,
  colon: (vary) => drawBowel(vary, false),
  bowel: (vary) => drawBowel(vary, true),
  "liver-below": drawLiverBelow,
  liver: drawLiver,
  spleen: drawSpleen,
  pancreas: drawPancreas,
  "kidney-halved": { of: "left", draw: drawKidneyHalved },
  kidney: { of: "left", draw: (vary, request) => drawKidney(vary, shows(request, "suprarenal-gland")) },
  uterus: drawUterus,
  "half-pelvis": {
    of: "right",
    draw: (vary, request) =>
      drawHalfPelvis(vary, titleSays(request, /\b(female|feminina)\b/) ? "female" : "male"),
  },
  "half-head": { of: "right", draw: (vary) => drawSagittalHead(vary, 0.5) },
  neck: drawNeck,
  face: { of: "left", draw: drawHead },
  orbit: { of: "left", draw: drawOrbitFromAbove },
  "upper-limb-with-girdle": { of: "right", draw: drawUpperLimbWithGirdle },
  "upper-limb": { of: "right", draw: drawUpperLimb },
  "forearm-from-behind": { of: "right", draw: drawForearmFromBehind },
  palm: { of: "right", draw: drawPalm },
  "shoulder-joint": { of: "right", draw: drawShoulderJoint },
  knee: { of: "right", draw: drawKnee },
  "lower-limb-lymph": { of: "left", draw: (vary) => drawLowerLimb(vary, "lymph vessels") },
  "lower-limb": { of: "left", draw: (vary) => drawLowerLimb(vary, "vessels and nerves") },
  "gluteal-region": { of: "right", draw: drawGlutealRegion },
  "popliteal-fossa": { of: "right", draw: drawPoplitealFossa },
  groin: { of: "left", draw: drawGroin },
  sole: { of: "right", draw: drawSole },
  "hand-bones": { of: "right", draw: drawHandBones },
  "wrist-ligaments": { of: "right", draw: drawWristLigaments },
  "lower-jaws": (vary, request) => drawLowerJaws(vary, Math.max(2, countIn(request))),
  "lower-jaw": (vary) => drawLowerJaw(vary),
  "skull-newborn": drawNewbornSkull,
  "skull-apart": drawSkullApart,
  "temporal-bone": { of: "right", draw: drawTemporalBone },
  "skull-front": drawSkullFront,
  skull: drawSkullSide,
  "spine-with-pelvis": drawSpineWithPelvis,
  vertebra: drawVertebra,
  femur: { of: "right", draw: drawFemur },
  scapula: { of: "right", draw: drawScapula },
  "bony-pelvis": drawPelvis,
  "rib-cage": drawRibCage,
  skeleton: drawSkeleton,
  animal: (vary, request) => drawnAnimal(vary, request, false),
  "animal-skeleton": (vary, request) => drawnAnimal(vary, request, true),
  "equine-foot": { of: "left", draw: drawEquineFoot },
  "ruminant-stomach": drawRuminantStomach,
  "dog-organs": drawDogOrgans,
  "fish-organs": drawFishOrgans,
  "cast-lungs": (vary, request) => drawCast(vary, "lungs", shows(request, "pulmonary-trunk")),
  "cast-kidney": { of: "left", draw: (vary) => drawCast(vary, "kidney") },
  "cast-liver": (vary) => drawCast(vary, "liver"),
  "cast-heart": (vary) => drawCast(vary, "heart"),
  "cast-placenta": (vary) => drawCast(vary, "placenta"),
  "cast-foot": { of: "right", draw: drawFootArteries },
  "cast-air-sacs": drawAirSacCast,
  "trunk-sheet": drawSheet,
  "head-sheet": drawSheet,
  "sagittal-head-sheet": drawSheet,
  "coronal-brain-sheet": drawSheet,
  "foot-sheet": drawSheet,
  "equine-digit-sheet": drawSheet,
};

const wordsOfSystem = {
  muscles: /\b(muscles|musculi)\b/,
  arteries: /\b(arteries|vessels|arteriae|vasa)\b/,
  nerves: /\b(nervous|nerves|nervosum|nervi)\b/,
} as const;

const subjects: readonly (readonly [words: RegExp, subject: SlideSubject])[] = [
  [/^kidney, cortex\b|^ren, cortex\b/, "kidney"],
  [/^eyeball\b|^bulbus oculi\b/, "eyeball"],
  [/^cervical spinal cord\b|^medulla spinalis cervicalis\b/, "spinal cord"],
  [/^(skeletal|striated) muscle\b/, "muscle"],
  [/^compact bone\b/, "bone"],
  [/^(parotid|salivary|thyroid) gland\b|^pancreas\b/, "gland"],
  [/^cerebral cortex\b|^cortex cerebri\b/, "nerve cells"],
];

function slideSubjectOf(request: DrawingRequest): SlideSubject | null {
  return subjects.find(([words]) => titleSays(request, words))?.[1] ?? null;
}

const numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight"] as const;

/** The number that the title states in words, 1 where it states none. */
function countIn(request: DrawingRequest): number {
  const said = numbers.findIndex((word) => titleSays(request, new RegExp(`\\b${word}\\b`)));
  return Math.max(said + 1, 1);
}

function drawnAnimal(vary: Variation, request: DrawingRequest, bare: boolean): Sketch {
  const found = animalOf(request.species);
  const animal = animals.find((each) => each === found) satisfies Animal | undefined;
  if (animal === undefined) return drawOnStand(vary);
  const [muscles, arteries] = [wordsOfSystem.muscles, wordsOfSystem.arteries].map((words) =>
    titleSays(request, words),
  );
  return drawAnimal(
    vary,
    animal,
    bare ? "skeleton" : !muscles ? "plain" : arteries ? "muscles and arteries" : "muscles",
  );
}

function isWet({ kind, preparation }: DrawingRequest): boolean {
  return preparation === "fluid-preserved" || kind === "fluid-preserved specimen";
}

export function drawSpecimen(request: DrawingRequest, named = false): Drawing {
  const motif = chooseMotif(request);
  const plate = plates[motif];
  const vary = variation(request.sheet?.code ?? request.seed);
  const sketch = typeof plate === "function" ? plate(vary, request) : plate.draw(vary, request);
  const other = typeof plate === "function" ? null : plate.of === "left" ? "right" : "left";
  const turned = other !== null && request.side === other ? mirrorSketch(sketch) : sketch;
  const isDry = !isWet(request) || motif === "slide" || motif === "closed-box" || motif.endsWith("sheet");
  const kept = isDry ? turned : drawInJar(variation(`jar ${request.seed}`), centred(turned));
  const names = new Map(request.shown.map(({ structure, latin }) => [structure, latin]));
  return setOnPlate(kept, named ? names : null);
}
