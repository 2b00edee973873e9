/**
 * The content of a receipt: the specimens of one stage, and every change of hands on
 * it. A change that the chain of custody holds is printed with its names and time;
 * one that has yet to happen is left to be signed on the paper. Each change names
 * what passed in it, because one crate may come later than another.
 */
import { z } from "zod";
import {
  type CaseHandover,
  type CaseSpecimen,
  numberedCrates,
  type PaperCase,
  paperSpecimen,
  stageOf,
  wayOf,
} from "#lib/papers/paper-case.ts";
import { PaperHead, PaperSpecimen, PaperWay } from "#lib/papers/paper-content.ts";

export const ReceiptContent = PaperHead.extend({
  format: z.literal("receipt-1"),
  kind: z.enum(["outgoing receipt", "incoming receipt"]),
  way: PaperWay,
  specimens: z.array(PaperSpecimen.extend({ crate: z.string() })).min(1),
  crates: z.array(z.strictObject({ code: z.string(), sealNumber: z.string().nullable() })),
  changes: z.array(
    z.strictObject({
      from: z.string(),
      to: z.string(),
      /** Numbers of the specimens in the list above. */
      numbers: z.array(z.number().int().min(1)),
      record: z
        .strictObject({ at: z.iso.datetime(), releasedBy: z.string(), receivedBy: z.string() })
        .nullable(),
    }),
  ),
}).strict();
export type ReceiptContent = z.infer<typeof ReceiptContent>;
type Change = ReceiptContent["changes"][number];

/** What a hand-over to the carrier calls the one who released at the other end. */
const CARRIER = "carrier";

/** Alike hand-overs of one moment are one change. */
function recordedChanges(
  handovers: readonly CaseHandover[],
  numberOf: ReadonlyMap<string, number>,
  carrier: string,
): Change[] {
  const changes = new Map<string, Change>();
  const inOrder = [...handovers].sort((first, second) => first.at.localeCompare(second.at));
  for (const { at, fromParty, toParty, releasedBy, receivedBy, accessionNumber } of inOrder) {
    const number = numberOf.get(accessionNumber);
    if (number === undefined) continue;
    const key = JSON.stringify([at, fromParty, toParty, releasedBy, receivedBy]);
    const change = changes.get(key) ?? {
      from: fromParty ?? "",
      to: toParty,
      numbers: [],
      record: { at, releasedBy: releasedBy === CARRIER ? carrier : releasedBy, receivedBy },
    };
    change.numbers.push(number);
    changes.set(key, change);
  }
  return [...changes.values()].map((change) => ({
    ...change,
    numbers: [...change.numbers].sort((first, second) => first - second),
  }));
}

/** The changes that are still to come. What has arrived needs no word of its departure any more. */
function openChanges(way: PaperWay, numbers: readonly number[], recorded: readonly Change[]): Change[] {
  const arrived = recorded.filter(({ to }) => to === way.to.organisation);
  const open = (changes: readonly Change[], from: string, to: string): Change[] => {
    const done = new Set(changes.flatMap((change) => change.numbers));
    const left = numbers.filter((number) => !done.has(number));
    return left.length === 0 ? [] : [{ from, to, numbers: left, record: null }];
  };
  return [
    ...open(recorded, way.from.organisation, way.carrier),
    ...open(arrived, way.carrier, way.to.organisation),
  ];
}

export function receiptContent(paperCase: PaperCase, stageId: string, head: PaperHead): ReceiptContent {
  const stage = stageOf(paperCase, stageId);
  const way = wayOf(paperCase, stage);
  const crates = numberedCrates(paperCase);
  const crateOf = (specimen: CaseSpecimen) =>
    crates.find(({ contents }) => contents.includes(specimen.id))?.code ?? "";
  const specimens = paperCase.specimens
    .filter(({ isLive }) => isLive)
    .map((specimen) => ({ ...paperSpecimen(specimen), crate: crateOf(specimen) }));
  const numberOf = new Map(specimens.map(({ accessionNumber }, index) => [accessionNumber, index + 1]));
  const recorded = recordedChanges(
    paperCase.handovers.filter(({ direction }) => direction === stage.direction),
    numberOf,
    stage.carrier,
  );
  return {
    ...head,
    format: "receipt-1",
    kind: stage.direction === "out" ? "outgoing receipt" : "incoming receipt",
    way,
    specimens,
    crates: crates.map(({ code, sealNumber }) => ({ code, sealNumber })),
    changes: [...recorded, ...openChanges(way, [...numberOf.values()], recorded)],
  };
}
