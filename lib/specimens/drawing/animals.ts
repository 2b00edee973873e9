/**
 * Animals from the left side: horse, dog, cat, bird, fish and snake, as a preparation
 * of the whole animal with its muscles or organs, or as a mounted skeleton inside
 * the animal's outline.
 */
import { type Plan, plans } from "#lib/specimens/drawing/animal-plans.ts";
import { type AnimalView, drawFish, drawSnake } from "#lib/specimens/drawing/fish-and-snake.ts";
import { belly, longBone, vertebralColumn } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  at,
  band,
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

export const animals = ["horse", "cow", "sheep", "pig", "dog", "cat", "bird", "fish", "snake"] as const;

export type Animal = (typeof animals)[number];

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

function organsOf(plan: Plan): Shape[] {
  const spine = along(plan.spine, 21);
  const at = (share: number, down: number): Point => {
    const [x, y] = spine[Math.round(share * 20)] ?? [0, 0];
    return [x, y + down];
  };
  const start = plan.ribs[0];
  const end = plan.ribs[1];
  const depth = (plan.breast[1]?.[1] ?? 0) - (at(start, 0)[1] ?? 0);
  /** 0 at the first rib, 1 at the last, beyond it the loins. */
  const middle = (share: number) => start + (end - start) * share * 0.86;
  return [
    filled(
      "tissue",
      ring([
        at(middle(0.05), depth * 0.12),
        at(middle(0.5), depth * 0.1),
        at(middle(1.15), depth * 0.2),
        at(middle(0.75), depth * 0.62),
        at(middle(0.1), depth * 0.6),
      ]),
      "line",
    ),
    filled(
      "organ",
      ring([
        at(middle(0.2), depth * 0.5),
        at(middle(0.46), depth * 0.46),
        at(middle(0.56), depth * 0.7),
        at(middle(0.38), depth * 0.9),
        at(middle(0.22), depth * 0.74),
      ]),
      "line",
    ),
    filled(
      "deep",
      ring([
        at(middle(0.8), depth * 0.5),
        at(middle(1.15), depth * 0.3),
        at(middle(1.2), depth * 0.6),
        at(middle(0.95), depth * 0.86),
      ]),
      "line",
    ),
    filled(
      "muscle",
      ring([
        at(middle(1.2), depth * 0.34),
        at(middle(1.55), depth * 0.3),
        at(middle(1.6), depth * 0.62),
        at(middle(1.25), depth * 0.74),
      ]),
      "line",
    ),
    filled(
      "organ",
      ellipse(
        at(middle(1.75), depth * 0.22)[0],
        at(middle(1.75), depth * 0.22)[1],
        depth * 0.16,
        depth * 0.1,
      ),
      "line",
    ),
    stroked(
      "artery",
      smooth([
        at(middle(0.4), depth * 0.46),
        at(middle(0.5), depth * 0.2),
        at(middle(0.9), depth * 0.1),
        at(middle(1.8), depth * 0.1),
      ]),
    ),
  ];
}

export function drawAnimal(vary: Variation, animal: Animal, view: AnimalView): Sketch {
  if (animal === "fish") return drawFish(vary, view);
  if (animal === "snake") return drawSnake(vary, view);
  const plan = plans[animal];
  const outline = vary.loosen(plan.outline, 0.7);
  const bare = view === "skeleton";
  const body: Shape[] = [
    ...(bare ? [] : plan.farLegs.map((leg) => filled("deep", ring(leg, 0.9), "line"))),
    ...(animal === "bird" && !bare ? legsOfBird() : []),
    filled(bare ? "paper" : "tissue", ring(outline, 0.9), bare ? "hidden" : "outline"),
  ];
  const eye: Shape[] = [filled("ink", ellipse(plan.eye[0], plan.eye[1], 1.8))];
  const inside: Shape[] = bare
    ? skeletonOf(plan)
    : view === "organs"
      ? [
          ...organsOf(plan),
          ...eye,
          stroked("fine", ...plan.lines.map((line) => smooth(line))),
          stroked("hatch", contours(outline, 6, 11, [0.97, 0.94])),
        ]
      : [
          stroked("fine", ...plan.lines.map((line) => smooth(line))),
          ...finer({ shapes: plan.muscles.flatMap(([spine, widths]) => belly(spine, widths)), callouts: [] })
            .shapes,
          ...eye,
        ];
  const floor = Math.max(...plan.outline.map((point) => point[1]));
  const stand: Shape[] =
    bare && animal !== "bird"
      ? [
          filled(
            "glass",
            band(
              [
                [60, floor + 4],
                [160, floor + 4],
                [262, floor + 4],
              ],
              2.6,
            ),
            "fine",
          ),
        ]
      : [];
  const shoulder = plan.limbs[0]?.[1] ?? [0, 0];
  const callouts: Callout[] = bare
    ? [
        { text: "cranium", at: plan.skull[1] ?? plan.eye },
        { text: "columna vertebralis", at: plan.spine[4] ?? [0, 0] },
        { text: "sternum", at: plan.breast[2] ?? [0, 0] },
        {
          text: animal === "bird" ? "humerus" : "scapula",
          at: [
            (shoulder[0] + (plan.limbs[0]?.[0]?.[0] ?? 0)) / 2,
            (shoulder[1] + (plan.limbs[0]?.[0]?.[1] ?? 0)) / 2,
          ],
        },
        {
          text: "femur",
          at: [
            ((plan.limbs[1]?.[1]?.[0] ?? 0) + (plan.limbs[1]?.[2]?.[0] ?? 0)) / 2,
            ((plan.limbs[1]?.[1]?.[1] ?? 0) + (plan.limbs[1]?.[2]?.[1] ?? 0)) / 2,
          ],
        },
      ]
    : [];
  return { shapes: [...stand, ...body, ...inside], callouts };
}
