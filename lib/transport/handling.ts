/**
 * Who or what lifts the closed crate: one person, two persons, or a pallet truck,
 * by the filters of manual handling. They are filters, not limits: below them a
 * lift close to the body between knuckle and elbow is of low risk for most; other
 * countries set other figures. The lower filter decides, because nobody knows yet who
 * will lift; the higher stands beside it.
 */
import { z } from "zod";
import { MassKg, Sides } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

export const crews = ["men", "women"] as const;
export type Crew = (typeof crews)[number];

/** Knuckle to elbow, close to the body, kg (hse-l23). */
export const onePersonFilterKg: Record<Crew, number> = { men: 25, women: 16 };
const filterWords: Record<Crew, string> = {
  men: "the higher filter, for men",
  women: "the lower filter, for women: anyone who may lift",
};
/** A team lifts less than the sum of its members (hse-l23). */
const shareOfTeam = { 2: 2 / 3, 3: 1 / 2 } as const;
/** Beyond this one person no longer has both ends in hand; common practice, no source. */
const ONE_PERSON_LONGEST_MM = 1200;
/** From here the centre of gravity is marked outside; common practice, no source. */
const MARK_CENTRE_FROM_KG = 1000;
/** Below this a package is apt to be thrown (cci-six-steps, step 2). */
const THROWN_BELOW_KG = 15;

/** @returns kg, the filter for a team: 33.3 for two men, 24 for three women */
export function teamFilterKg(crew: Crew, persons: 1 | 2 | 3): number {
  const share = persons === 1 ? 1 : shareOfTeam[persons];
  return persons * onePersonFilterKg[crew] * share;
}

export const handlingModes = ["one-person", "two-persons", "pallet-truck"] as const;
export type HandlingMode = (typeof handlingModes)[number];

export const handlingCautions = [
  "mark-mass-on-each-face",
  "may-be-thrown-when-light",
  "two-lift-less-than-twice-one",
  "never-lift-by-battens",
  "trolley-or-truck-on-each-floor",
  "topples-onto-two",
  "secure-against-tipping",
  "not-downhill-of-it",
  "keep-upright",
  "mark-centre-of-gravity",
] as const;
export type HandlingCaution = (typeof handlingCautions)[number];

export const handling = working({
  id: "handling",
  title: "Handling",
  about: "Whether the closed crate goes by hand, with two, or on a pallet truck.",
  input: z.object({
    grossMassKg: MassKg.meta({ title: "Gross mass", unit: "kg" }),
    outer: Sides,
    crew: z.enum(crews).default("women").meta({ title: "Filter for" }),
    topplesOntoTwo: z.boolean().default(false).meta({ title: "Tall on a narrow base" }),
    standsUnlashed: z.boolean().default(true).meta({ title: "Stands by itself on the road" }),
    keepUpright: z.boolean().default(false).meta({ title: "Upright only" }),
  }),
  output: z.object({
    mode: z.enum(handlingModes),
    onePersonFilterKg: z.number().meta({ title: "One person, up to", unit: "kg" }),
    twoPersonFilterKg: z.number().meta({ title: "Two persons, up to", unit: "kg" }),
    onePersonHigherKg: z
      .number()
      .default(teamFilterKg("men", 1))
      .meta({ title: "One person by the higher filter, up to", unit: "kg" }),
    twoPersonHigherKg: z
      .number()
      .default(teamFilterKg("men", 2))
      .meta({ title: "Two persons by the higher filter, up to", unit: "kg" }),
    cautions: z.array(z.enum(handlingCautions)),
  }),
  sources: [
    cite("hse-l23", "lifting filters; teams of two and three"),
    cite("cci-six-steps", "step 2: packages under 15 kg"),
    cite("practice", "longest crate for one person; marks"),
  ],
  cautions: [
    "Filters, not limits: for a good lift close to the body between knuckle and elbow, now and then; arms out, stooping or turning they fall to a half and less.",
    "They differ between countries and persons: local rules prevail. Who is pregnant, unwell or not used to lifting lifts less.",
  ],
  compute({ grossMassKg, outer, crew, topplesOntoTwo, standsUnlashed, keepUpright }, note) {
    const oneKg = note("one person", teamFilterKg(crew, 1), "kg", `knuckle to elbow, ${filterWords[crew]}`);
    const twoKg = note("two persons", teamFilterKg(crew, 2), "kg", "two thirds of the sum");
    const higherKg = {
      onePersonHigherKg: note(
        "one person by the higher filter",
        teamFilterKg("men", 1),
        "kg",
        filterWords.men,
      ),
      twoPersonHigherKg: note(
        "two persons by the higher filter",
        teamFilterKg("men", 2),
        "kg",
        filterWords.men,
      ),
    };
    const longestMm = Math.max(outer.lengthMm, outer.widthMm, outer.heightMm);
    const alone = grossMassKg <= oneKg && longestMm <= ONE_PERSON_LONGEST_MM;
    const mode: HandlingMode = alone ? "one-person" : grossMassKg <= twoKg ? "two-persons" : "pallet-truck";
    note("handling", mode, "", `${grossMassKg.toFixed(1)} kg, longest side ${longestMm.toFixed(0)} mm`);
    const applies: Record<HandlingCaution, boolean> = {
      "mark-mass-on-each-face": true,
      "may-be-thrown-when-light": grossMassKg < THROWN_BELOW_KG,
      "two-lift-less-than-twice-one": mode === "two-persons",
      "never-lift-by-battens": mode !== "pallet-truck",
      "trolley-or-truck-on-each-floor": mode === "pallet-truck",
      "topples-onto-two": topplesOntoTwo,
      "secure-against-tipping": !standsUnlashed,
      "not-downhill-of-it": mode === "pallet-truck",
      "keep-upright": keepUpright,
      "mark-centre-of-gravity": grossMassKg > MARK_CENTRE_FROM_KG,
    };
    return {
      mode,
      onePersonFilterKg: oneKg,
      twoPersonFilterKg: twoKg,
      ...higherKg,
      cautions: handlingCautions.filter((caution) => applies[caution]),
    };
  },
});
