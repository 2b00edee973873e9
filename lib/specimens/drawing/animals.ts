/**
 * Whole animals from the left side: plain, with their muscles and great arteries, or
 * as a mounted skeleton inside the animal's outline.
 */
import { type Plan, plans } from "#lib/specimens/drawing/animal-plans.ts";
import { drawFalconSkeleton } from "#lib/specimens/drawing/falcon.ts";
import { drawFish, drawSnake } from "#lib/specimens/drawing/fish-and-snake.ts";
import { belly, longBone, vertebralColumn } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  at,
  between,
  box,
  contours,
  ellipse,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  type Callout,
  filled,
  finer,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const animals = [
  "horse",
  "cow",
  "sheep",
  "pig",
  "dog",
  "cat",
  "otter",
  "fowl",
  "falcon",
  "fish",
  "snake",
] as const;
export type Animal = (typeof animals)[number];

export const animalViews = ["plain", "muscles", "muscles and arteries", "skeleton"] as const;
export type AnimalView = (typeof animalViews)[number];

function legsOfBird(): Shape[] {
  return [
    stroked("outline", smooth(at("146,158 140,184")), smooth(at("162,152 158,184"))),
    stroked(
      "line",
      straight(at("140,184 124,187")),
      straight(at("140,184 132,191")),
      straight(at("140,184 150,187")),
      straight(at("158,184 142,187")),
      straight(at("158,184 150,191")),
      straight(at("158,184 168,187")),
    ),
  ];
}

function skeletonOf(plan: Plan): Shape[] {
  const [from, to, count] = plan.ribs;
  const steps = 61;
  const spine = along(plan.spine, steps);
  const breast = along(plan.breast, count);
  const ribs = Array.from({ length: count }, (_, index): Shape => {
    const place = spine[Math.round((from + ((to - from) * index) / (count - 1)) * (steps - 1))] ?? [0, 0];
    const foot = breast[index] ?? place;
    const bulge: Point = [(place[0] + foot[0]) / 2 + 5, (place[1] + foot[1]) / 2 - 3];
    return filled("bone", roundBand([place, bulge, foot], plan.bone * 0.42), "fine");
  });
  const limbs = plan.limbs.flatMap((joints): Shape[] =>
    joints
      .slice(1)
      .flatMap((joint, index) =>
        longBone(
          joints[index] ?? joint,
          joint,
          plan.bone * (index === 0 ? 1.2 : index === 1 ? 1.1 : index === 2 ? 0.9 : 0.7),
          1.7,
        ),
      ),
  );
  return [
    ...ribs,
    filled("bone", roundBand(plan.breast, plan.bone * 0.7), "line"),
    ...vertebralColumn(plan.spine, 34, [plan.bone * 1.35, plan.bone * 0.7]),
    filled("bone", ring(plan.skull, 0.9), "line"),
    filled("hollow", ellipse(plan.eye[0], plan.eye[1], plan.bone * 1.3, plan.bone * 1.2), "line"),
    ...limbs,
  ];
}

/** The great arteries as they run along the spine, the neck and the limbs. */
function arteriesOf(plan: Plan): Shape {
  const spine = along(plan.spine, 21).map(([x, y]): Point => [x, y + plan.bone * 3]);
  const [fore = [], hind = []] = plan.limbs;
  const heart: Point = between(plan.breast[1] ?? [0, 0], spine[8] ?? [0, 0], 0.4);
  return stroked(
    "artery",
    smooth([heart, ...spine.slice(7, 17)]),
    smooth([heart, ...spine.slice(1, 6).reverse()]),
    smooth([heart, ...fore.slice(1)]),
    smooth([spine[15] ?? [0, 0], ...hind.slice(1)]),
  );
}

export function drawAnimal(vary: Variation, animal: Animal, view: AnimalView): Sketch {
  const bare = view === "skeleton";
  if (animal === "fish") return drawFish(vary, bare);
  if (animal === "snake") return drawSnake(vary, bare);
  if (animal === "falcon") return bare ? drawFalconSkeleton(vary) : { shapes: [], callouts: [] };
  const plan = plans[animal];
  const outline = vary.loosen(plan.outline, 0.7);
  const body: Shape[] = [
    ...(bare ? [] : plan.farLegs.map((leg) => filled("deep", ring(leg, 0.9), "line"))),
    ...(animal === "fowl" && !bare ? legsOfBird() : []),
    filled(bare ? "paper" : "tissue", ring(outline, 0.9), bare ? "hidden" : "outline"),
  ];
  const surface: Shape[] = [
    stroked("fine", ...plan.lines.map((line) => smooth(line))),
    stroked("hatch", contours(outline, 6, 11, [0.97, 0.94])),
    filled("ink", ellipse(plan.eye[0], plan.eye[1], 1.8)),
  ];
  const flesh = (): Shape[] => [
    ...finer({ shapes: plan.muscles.flatMap(([spine, widths]) => belly(spine, widths)), callouts: [] })
      .shapes,
    ...(view === "muscles and arteries" ? [arteriesOf(plan)] : []),
  ];
  const inside = bare ? skeletonOf(plan) : view === "plain" ? surface : [...surface, ...flesh()];
  const floor = Math.max(...plan.outline.map((point) => point[1]));
  const stand: Shape[] =
    bare && animal !== "fowl" ? [filled("glass", box(60, floor + 2, 202, 5), "fine")] : [];
  return {
    shapes: [...stand, ...body, ...inside],
    callouts: bare ? bonesOf(plan, animal) : animal === "fowl" ? [] : fleshOf(plan, view),
  };
}

function middle(line: readonly Point[] | undefined, first: number): Point {
  return between(line?.[first] ?? [0, 0], line?.[first + 1] ?? [0, 0], 0.5);
}

function bonesOf(plan: Plan, animal: Animal): Callout[] {
  const [fore, hind] = plan.limbs;
  return [
    { structure: "skull", at: plan.skull[1] ?? plan.eye },
    { structure: "vertebral-column", at: plan.spine[4] ?? [0, 0] },
    { structure: "caudal-vertebrae", at: plan.spine.at(-2) ?? [0, 0] },
    { structure: "sternum", at: plan.breast[2] ?? [0, 0] },
    { structure: animal === "fowl" ? "humerus" : "scapula", at: middle(fore, 0) },
    ...(animal === "fowl" ? [] : [{ structure: "humerus", at: middle(fore, 1) }]),
    { structure: "femur", at: middle(hind, 1) },
    { structure: "tibia", at: middle(hind, 2) },
  ];
}

function fleshOf(plan: Plan, view: AnimalView): Callout[] {
  if (view === "plain") return [];
  const muscle = (index: number): Point => plan.muscles[index]?.[0][1] ?? [0, 0];
  const flesh: Callout[] = [
    { structure: "trapezius", at: muscle(0) },
    { structure: "triceps-brachii", at: muscle(1) },
    { structure: "latissimus-dorsi", at: muscle(2) },
    { structure: "biceps-femoris", at: muscle(3) },
  ];
  return view === "muscles"
    ? flesh
    : [
        ...flesh,
        {
          structure: "abdominal-aorta",
          at: [plan.spine[4]?.[0] ?? 0, (plan.spine[4]?.[1] ?? 0) + plan.bone * 3],
        },
        { structure: "femoral-artery", at: middle(plan.limbs[1], 1) },
        { structure: "brachial-artery", at: middle(plan.limbs[0], 1) },
      ];
}
