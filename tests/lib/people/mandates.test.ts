/** Mandates: which one reaches what is at stake, on which day, and what the others lack. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AtStake, countsOn, type Mandate, MandateInput, mandateFor } from "#lib/people/mandates.ts";

const mandate = (said: Partial<Mandate> = {}): Mandate => ({
  id: "m",
  acts: ["sign agreements"],
  limit: null,
  validFrom: "2027-01-01",
  validUntil: null,
  reference: "Resolution",
  givenBy: "Board",
  revokedOn: null,
  ...said,
});
const nothingAtStake: AtStake = { sums: [], unknown: 0 };
const euros = (minor: number, unknown = 0) => ({ sums: [{ minor, currency: "EUR" }], unknown });
const ask = (mandates: Mandate[], atStake = nothingAtStake, day = "2027-06-01") =>
  mandateFor(mandates, { act: "sign agreements", day, atStake });

describe("a mandate", () => {
  test("counts from its first day to the day before its last", () => {
    const bounded = mandate({ validUntil: "2028-01-01" });
    expect(
      ["2026-12-31", "2027-01-01", "2027-12-31", "2028-01-01"].map((day) => countsOn(bounded, day)),
    ).toEqual([false, true, true, false]);
  });

  test("that is revoked ends on that day", () => {
    const revoked = mandate({ revokedOn: "2027-06-01" });
    expect(countsOn(revoked, "2027-05-31")).toBe(true);
    expect(ask([revoked])).toEqual({ fault: "mandate.not-on-the-day" });
  });

  test("is for its acts alone", () => {
    expect(ask([mandate({ acts: ["decide requests"] })])).toEqual({ fault: "mandate.none" });
    expect(ask([])).toEqual({ fault: "mandate.none" });
  });

  test.each([
    ["just within", euros(100_00), true],
    ["one cent above", euros(100_01), false],
    ["in another currency", { sums: [{ minor: 1, currency: "CHF" }], unknown: 0 }, false],
    ["in two currencies", { sums: [...euros(1).sums, { minor: 1, currency: "CHF" }], unknown: 0 }, false],
    ["not known in part", euros(1, 1), false],
    ["nothing at stake", nothingAtStake, true],
  ])("with a limit, and a cost that is %s", (_what, atStake, reached) => {
    const limited = mandate({ limit: { minor: 100_00, currency: "EUR" } });
    expect("mandate" in ask([limited], atStake)).toBe(reached);
  });

  test("without a limit reaches any cost, even one that is not known, and goes before one with", () => {
    const limited = mandate({ id: "limited", limit: { minor: 100_00, currency: "EUR" } });
    expect(ask([limited, mandate({ id: "any" })], euros(1, 3))).toMatchObject({ mandate: { id: "any" } });
    expect(ask([limited, mandate({ id: "any" })], euros(1))).toMatchObject({ mandate: { id: "any" } });
  });

  test("never reaches less when its limit rises", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.nat(1_000_000), fc.nat(1_000_000), (cost, limit, more) => {
        const within = (minor: number) =>
          "mandate" in ask([mandate({ limit: { minor, currency: "EUR" } })], euros(cost));
        expect(!within(limit) || within(limit + more)).toBe(true);
      }),
    );
  });
});

test("a mandate without an act, or with its days the wrong way round, is refused at the field", () => {
  const read = MandateInput.safeParse({
    accountId: "a",
    acts: [],
    limit: null,
    validFrom: "2027-02-01",
    validUntil: "2027-02-01",
    reference: "Letter",
  });
  expect(read.error?.issues.map(({ path, message }) => [path.join("."), message])).toContainEqual([
    "acts",
    "mandate.no-act",
  ]);
  const reversed = MandateInput.safeParse({
    accountId: "a",
    acts: ["sign agreements"],
    limit: null,
    validFrom: "2027-02-01",
    validUntil: "2027-02-01",
    reference: "Letter",
  });
  expect(reversed.error?.issues.map(({ message }) => message)).toEqual(["mandate.period-reversed"]);
});
