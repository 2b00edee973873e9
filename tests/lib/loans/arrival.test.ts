import { expect, test } from "vitest";
import { arrivedCrates, type CrateUnderWay, requireFullCount } from "#lib/loans/arrival.ts";

const crate = (id: string, said: Partial<CrateUnderWay> = {}): CrateUnderWay => ({
  id,
  code: `L 1/${id}`,
  grossMassKg: 40,
  specimenIds: [`s${id}`],
  hasJars: false,
  ...said,
});
const look = (crateId: string, said = {}) => ({
  crateId,
  arrived: true,
  sealIntact: true,
  outsideDamage: "",
  ...said,
});
const at = new Date("2027-03-01T10:00:00.000Z");
const near = { outsideC: 18, roomC: 20, roomHumidity: 0.5 };
const unknown = { outsideC: null, roomC: null, roomHumidity: null };

test("a crate rests 24 h in like air, 48 h in unlike, and as long when nobody knows", () => {
  const rest = (air: typeof near | typeof unknown, said = {}) =>
    arrivedCrates([crate("1", said)], [look("1")], air, at)[0];
  expect(rest(near)).toMatchObject({ hours: 24, notBefore: "2027-03-02T10:00:00.000Z" });
  expect(rest({ ...near, outsideC: 3 })?.hours).toBe(48);
  expect(rest(unknown)).toMatchObject({ hours: 48, reasons: ["difference-not-known"] });
  expect(rest(near, { hasJars: true })).toMatchObject({ hours: 48, reasons: ["jars"] });
  expect(rest(near, { grossMassKg: 201 })).toMatchObject({ hours: 48, reasons: ["heavy"] });
});

test("a crate that did not come is left out and the others count", () => {
  const arrived = arrivedCrates(
    [crate("1"), crate("2")],
    [look("1"), look("2", { arrived: false })],
    near,
    at,
  );
  expect(arrived.map(({ id }) => id)).toEqual(["1"]);
});

test.each([
  ["a crate that nobody looked for", [crate("1"), crate("2")], [look("1")], "crate.not-looked-for"],
  ["a crate that is not on its way", [crate("1")], [look("1"), look("9")], "crate.not-under-way"],
  ["nothing that came", [crate("1")], [look("1", { arrived: false })], "crate.none-arrived"],
])("%s is refused", (_what, underWay, looks, reason) => {
  expect(() => arrivedCrates(underWay, looks, near, at)).toThrow(expect.objectContaining({ reason }));
});

test("a count names exactly what is expected, each once", () => {
  const expected = [
    { specimenId: "a", accessionNumber: "A" },
    { specimenId: "b", accessionNumber: "B" },
  ];
  const counted =
    (...ids: string[]) =>
    () =>
      requireFullCount(
        expected,
        ids.map((specimenId) => ({ specimenId })),
      );
  expect(counted("a", "b")).not.toThrow();
  expect(counted("a")).toThrow(
    expect.objectContaining({ reason: "crate.count-incomplete", parameters: { specimens: "B" } }),
  );
  expect(counted("a", "b", "c")).toThrow(expect.objectContaining({ reason: "crate.counted-others" }));
  expect(counted("a", "b", "b")).toThrow(expect.objectContaining({ reason: "crate.counted-others" }));
});
