/**
 * The history of the scenario as one line of acts. Each act happens at its own
 * moment: the clock of the program stands there while it runs. Chains that the
 * database keeps (custody, moves, checks) need their entries in order, so acts
 * run by time, not by kind; jobs of one act touch different specimens and run
 * some at a time.
 */
import { setClock } from "#lib/platform/clock.ts";
import { addDays, type DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import type { Day } from "#seed/scenario/shape.ts";

type Job = () => Promise<unknown>;
type Act = { moment: Date; kind: string; jobs: Job[] };

const minuteMs = 60_000;
const dayMs = 24 * 60 * minuteMs;
const opensAtMinute = 8 * 60;
const jobsAtOnce = 4;

export class Timeline {
  readonly today: DateText;
  readonly #loadedAt: Date;
  readonly #acts: Act[] = [];
  /** Acts of one day follow each other by a minute. */
  readonly #actsOfDay = new Map<Day, number>();

  constructor(loadedAt: Date) {
    this.#loadedAt = loadedAt;
    this.today = toDateText(loadedAt);
  }

  /** The calendar date of a day counted from the day of loading. */
  on(day: Day): DateText {
    return addDays(this.today, Math.floor(day));
  }

  /** A whole day begins its work at eight; a part of a day after the last midnight counts back from now. */
  #momentOf(day: Day): Date {
    if (!Number.isInteger(day)) return new Date(this.#loadedAt.getTime() + day * dayMs);
    const before = this.#actsOfDay.get(day) ?? 0;
    this.#actsOfDay.set(day, before + 1);
    return new Date(toDate(this.on(day)).getTime() + (opensAtMinute + before) * minuteMs);
  }

  add(day: Day, kind: string, ...jobs: Job[]): void {
    if (!(day < 0)) throw new RangeError(`The scenario lies in the past: ${kind} on day ${day} does not.`);
    this.#acts.push({ moment: this.#momentOf(day), kind, jobs });
  }

  /** Runs everything that was added, and what was added meanwhile. @param tell hears how many of a kind are done */
  async run(tell: (kind: string, done: number, all: number) => void): Promise<void> {
    const acts = this.#acts.splice(0).sort((a, b) => a.moment.getTime() - b.moment.getTime());
    const all = new Map<string, number>();
    for (const { kind, jobs } of acts) all.set(kind, (all.get(kind) ?? 0) + jobs.length);
    const done = new Map<string, number>();
    try {
      for (const { moment, kind, jobs } of acts) {
        setClock(() => moment);
        for (let from = 0; from < jobs.length; from += jobsAtOnce)
          await Promise.all(jobs.slice(from, from + jobsAtOnce).map((job) => job()));
        done.set(kind, (done.get(kind) ?? 0) + jobs.length);
        tell(kind, done.get(kind) ?? 0, all.get(kind) ?? 0);
      }
    } finally {
      setClock();
    }
  }
}
