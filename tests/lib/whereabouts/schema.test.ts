import { expect, test } from "vitest";
import { HouseBookingInput, PlaceInput } from "#lib/whereabouts/schema.ts";

const specimenId = "01920000-0000-7000-8000-000000000001";
const booking = { specimenId, purpose: "rest", startsOn: "2027-03-01", endsOn: "2027-03-02" };

test.each([
  ["one day", { ...booking }, []],
  ["no day", { ...booking, endsOn: "2027-03-01" }, ["booking.period-reversed"]],
  ["days in the wrong order", { ...booking, endsOn: "2027-02-01" }, ["booking.period-reversed"]],
  ["eleven years", { ...booking, endsOn: "2038-03-01" }, ["booking.too-long"]],
])("a booking of %s", (_what, input, messages) => {
  expect((HouseBookingInput.safeParse(input).error?.issues ?? []).map((issue) => issue.message)).toEqual(
    messages,
  );
});

test("a loan is not booked by hand", () => {
  expect(HouseBookingInput.safeParse({ ...booking, purpose: "loan" }).success).toBe(false);
});

test("parsing a parsed value changes nothing", () => {
  const place = { id: null, code: " ST ", name: " Store ", kind: "store", parentId: null, venueId: null };
  const once = PlaceInput.parse(place);
  expect(once).toMatchObject({ code: "ST", name: "Store" });
  expect(PlaceInput.parse(once)).toEqual(once);
});
