import { expect, test } from "vitest";
import { type ExtensionFacts, earliestReturnBy, extensionReasons } from "#lib/loans/extension.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const facts = (said: Partial<ExtensionFacts> = {}): ExtensionFacts => ({
  today: "2027-03-01",
  endsOn: "2027-06-01",
  newEndsOn: "2027-07-01",
  leftOn: "2027-01-10",
  crossesBorder: false,
  noticeDays: 30,
  findings: [],
  numbers: new Map([["a", "AN 2019.0001"]]),
  taken: [],
  gaps: [],
  homeDepartsOn: null,
  ...said,
});
const finding = (outcome: Finding["outcome"]): Finding => ({
  specimenId: "a",
  rule: "G1",
  group: "consent",
  outcome,
  fact: "consent.withdrawn",
  parameters: {},
  source: "",
  wayOut: "way.none",
});
const told = (said: Partial<ExtensionFacts>) =>
  extensionReasons(facts(said)).map(({ outcome, code }) => `${outcome} ${code}`);
const gap = {
  from: "2027-06-15T00:00:00.000Z",
  to: "2027-07-15T00:00:00.000Z",
  reason: "no-cover",
  coveredMinor: 0,
} as const;

test.each<[string, Partial<ExtensionFacts>, string[]]>([
  ["nothing where nothing stands against it", { findings: [finding("clear"), finding("attend")] }, []],
  ["a rule that bars", { findings: [finding("bar")] }, ["bar extension.barred"]],
  [
    "days that somebody else has",
    { taken: [{ accessionNumber: "AN 2019.0001", takenFrom: "2027-06-10" }] },
    ["bar extension.days-taken"],
  ],
  ["cover that ends first", { gaps: [gap] }, ["attend extension.cover-ends"]],
  ["customs papers for the old day", { crossesBorder: true }, ["attend extension.customs"]],
  [
    "a carnet that runs out",
    { crossesBorder: true, newEndsOn: "2028-03-01" },
    ["attend extension.carnet-ends"],
  ],
  ["asked with less than 30 days to go", { today: "2027-05-03" }, ["attend extension.asked-late"]],
  ["not with 30", { today: "2027-05-02" }, []],
  [
    "a way home that is planned already",
    { homeDepartsOn: "2027-05-30" },
    ["attend extension.way-home-planned"],
  ],
])("%s", (_what, said, reasons) => {
  expect(told(said)).toEqual(reasons);
});

test("a bar of the rules is told of its specimen", () => {
  const barred = extensionReasons(facts({ findings: [finding("bar")], gaps: [gap] }));
  expect(barred[0]?.parameters).toMatchObject({ specimen: "AN 2019.0001", fact: "consent.withdrawn" });
});

test("for its own need the centre gives 30 days, otherwise none", () => {
  expect(earliestReturnBy("own need", "2027-03-01", 30)).toBe("2027-03-31");
  expect(earliestReturnBy("consent withdrawn", "2027-03-01", 30)).toBe("2027-03-01");
});
