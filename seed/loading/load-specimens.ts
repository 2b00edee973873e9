/** The specimens and the series, each recorded on its day, with what belongs to it, and its periodic checks. */
import { linkDonor, recordPermit, recordTitle } from "#lib/provenance/commands.ts";
import { recordPreparationStep } from "#lib/specimens/commands/record-preparation-step.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import { recordSpecimen, reviseSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { moveSpecimen } from "#lib/whereabouts/commands.ts";
import { recordCheckOf } from "#seed/loading/load-checks.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { accounts } from "#seed/scenario/accounts.ts";
import { collection, histories } from "#seed/scenario/collection.ts";
import {
  checksOfSheet,
  rackOfSheet,
  type ScenarioSeries,
  seriesOfSheets,
  sheetName,
  sheetNumbers,
  shownOnSheet,
} from "#seed/scenario/series.ts";
import type { Day, History, ScenarioSpecimen } from "#seed/scenario/shape.ts";

/** The register was taken over from cards, three days for each specimen, then the sheets. */
const registerBegins: Day = -1_390;
const daysForEach = 3;
const seriesBegin: Day = -1_180;

const entered = "Entered in the register";

/** What it was held to cost when it was entered: a little less than today, in whole tens. */
const firstEstimate = (euros: number) => Math.max(10, Math.round((euros * 0.92) / 10) * 10);

/** The record with the replacement cost as it was stated on a day. */
function recordOf(
  { record, cost }: ScenarioSpecimen,
  timeline: Timeline,
  stated: { euros: (now: number) => number; day: Day },
): Omit<SpecimenInput, "wholeId"> {
  const replacementCost = cost && {
    minor: stated.euros(cost.euros) * 100,
    currency: "EUR",
    basis: cost.basis,
    statedOn: timeline.on(stated.day),
    statedBy: accounts["collection manager"].name,
  };
  return { ...record, replacementCost };
}

async function recordOne(world: World, timeline: Timeline, one: ScenarioSpecimen, day: Day): Promise<void> {
  const { accessionNumber, human } = one.record;
  const curator = world.as("curator");
  const manager = world.as("collection manager");
  const { id: specimenId } = await recordSpecimen(curator, {
    ...recordOf(one, timeline, { euros: firstEstimate, day }),
    wholeId: one.whole === null ? null : world.specimen(one.whole),
  });
  world.specimens.set(accessionNumber, specimenId);
  const making = async () => {
    for (const step of one.steps)
      await recordPreparationStep(world.as("conservator"), { ...step, specimenId });
  };
  const papers = async () => {
    if (human && one.donors.length > 0)
      await linkDonor(world.as("donor officer"), {
        specimenId,
        donorCodes: one.donors.map((key) => world.donorCode(key)),
      });
    await recordTitle(manager, { ...one.title, specimenId, recordedOn: timeline.on(day) });
    for (const { from, until, ...permit } of one.permits)
      await recordPermit(world.as("registrar"), {
        ...permit,
        specimenId,
        validFrom: from === null ? null : timeline.on(from),
        validUntil: until === null ? null : timeline.on(until),
      });
    await moveSpecimen(manager, { specimenId, placeId: world.place(one.place), reason: entered });
  };
  await Promise.all([recordShown(curator, { specimenId, shown: one.shows }), making(), papers()]);
}

function planChecks(timeline: Timeline, world: World, accessionNumber: string, history: History | undefined) {
  if (!history) return;
  world.marks.set(accessionNumber, history.marks);
  for (const { day, by, occasion, readings, fit, grounds } of history.checks)
    timeline.add(day, "checks", () =>
      recordCheckOf(world, {
        accessionNumber,
        on: timeline.on(day),
        by,
        occasion,
        loanId: null,
        readings,
        fit,
        grounds,
      }),
    );
}

export function planSpecimens(timeline: Timeline, world: World): void {
  for (const [index, one] of collection.entries()) {
    const day = registerBegins + index * daysForEach;
    const { accessionNumber } = one.record;
    timeline.add(day, "specimens", () => recordOne(world, timeline, one, day));
    const revised = one.cost?.day;
    if (revised !== undefined)
      timeline.add(revised, "replacement costs", () =>
        reviseSpecimen(world.as("collection manager"), {
          ...recordOf(one, timeline, { euros: (now) => now, day: revised }),
          wholeId: one.whole === null ? null : world.specimen(one.whole),
          id: world.specimen(accessionNumber),
          version: 1,
        }),
      );
    planChecks(timeline, world, accessionNumber, histories[accessionNumber]);
  }
}

function planOneSeries(timeline: Timeline, world: World, one: ScenarioSeries, day: Day): void {
  const numbers = sheetNumbers(one);
  timeline.add(day, "series", async () => {
    const { sheets } = await recordSeries(world.as("curator"), {
      ...one.series,
      id: null,
      sheets: {
        numberStem: one.numberStem,
        digits: 3,
        titleStem: one.titleStem,
        human: true,
        scientificName: "Homo sapiens",
        sex: one.sex,
        ageBand: one.ageBand,
        side: "both",
        size: one.size,
        massKg: one.massKg,
        use: "viewing only",
        light: "ordinary",
        replacementCost: {
          minor: one.cost.euros * 100,
          currency: "EUR",
          basis: "preparation cost",
          statedOn: timeline.on(one.cost.day),
          statedBy: accounts["collection manager"].name,
        },
        preparedOn: one.preparedOn,
        acquiredOn: one.acquiredOn,
        publishable: false,
        missing: [...one.missing],
      },
    });
    for (const { id, accessionNumber } of sheets) world.specimens.set(accessionNumber, id);
  });
  const eachSheet = (act: (specimenId: string, number: number) => Promise<unknown>) =>
    numbers.map((number) => () => act(world.specimen(sheetName(one, number)), number));
  timeline.add(
    day + 1,
    "sheets",
    ...eachSheet(async (specimenId, number) => {
      await recordShown(world.as("curator"), { specimenId, shown: shownOnSheet(one, number) });
      await linkDonor(world.as("donor officer"), { specimenId, donorCodes: [world.donorCode(one.donor)] });
      const manager = world.as("collection manager");
      await recordTitle(manager, {
        specimenId,
        status: "owned",
        ownerName: "",
        leaveToLend: false,
        leaveReference: "",
        recordedOn: timeline.on(day + 1),
      });
      await moveSpecimen(manager, {
        specimenId,
        placeId: world.place(rackOfSheet(one, number)),
        reason: entered,
      });
    }),
  );
  for (const number of numbers)
    planChecks(timeline, world, sheetName(one, number), checksOfSheet(one, number));
}

export function planSeries(timeline: Timeline, world: World): void {
  for (const [index, one] of Object.values(seriesOfSheets).entries())
    planOneSeries(timeline, world, one, seriesBegin + index * 5);
}
