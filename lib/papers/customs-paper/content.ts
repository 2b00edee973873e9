/**
 * The content of the two papers for customs: a pro-forma invoice and the list of goods
 * for a temporary-import carnet. Both are of one stage that leaves the country. A
 * tariff code is only what somebody decided, with who and when; a value is only the
 * replacement cost on record. What is not there is null and never guessed.
 */
import { z } from "zod";
import {
  type CaseSpecimen,
  type CaseTariff,
  numberedCrates,
  type PaperCase,
  paperCrate,
  paperSpecimen,
  stageOf,
  wayOf,
} from "#lib/papers/paper-case.ts";
import { PaperCrate, PaperHead, PaperSpecimen, PaperWay } from "#lib/papers/paper-content.ts";
import { groupBy } from "#lib/papers/row-groups.ts";
import { DateText } from "#lib/platform/dates.ts";
import type { Direction } from "#lib/shipments/schema.ts";

export const customsKinds = ["pro-forma invoice", "carnet list"] as const;
export type CustomsKind = (typeof customsKinds)[number];

const Value = z.strictObject({
  minor: z.number().int(),
  currency: z.string(),
  basis: z.string(),
  statedOn: DateText,
});
const Goods = PaperSpecimen.omit({ condition: true })
  .extend({
    human: z.boolean(),
    scientificName: z.string(),
    preparation: z.string(),
    fluidName: z.string().nullable(),
    hazards: z.array(z.string()),
    massKg: z.number().nullable(),
    originCountry: z.string().nullable(),
    crate: z.string(),
    value: Value.nullable(),
  })
  .strict();
export type Goods = z.infer<typeof Goods>;

const numbers = z.array(z.number().int().min(1));

export const CustomsContent = PaperHead.extend({
  format: z.literal("customs-1"),
  kind: z.enum(customsKinds),
  way: PaperWay,
  purpose: z.string(),
  returnBy: DateText,
  crates: z.array(PaperCrate),
  goods: z.array(Goods).min(1),
  /** What was decided for which goods, by their number in the list. */
  decisions: z.array(
    z.strictObject({
      countryCode: z.string(),
      code: z.string(),
      decidedBy: z.string(),
      decidedOn: DateText,
      note: z.string(),
      numbers,
    }),
  ),
  /** At each end of the way, the goods without a decision. */
  undecided: z.array(z.strictObject({ countryCode: z.string(), numbers })),
}).strict();
export type CustomsContent = z.infer<typeof CustomsContent>;

/** Whether a way leaves the country. */
export const crossesBorder = ({ house, venue }: PaperCase, through: readonly string[]): boolean =>
  new Set([house.countryCode, venue.countryCode, ...through]).size > 1;

/** Stages that leave the country with something to name. A carnet's list is drawn up once, for the way out. */
export const customsSubjects =
  (directions: readonly Direction[]) =>
  (paperCase: PaperCase): string[] =>
    paperCase.specimens.some(({ isLive }) => isLive)
      ? paperCase.stages
          .filter(
            ({ direction, through }) => directions.includes(direction) && crossesBorder(paperCase, through),
          )
          .map(({ id }) => id)
      : [];

function toGoods(specimen: CaseSpecimen, crate: string): Goods {
  const { condition: _condition, ...named } = paperSpecimen(specimen);
  const { cost, hazards, ...goods } = specimen.goods;
  return { ...named, ...goods, hazards: [...hazards], crate, value: cost && { ...cost } };
}

function decisionsOf(
  tariffs: readonly CaseTariff[],
  numberOf: ReadonlyMap<string, number>,
): CustomsContent["decisions"] {
  const own = tariffs.filter(({ specimenId }) => numberOf.has(specimenId));
  return groupBy(own, ({ countryCode, code, decidedBy, decidedOn, note }) =>
    JSON.stringify([countryCode, code, decidedBy, decidedOn, note]),
  ).map(({ first: { countryCode, code, decidedBy, decidedOn, note }, rows }) => ({
    countryCode,
    code,
    decidedBy,
    decidedOn,
    note,
    numbers: rows.flatMap(({ specimenId }) => numberOf.get(specimenId) ?? []).sort((a, b) => a - b),
  }));
}

export function customsContent(
  kind: CustomsKind,
  paperCase: PaperCase,
  stageId: string,
  head: PaperHead,
): CustomsContent {
  const stage = stageOf(paperCase, stageId);
  const crates = numberedCrates(paperCase);
  const specimens = paperCase.specimens.filter(({ isLive }) => isLive);
  const numberOf = new Map(specimens.map(({ id }, index) => [id, index + 1]));
  const decisions =
    kind === "carnet list"
      ? []
      : decisionsOf(
          paperCase.tariffs.filter((tariff) => tariff.stageId === stageId),
          numberOf,
        );
  const ends = [...new Set([paperCase.house.countryCode, paperCase.venue.countryCode])];
  const undecided = (countryCode: string) => {
    const decided = new Set(
      decisions.filter((one) => one.countryCode === countryCode).flatMap((one) => one.numbers),
    );
    return [...numberOf.values()].filter((number) => !decided.has(number));
  };
  return {
    ...head,
    format: "customs-1",
    kind,
    way: wayOf(paperCase, stage),
    purpose: paperCase.loan.purpose,
    returnBy: paperCase.loan.returnBy,
    crates: crates.map(paperCrate),
    goods: specimens.map((specimen) =>
      toGoods(specimen, crates.find(({ contents }) => contents.includes(specimen.id))?.code ?? ""),
    ),
    decisions,
    undecided:
      kind === "carnet list"
        ? []
        : ends
            .map((countryCode) => ({ countryCode, numbers: undecided(countryCode) }))
            .filter((open) => open.numbers.length > 0),
  };
}
