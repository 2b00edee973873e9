import { planStage } from "#lib/loans/commands/stages.ts";
import { database } from "#lib/platform/database.ts";
import { cratesOf } from "#lib/shipments/queries.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import { recordCheckOf } from "#seed/loading/load-checks.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { Carriage, Looks, ScenarioLoan } from "#seed/scenario/loan-words.ts";
import type { Day } from "#seed/scenario/shape.ts";

export const kindOfAct = "acts on loans";

/** One loan while it is being told: its number in the program, and the version that is signed. */
export class LoanTale {
  readonly loan: ScenarioLoan;
  readonly timeline: Timeline;
  readonly world: World;
  #id = "";
  agreement = { id: "", sha256: "" };
  /** The newest quotation. */
  quotation = { id: "", sha256: "" };

  constructor(loan: ScenarioLoan, timeline: Timeline, world: World) {
    this.loan = loan;
    this.timeline = timeline;
    this.world = world;
  }

  get id(): string {
    if (this.#id === "") throw new Error(`The loan "${this.loan.key}" is told before it is opened.`);
    return this.#id;
  }
  set id(id: string) {
    this.#id = id;
  }

  as(key: AccountKey) {
    return this.world.as(key);
  }

  get signer(): AccountKey {
    const { key, signer } = this.loan;
    if (signer === null) throw new Error(`Nobody signs for the borrower of the loan "${key}".`);
    return signer;
  }

  /** Plans an act on a day of the story, if the story has it. */
  at(day: Day | undefined, act: () => Promise<unknown>): void {
    if (day === undefined) return;
    this.timeline.add(day, kindOfAct, async () => {
      try {
        await act();
      } catch (error) {
        throw Object.assign(error as Error, { during: `the loan "${this.loan.key}", day ${day}` });
      }
    });
  }

  async crates() {
    return (await cratesOf(database(), this.id)).filter(({ contents }) => contents.length > 0);
  }

  /** Checks of the loan's specimens; who has no words of its own is looked over without change. */
  async look(occasion: "out" | "arrival" | "home", { day, by, looks }: Looks, numbers: readonly string[]) {
    for (const accessionNumber of numbers) {
      const said = looks[accessionNumber] ?? `Sheet ${accessionNumber.slice(-3)} looked over: no change.`;
      const {
        grounds,
        readings = {},
        newMarks = {},
        uses,
      } = typeof said === "string" ? { grounds: said } : said;
      const fit = this.world.lastFit.get(accessionNumber) ?? { show: true, handle: false, travel: true };
      await recordCheckOf(this.world, {
        accessionNumber,
        on: this.timeline.on(day),
        by,
        occasion,
        loanId: this.id,
        readings,
        newMarks,
        fit:
          uses === undefined
            ? fit
            : { show: uses.includes("s"), handle: uses.includes("h"), travel: uses.includes("t") },
        grounds,
      });
    }
  }

  async planStage(
    direction: Direction,
    { carrier, vehicle, through = [], departs, arrives }: Carriage,
  ): Promise<void> {
    await planStage(this.as("registrar"), {
      loanId: this.id,
      direction,
      carrier,
      carrierEmail: "",
      vehicle,
      through,
      departsOn: this.timeline.on(departs),
      arrivesOn: this.timeline.on(arrives),
    });
  }
}
