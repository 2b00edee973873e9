/**
 * Two hundred people want the same specimen at the same moment, on real
 * connections: one gets it, everybody else reads from when it is free.
 */
import pg from "pg";
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { closeDatabase, database, useDatabase as pointAtDatabase } from "#lib/platform/database.ts";
import { addDays, toDateText } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { bookSpecimen, type Hold, holdSpecimens } from "#lib/whereabouts/commands.ts";
import { aLoanOf, aSeries, aSpecimen, aVenue, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const attempts = 200;
const expiresAt = new Date("2027-02-01T00:00:00Z");
let url = "";
async function connectWith(connections: number): Promise<void> {
  await closeDatabase();
  pointAtDatabase(url, connections);
}

beforeAll(async () => {
  ({ url } = await testDatabase());
  await connectWith(60);
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

type Outcome = { booked: true } | { booked: false; refusal: Refusal };
const outcomeOf = async (attempt: Promise<unknown>): Promise<Outcome> =>
  await attempt.then(
    () => ({ booked: true }),
    (refusal: Refusal) => ({ booked: false, refusal }),
  );
const refusals = (outcomes: Outcome[]) =>
  outcomes.flatMap((outcome) => (outcome.booked ? [] : [outcome.refusal]));
const liveBookings = (specimenIds: string[]) =>
  database().booking.findMany({ where: { specimenId: { in: specimenIds }, releasedAt: null } });

/** The application's role on a connection of its own, with nothing of the program in between. */
async function bareClient(): Promise<pg.Client> {
  const options = "-c deadlock_timeout=20ms -c role=anatheca_app";
  const client = new pg.Client({ connectionString: url, options });
  await client.connect();
  return client;
}
async function insertBare(
  client: pg.Client,
  specimenId: string,
  startsOn: string,
  endsOn: string,
): Promise<void> {
  await client.query("BEGIN");
  try {
    await client.query(
      "SELECT set_config('anatheca.actor', 'bare', true), set_config('anatheca.act', 'test', true)",
    );
    await client.query(
      `INSERT INTO booking (id, specimen_id, purpose, strength, starts_on, ends_on, booked_by)
       VALUES ($1, $2, 'rest', 'firm', $3, $4, 'bare')`,
      [newId(), specimenId, startsOn, endsOn],
    );
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    throw error;
  }
}

describe("two hundred attempts at once", () => {
  test("book a specimen exactly once, and every other one is told from when it is free", async () => {
    const specimen = await aSpecimen();
    const outcomes = await Promise.all(
      Array.from({ length: attempts }, (_, at) => {
        const startsOn = addDays("2027-03-01", at % 20);
        return outcomeOf(
          bookSpecimen(aViewer("curator"), {
            specimenId: specimen.id,
            purpose: "examination",
            startsOn,
            endsOn: addDays(startsOn, 30),
          }),
        );
      }),
    );
    expect(outcomes.filter((outcome) => outcome.booked)).toHaveLength(1);
    const rows = await liveBookings([specimen.id]);
    expect(rows).toHaveLength(1);
    const freeFrom = toDateText((rows[0] as { endsOn: Date }).endsOn);
    expect(refusals(outcomes)).toHaveLength(attempts - 1);
    for (const refusal of refusals(outcomes))
      expect(refusal).toMatchObject({
        kind: "conflict",
        reason: "booking.taken",
        parameters: { accessionNumber: specimen.accessionNumber, freeFrom },
      });
  });

  test("hold a series of forty sheets, or one of its sheets, exactly once", async () => {
    const { sheets } = await aSeries(40);
    const contested = sheets[22] as Made;
    const venueId = await aVenue();
    const period = { startsOn: "2027-03-01", endsOn: "2027-04-01", expiresAt };
    const asked: Hold[][] = [];
    for (let at = 0; at < attempts; at += 1) {
      const wanted = at % 10 === 0 ? [...sheets].reverse() : [contested];
      const { lineIds } = await aLoanOf(wanted, { venueId });
      asked.push(
        wanted.map(({ id }, index) => ({ specimenId: id, loanLineId: lineIds[index] as string, ...period })),
      );
    }
    const outcomes = await Promise.all(
      asked.map(async (holds) => ({
        holds,
        ...(await outcomeOf(inWork((work) => holdSpecimens(work, holds)))),
      })),
    );
    const booked = outcomes.filter((outcome) => outcome.booked);
    expect(booked).toHaveLength(1);
    const rows = await liveBookings(sheets.map(({ id }) => id));
    expect(rows.map((row) => row.loanLineId).sort()).toEqual(
      booked[0]?.holds.map((one) => one.loanLineId).sort(),
    );
    expect(refusals(outcomes)).toHaveLength(attempts - 1);
    for (const refusal of refusals(outcomes)) {
      expect(refusal).toMatchObject({ reason: "booking.taken", parameters: { freeFrom: "2027-04-01" } });
      expect(sheets.map((sheet) => sheet.accessionNumber)).toContain(refusal.parameters.accessionNumber);
    }
  });

  test("book a whole or its parts, never both", async () => {
    const skeleton = await aSpecimen({ kind: "skeleton or bone" });
    const parts = await Promise.all(Array.from({ length: 8 }, () => aSpecimen({ wholeId: skeleton.id })));
    const curator = aViewer("curator");
    const outcomes = await Promise.all(
      Array.from({ length: attempts }, async (_, at) => {
        const wanted = at % 2 ? skeleton : (parts[at % parts.length] as Made);
        const input = {
          specimenId: wanted.id,
          purpose: "rest",
          startsOn: "2027-03-01",
          endsOn: "2027-03-15",
        } as const;
        return { wanted, ...(await outcomeOf(bookSpecimen(curator, input))) };
      }),
    );
    const rows = await liveBookings([skeleton.id, ...parts.map(({ id }) => id)]);
    expect(new Set(rows.map(({ specimenId }) => specimenId)).size).toBe(rows.length);
    const wholeGotIt = outcomes.some((outcome) => outcome.booked && outcome.wanted === skeleton);
    expect(outcomes.filter((outcome) => outcome.booked)).toHaveLength(wholeGotIt ? 1 : 4);
    expect(rows).toHaveLength(wholeGotIt ? 9 : 4);
    for (const refusal of refusals(outcomes))
      expect(refusal).toMatchObject({ reason: "booking.taken", parameters: { freeFrom: "2027-03-15" } });
  });

  test("are served by a pool of three connections without waiting for each other", async () => {
    await connectWith(3);
    try {
      const specimen = await aSpecimen();
      const outcomes = await Promise.all(
        Array.from({ length: 60 }, () =>
          outcomeOf(
            bookSpecimen(aViewer("curator"), {
              specimenId: specimen.id,
              purpose: "rest",
              startsOn: "2027-03-01",
              endsOn: "2027-03-15",
            }),
          ),
        ),
      );
      expect(outcomes.filter((outcome) => outcome.booked)).toHaveLength(1);
      for (const refusal of refusals(outcomes)) expect(refusal.reason).toBe("booking.taken");
    } finally {
      await connectWith(60);
    }
  });
});

describe("attempts that wait for one that is then given up", () => {
  const waiters = 12;

  test("do not end each other: exactly one of them is booked", async () => {
    const specimen = await aSpecimen();
    const { lineIds } = await aLoanOf([specimen]);
    const days = { startsOn: "2027-03-01", endsOn: "2027-03-15" };
    let giveUp = () => {};
    const changeOfMind = new Promise<void>((resolve) => {
      giveUp = resolve;
    });
    let holds = () => {};
    const held = new Promise<void>((resolve) => {
      holds = resolve;
    });
    const first = inWork(async (work) => {
      await holdSpecimens(work, [
        { specimenId: specimen.id, loanLineId: lineIds[0] as string, ...days, expiresAt },
      ]);
      holds();
      await changeOfMind;
      throw new Refusal("conflict", "loan.given-up");
    });
    await held;
    const others = Array.from({ length: waiters }, () =>
      outcomeOf(bookSpecimen(aViewer("curator"), { specimenId: specimen.id, purpose: "rest", ...days })),
    );
    const onlooker = new pg.Client({ connectionString: url });
    await onlooker.connect();
    const waiting = async () => {
      const { rows } = await onlooker.query(
        "SELECT count(*)::int AS count FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'",
      );
      return rows[0].count as number;
    };
    await expect.poll(waiting, { timeout: 20_000 }).toBe(waiters);
    await onlooker.end();
    giveUp();
    await expect(first).rejects.toMatchObject({ reason: "loan.given-up" });
    const outcomes = await Promise.all(others);
    expect(outcomes.filter((outcome) => outcome.booked)).toHaveLength(1);
    for (const refusal of refusals(outcomes))
      expect(refusal).toMatchObject({ reason: "booking.taken", parameters: { freeFrom: "2027-03-15" } });
  });
});

describe("the constraint alone", () => {
  test("keeps statements that come past the program from booking twice", async () => {
    const specimen = await aSpecimen();
    const clients = await Promise.all(Array.from({ length: 40 }, bareClient));
    try {
      const results = await Promise.allSettled(
        clients.map((client, at) =>
          insertBare(client, specimen.id, addDays("2027-03-01", at % 7), "2027-04-01"),
        ),
      );
      expect(results.filter((result) => result.status === "fulfilled")).toHaveLength(1);
      // Without the program's locks two of them may wait for each other; then the database ends one.
      for (const result of results)
        if (result.status === "rejected") expect(["23P01", "40P01"]).toContain(result.reason.code);
      expect(await liveBookings([specimen.id])).toHaveLength(1);
    } finally {
      await Promise.all(clients.map((client) => client.end()));
    }
  });

  test("lets the next one begin on the day on which the first ends", async () => {
    const specimen = await aSpecimen();
    const client = await bareClient();
    try {
      await insertBare(client, specimen.id, "2027-03-01", "2027-04-01");
      await insertBare(client, specimen.id, "2027-04-01", "2027-05-01");
      await expect(insertBare(client, specimen.id, "2027-04-30", "2027-05-02")).rejects.toMatchObject({
        code: "23P01",
      });
    } finally {
      await client.end();
    }
  });
});
