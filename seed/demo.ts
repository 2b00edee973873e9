/**
 * Loads the demo scenario: years of a lending office, told through the same
 * commands as the screens use, each act on its own day and by the person whose
 * act it is. A database that holds specimens already is left as it is.
 */
import { pathToFileURL } from "node:url";
import { programViewer } from "#lib/people/viewer.ts";
import { readConfig } from "#lib/platform/config.ts";
import { closeDatabase, database, useDatabase as pointProgramAt } from "#lib/platform/database.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { planHouseBookings } from "#seed/loading/house-bookings.ts";
import { planDonors } from "#seed/loading/load-donors.ts";
import { planFacility } from "#seed/loading/load-facility.ts";
import { planLoans } from "#seed/loading/load-loans.ts";
import { planMandates } from "#seed/loading/load-mandates.ts";
import { planFeeScales } from "#seed/loading/load-money.ts";
import { planPeople } from "#seed/loading/load-people.ts";
import { planPhotographs } from "#seed/loading/load-photographs.ts";
import { planSeries, planSpecimens } from "#seed/loading/load-specimens.ts";
import { Timeline } from "#seed/loading/timeline.ts";
import { World } from "#seed/loading/world.ts";

/** Why the scenario was not loaded; the message is a sentence for whoever started it. */
export class DemoFailure extends Error {}

export type DemoOptions = {
  /** Hears of the progress, line by line. */
  tell?: (line: string) => void;
  /** The moment that counts as now; everything in the scenario is dated from it. */
  loadedAt?: Date;
};

export type LoadedDemo = { loaded: boolean; specimens: number; loans: number; checks: number };

/** How many of a kind are done between two lines. */
const linesEvery = 20;

function progress(tell: (line: string) => void) {
  return (kind: string, done: number, all: number) => {
    if (done === all || Math.floor(done / linesEvery) > Math.floor((done - 1) / linesEvery))
      tell(`  ${kind} ${done} of ${all}`);
  };
}

function sentenceOf(error: unknown): string {
  const during = (error as { during?: string }).during;
  const where = during ? ` (${during})` : "";
  if (error instanceof Refusal) {
    const facts = [
      ...Object.entries(error.parameters).map(([key, value]) => `${key}: ${value}`),
      ...error.issues.map(({ path, message }) => `${path}: ${message}`),
    ];
    return `The demo scenario was refused${where}: ${error.reason}${facts.length > 0 ? ` (${facts.join(", ")})` : ""}.`;
  }
  return `The demo scenario could not be loaded${where}: ${error instanceof Error ? error.message : String(error)}`;
}

async function counts() {
  const [specimens, loans, checks] = await Promise.all([
    database().specimen.count(),
    database().loan.count(),
    database().conditionCheck.count(),
  ]);
  return { specimens, loans, checks };
}

const stateKey = "demo.state";

async function stateOfDemo(): Promise<unknown> {
  return (await database().setting.findUnique({ where: { key: stateKey } }))?.value;
}

/** Written before the first act and after the last, so that a load that was cut short is known for one. */
async function keepStateOfDemo(value: "loading" | "loaded"): Promise<void> {
  await inTransaction(programViewer, "loadDemo", async (transaction) => {
    await transaction.setting.upsert({
      where: { key: stateKey },
      create: { key: stateKey, value },
      update: { value },
    });
  });
}

/**
 * Loads the scenario into the database that the program points at: migrated, with
 * the vocabularies.
 * @throws {DemoFailure} with a sentence; what was loaded until then stays
 */
export async function loadDemo({
  tell = () => {},
  loadedAt = new Date(),
}: DemoOptions = {}): Promise<LoadedDemo> {
  try {
    const before = await counts();
    if ((await stateOfDemo()) === "loading")
      throw new DemoFailure(
        "An earlier load of the demo scenario was cut short here: begin again with an empty database.",
      );
    if (before.specimens > 0) return { loaded: false, ...before };
    if ((await database().structure.count()) === 0)
      throw new DemoFailure(
        "The vocabularies are not loaded yet: run seed/reference.ts on this database first.",
      );
    tell("Loading the demo scenario");
    await keepStateOfDemo("loading");
    const timeline = new Timeline(loadedAt);
    const world = new World();
    planPeople(timeline, world);
    planFacility(timeline, world);
    planMandates(timeline, world);
    planFeeScales(timeline, world);
    planDonors(timeline, world);
    planSpecimens(timeline, world);
    planSeries(timeline, world);
    planPhotographs(timeline, world);
    planLoans(timeline, world);
    planHouseBookings(timeline, world);
    await timeline.run(progress(tell));
    await keepStateOfDemo("loaded");
    return { loaded: true, ...(await counts()) };
  } catch (error) {
    if (error instanceof DemoFailure) throw error;
    throw new DemoFailure(sentenceOf(error), { cause: error });
  }
}

async function main(): Promise<number> {
  try {
    pointProgramAt(readConfig().databaseUrl, 6);
    const begun = performance.now();
    const { loaded, specimens, loans, checks } = await loadDemo({ tell: (line) => console.log(line) });
    const seconds = Math.round((performance.now() - begun) / 1000);
    console.log(
      loaded
        ? `Demo scenario loaded in ${seconds} s: ${specimens} specimens, ${checks} checks, ${loans} loans.`
        : `This database holds ${specimens} specimens already: the demo scenario was not loaded into it.`,
    );
    return 0;
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    return 1;
  } finally {
    await closeDatabase();
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.exitCode = await main();
