/** Searching the catalogue: by what specimens show, by number and title, page by page. */
import fc from "fast-check";
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { writePageKey } from "#lib/specimens/filter.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { findByNumber } from "#lib/specimens/queries.ts";
import { aCentre, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

const institution = "01920000-0000-7000-8000-0000000000aa";
const lecturer = aViewer("lecturer", institution);
const curator = aViewer("curator");

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
}, 120_000);
beforeEach(() => setClock(() => new Date("2027-01-15T09:00:00Z")));
afterEach(() => setClock());

const numbersOf = (list: { rows: { accessionNumber: string }[] }) =>
  list.rows.map((row) => row.accessionNumber);
const found = async (text: string) => numbersOf(await listSpecimens(lecturer, { text }));
const truncate = async () =>
  await inWork(async ({ transaction }) => {
    await transaction.booking.deleteMany();
    await transaction.shown.deleteMany();
    await transaction.component.deleteMany();
    await transaction.formerNumber.deleteMany();
    await transaction.hazard.deleteMany();
    await transaction.preparationStep.deleteMany();
    await transaction.specimenDonor.deleteMany();
    await transaction.specimen.updateMany({ data: { wholeId: null } });
    await transaction.specimen.deleteMany({ where: { moves: { none: {} } } });
  });

describe("what shows a structure", () => {
  let plexus: Made;
  let vagus: Made;
  beforeEach(async () => {
    await truncate();
    plexus = await aRecorded({ title: "Preparation without a telling title" }, ["brachial-plexus"]);
    vagus = await aRecorded({ title: "Another one" }, [
      "vagus-nerve",
      aShown("heart", { state: "removed" }),
      aShown("thymus", { state: "absent" }),
    ]);
  });

  test.each([
    "upper limb",
    "membrum superius",
    "axilla",
    "brachial plexus",
    "plexus brachialis",
    "nerve plexus",
    "brachal plexus",
    "upper lim",
  ])("%j finds a specimen recorded only as showing the brachial plexus", async (text) =>
    expect(await found(text)).toEqual([plexus.accessionNumber]),
  );

  test.each([
    "vagus",
    "nervus vagus",
    "n. vagus",
    "X",
    "CN X",
    "tenth cranial nerve",
    "10th nerve",
    "vagsu",
    "nervus vaggus",
    "cranial nerve",
    "left vagus nerve",
  ])("%j finds the tenth cranial nerve", async (text) =>
    expect(await found(text)).toEqual([vagus.accessionNumber]),
  );

  test("a system finds both", async () =>
    expect(await found("nervous system")).toEqual([plexus.accessionNumber, vagus.accessionNumber]));

  test.each(["lower limb", "median nerve", "recurrent laryngeal nerve", "vein"])(
    "%j finds neither",
    async (text) => expect(await found(text)).toEqual([]),
  );

  test("what was removed or is absent is not shown", async () => {
    expect(await found("heart")).toEqual([]);
    expect(await found("thymus")).toEqual([]);
  });

  test("a variant is shown", async () => {
    const variant = await aRecorded({}, [
      aShown("kidney", { state: "variant", remark: "horseshoe" }),
      aShown("ureter", { state: "not assessed" }),
    ]);
    expect(await found("kidney")).toEqual([variant.accessionNumber]);
    expect(await found("ureter")).toEqual([]);
  });

  test("a row says what it shows of the searched structure, best seen first, and the list what was meant", async () => {
    await truncate();
    const arm = await aRecorded({}, [
      aShown("median-nerve", { seen: "in section" }),
      aShown("humerus"),
      "femur",
    ]);
    const list = await listSpecimens(lecturer, { text: "upper limb" });
    expect(list.meant).toEqual([
      { id: "upper-limb", english: "upper limb", latin: "membrum superius", kind: "region" },
    ]);
    expect(list.rows).toMatchObject([
      {
        accessionNumber: arm.accessionNumber,
        shows: [
          { id: "humerus", seen: "fully exposed", side: "left", state: "shown" },
          { id: "median-nerve", seen: "in section" },
        ],
      },
    ]);
  });

  test("a structure chosen by its id narrows a text", async () => {
    expect(numbersOf(await listSpecimens(lecturer, { structureId: "vagus-nerve" }))).toEqual([
      vagus.accessionNumber,
    ]);
    expect(
      numbersOf(await listSpecimens(lecturer, { structureId: "vagus-nerve", text: "another one" })),
    ).toEqual([vagus.accessionNumber]);
    expect(
      numbersOf(await listSpecimens(lecturer, { structureId: "vagus-nerve", text: "brachial plexus" })),
    ).toEqual([]);
    expect(numbersOf(await listSpecimens(lecturer, { structureId: "no-such-thing" }))).toEqual([]);
  });
});

describe("what should contain a structure, unverified", () => {
  const implied = async (structureId: string) =>
    numbersOf(await listSpecimens(lecturer, { structureId, evidence: "implied" }));
  beforeEach(truncate);

  test("is a region or organ recorded as a whole, with nothing said of the structure", async () => {
    const limb = await aRecorded({ kind: "body region" }, ["upper-limb"]);
    await aRecorded({ kind: "body region" }, ["lower-limb"]);
    await aRecorded({ kind: "sheet", preparation: "epoxy sheet" }, ["upper-limb"]);
    expect(await implied("brachial-plexus")).toEqual([limb.accessionNumber]);
    expect(
      numbersOf(await listSpecimens(lecturer, { text: "brachial plexus", evidence: "implied" })),
    ).toEqual([limb.accessionNumber]);
    expect(await found("brachial plexus")).toEqual([]);
  });

  test("is none that records it, whether as shown or as gone", async () => {
    await aRecorded({ kind: "body region" }, ["upper-limb", "brachial-plexus"]);
    await aRecorded({ kind: "body region" }, ["upper-limb", aShown("brachial-plexus", { state: "removed" })]);
    await aRecorded({ kind: "body region" }, ["upper-limb", aShown("axilla", { state: "absent" })]);
    expect(await implied("brachial-plexus")).toEqual([]);
  });
});

describe("numbers and titles", () => {
  beforeEach(truncate);

  test("are found in any way of writing them", async () => {
    const heart = await aRecorded({
      accessionNumber: "AN 2019.0042",
      title: "Opened heart, left ventricle",
      latinTitle: "cor apertum",
      formerNumbers: [{ number: "Jar B-17", kind: "jar", markedOn: "lid" }],
    });
    await aRecorded({ accessionNumber: "AN 2019.0043", title: "Liver" });
    for (const text of [
      "AN 2019.0042",
      "an-2019-0042",
      "AN20190042",
      "0042",
      "b17",
      "jar B 17",
      "opened",
      "opened heart",
      "cor apertum",
      "OPENED HÉART",
    ])
      expect(await found(text), text).toEqual([heart.accessionNumber]);
    for (const text of ["0044", "heart liver", "AN 2019.004x"]) expect(await found(text), text).toEqual([]);
  });

  test("a mistyped title is found when nothing is found as written", async () => {
    const model = await aRecorded({ title: "Teaching preparation with plaster" });
    expect(await found("teching preparation")).toEqual([model.accessionNumber]);
  });

  test("a title and a structure together give each specimen once", async () => {
    const one = await aRecorded({ title: "Heart" }, ["heart"]);
    const other = await aRecorded({ title: "Thorax" }, ["left-ventricle"]);
    expect(await found("heart")).toEqual([one.accessionNumber, other.accessionNumber]);
  });

  test("findByNumber gives those that have or had exactly this number", async () => {
    const heart = await aRecorded({
      accessionNumber: "AN 2019.0042",
      title: "Heart",
      formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "" }],
    });
    const lung = await aRecorded({
      accessionNumber: "AN 2019.0420",
      title: "B17 of the list",
      formerNumbers: [{ number: "B-17", kind: "department", markedOn: "" }],
    });
    await aRecorded({ accessionNumber: "AN 2019.0421", title: "b17" });
    expect(await findByNumber(lecturer, "an 2019/0042")).toEqual([
      { ...heart, title: "Heart", matched: "AN 2019.0042" },
    ]);
    expect(
      (await findByNumber(lecturer, "b.17")).map(({ accessionNumber, matched }) => [
        accessionNumber,
        matched,
      ]),
    ).toEqual([
      [heart.accessionNumber, "B 17"],
      [lung.accessionNumber, "B-17"],
    ]);
    for (const text of ["", "…", "AN 2019", "%", "x".repeat(500), "\u0000"])
      expect(await findByNumber(lecturer, text)).toEqual([]);
  });

  test.each(["\u0000", "\ud800"])("a text that cannot be kept, %j, is refused as it stands", async (text) => {
    await expect(listSpecimens(lecturer, { text })).rejects.toMatchObject({
      kind: "invalid",
      reason: "filter.unreadable",
      issues: [{ path: "text", message: "text.not-storable" }],
    });
  });

  test.each(["", "…", "%", "_%_", "'; DROP TABLE specimen; --", "\\", "[[(", "constructor"])(
    "nothing breaks on %j",
    async (text) => expect((await listSpecimens(lecturer, { text })).rows).toEqual([]),
  );
});

describe("filters", () => {
  beforeEach(truncate);

  test("narrow by kind, preparation, use, species and series", async () => {
    const organ = await aRecorded({ use: "handling" });
    const jar = await aRecorded({
      kind: "fluid-preserved specimen",
      preparation: "fluid-preserved",
      fluidName: "ethanol",
      fluidPercent: 70,
    });
    const horse = await aRecorded({ human: false, scientificName: "Equus caballus", ageBand: null });
    const list = async (filter: Parameters<typeof listSpecimens>[1]) =>
      numbersOf(await listSpecimens(lecturer, filter));
    expect(await list({ kind: "fluid-preserved specimen" })).toEqual([jar.accessionNumber]);
    expect(await list({ preparation: "fluid-preserved" })).toEqual([jar.accessionNumber]);
    expect(await list({ use: "handling" })).toEqual([organ.accessionNumber]);
    expect(await list({ human: false })).toEqual([horse.accessionNumber]);
    expect(await list({ seriesId: newId() })).toEqual([]);
    expect(await list({ withoutSheets: true })).toEqual([
      organ.accessionNumber,
      jar.accessionNumber,
      horse.accessionNumber,
    ]);
  });

  test("free days leave out what is promised, with its parts and its whole; run-out holds count no more", async () => {
    const whole = await aRecorded();
    const part = await aRecorded({ wholeId: whole.id });
    const free = await aRecorded();
    const held = await aRecorded();
    const book = async (specimenId: string, said: { strength: string; expiresAt: Date | null }) =>
      await inWork(({ transaction }) =>
        transaction.booking.create({
          data: {
            id: newId(),
            specimenId,
            purpose: "rest",
            bookedBy: "a",
            startsOn: toDate("2027-03-01"),
            endsOn: toDate("2027-04-01"),
            ...said,
          },
        }),
      );
    await book(part.id, { strength: "firm", expiresAt: null });
    await book(held.id, { strength: "hold", expiresAt: new Date("2027-01-20T00:00:00Z") });
    const list = async (freeFrom: string, freeUntil: string) =>
      numbersOf(await listSpecimens(lecturer, { freeFrom, freeUntil }));
    expect(await list("2027-03-31", "2027-05-01")).toEqual([free.accessionNumber]);
    expect(await list("2027-04-01", "2027-05-01")).toHaveLength(4);
    expect(await list("2027-02-01", "2027-03-01")).toHaveLength(4);
    setClock(() => new Date("2027-01-21T00:00:00Z"));
    expect(await list("2027-03-31", "2027-05-01")).toEqual([free.accessionNumber, held.accessionNumber]);
  });

  test("a place finds what stands in it now, and only for who may know the store", async () => {
    const here = await aRecorded();
    const gone = await aRecorded();
    const [store, shelf, other] = [newId(), newId(), newId()];
    await inWork(async ({ transaction }) => {
      await transaction.place.createMany({
        data: [
          { id: store, code: "S1", name: "Store", kind: "store" },
          { id: shelf, code: "S1.1", name: "Shelf", kind: "shelf", parentId: store },
          { id: other, code: "S2", name: "Store", kind: "store" },
        ],
      });
      for (const [specimenId, placeId] of [
        [here.id, shelf],
        [gone.id, shelf],
        [gone.id, other],
      ] as const)
        await transaction.move.create({
          data: { id: newId(), specimenId, placeId, movedAt: new Date(), movedBy: "a", reason: "test" },
        });
    });
    expect(numbersOf(await listSpecimens(curator, { placeId: store }))).toEqual([here.accessionNumber]);
    await expect(listSpecimens(lecturer, { placeId: store })).rejects.toMatchObject({ kind: "forbidden" });
  });

  test.each([{ kind: "soup" }, { freeFrom: "2027-01-01" }, { placeId: "here" }, { structureId: "a b" }])(
    "%j is refused",
    async (filter) =>
      await expect(listSpecimens(curator, filter as never)).rejects.toMatchObject({
        kind: "invalid",
        reason: "filter.unreadable",
      }),
  );
});

describe("pages", () => {
  const all: string[] = [];
  beforeAll(async () => {
    await truncate();
    // Numbers that differ in their last signs only, recorded out of order.
    for (const number of ["P 10", "P 1", "P 1/2", "P 1/10", "P 2", "P 02", "p 1", "P 1a", "P", "P 1/1"])
      all.push((await aRecorded({ accessionNumber: number, title: "Heart" }, ["heart"])).accessionNumber);
  });

  test("of any size, forwards and back, give every specimen once and in one order", async () => {
    const whole = numbersOf(await listSpecimens(curator, {}, { size: 200 })).filter((number) =>
      all.includes(number),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom({}, { text: "heart" }),
        async (size, filter) => {
          const forwards: string[] = [];
          let page = await listSpecimens(curator, filter, { size });
          const pages = [page];
          forwards.push(...numbersOf(page));
          while (page.next !== null) {
            page = await listSpecimens(curator, filter, { size, after: page.next });
            pages.push(page);
            forwards.push(...numbersOf(page));
          }
          expect(forwards.filter((number) => all.includes(number))).toEqual(whole);
          for (let at = pages.length - 1; at > 0; at -= 1) {
            const before = await listSpecimens(curator, filter, { size, before: pages[at]?.previous ?? "" });
            expect(numbersOf(before)).toEqual(numbersOf(pages[at - 1] ?? { rows: [] }));
          }
          expect(pages[0]?.previous).toBeNull();
        },
      ),
      { numRuns: 12 },
    );
  });

  test("go on behind a key whose specimen is gone, and behind one of the same number", async () => {
    const behind = (id: string) =>
      listSpecimens(curator, {}, { after: writePageKey({ accessionNumber: "P 1", id }), size: 1 });
    expect(numbersOf(await behind("00000000-0000-0000-0000-000000000000"))).toEqual(["P 1"]);
    expect(numbersOf(await behind("ffffffff-ffff-ffff-ffff-ffffffffffff"))).not.toEqual(["P 1"]);
  });

  test("have no key that was made up", async () =>
    await expect(listSpecimens(curator, {}, { after: "nonsense" })).rejects.toMatchObject({
      reason: "page.key-unknown",
    }));

  test("ask the database no more often for many rows than there are ways into the list", async () => {
    const ask = vi.spyOn(database(), "$queryRaw");
    const askedFor = async (size: number) => {
      ask.mockClear();
      await listSpecimens(curator, { text: "heart" }, { size });
      return ask.mock.calls.length;
    };
    const few = await askedFor(2);
    expect(few).toBeLessThanOrEqual(4);
    // What is left to find by a structure, and by the beginning of a word.
    expect(await askedFor(200)).toBeLessThanOrEqual(few + 2);
  });
});
