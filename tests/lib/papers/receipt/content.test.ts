import { describe, expect, test } from "vitest";
import { ReceiptContent, receiptContent } from "#lib/papers/receipt/content.ts";
import { someCase, someHandovers, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const plain = someCase({ specimens: 3, crates: 2 });
const changesOf = (handovers = plain.handovers, stageId: string = stageIds.out) =>
  receiptContent({ ...plain, handovers }, stageId, someHead()).changes;

test("a receipt reads back as it was written", () => {
  const content = receiptContent({ ...plain, handovers: someHandovers(plain) }, stageIds.out, someHead());
  expect(ReceiptContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
  expect(content.kind).toBe("outgoing receipt");
  expect(content.specimens.map(({ crate }) => crate)).toEqual([
    "L 2026-031/1",
    "L 2026-031/1",
    "L 2026-031/2",
  ]);
});

describe("changes of hands", () => {
  test("that have yet to happen are both left to be signed", () => {
    expect(changesOf()).toMatchObject([
      { from: "Lending Centre", to: "Gentle Freight", numbers: [1, 2, 3], record: null },
      { from: "Gentle Freight", to: "Port Selwyn Faculty of Medicine", numbers: [1, 2, 3], record: null },
    ]);
  });

  test("that happened have their names and time; what came later is left open", () => {
    expect(changesOf(someHandovers(plain))).toMatchObject([
      { numbers: [1, 2, 3], record: { releasedBy: "Ada Keeper", receivedBy: "Gentle Freight" } },
      { numbers: [1, 2], record: { releasedBy: "Gentle Freight", receivedBy: "Bela Registrar" } },
      { numbers: [3], record: null },
    ]);
  });

  test("of the way out are none of the way home", () => {
    expect(changesOf(someHandovers(plain), stageIds.home).map(({ record }) => record)).toEqual([null, null]);
  });

  test("that a borrower made without a carrier ask for no carrier's word", () => {
    const brought = plain.specimens.map(({ accessionNumber }) => ({
      direction: "home" as const,
      at: "2027-03-03T10:00:00.000Z",
      fromParty: plain.venue.organisation,
      toParty: plain.house.organisation,
      releasedBy: "carrier",
      receivedBy: "Ada Keeper",
      accessionNumber,
    }));
    expect(changesOf(brought, stageIds.home)).toHaveLength(1);
  });
});

test("what is no longer on the loan is not on its receipt", () => {
  const [first, ...others] = plain.specimens;
  if (!first) throw new RangeError("There is a specimen.");
  const content = receiptContent(
    { ...plain, specimens: [{ ...first, isLive: false }, ...others] },
    stageIds.out,
    someHead(),
  );
  expect(content.specimens.map(({ accessionNumber }) => accessionNumber)).toEqual([
    "AN 2004.0002",
    "AN 2004.0003",
  ]);
});
