import { expect, test } from "vitest";
import { agreedReturnBy, recalledSpecimens, type TimeStepFacts, timeSteps } from "#lib/loans/time-steps.ts";

const facts = (said: Partial<TimeStepFacts> = {}): TimeStepFacts => ({
  today: "2027-03-10",
  lines: [
    { specimenId: "a", accessionNumber: "AN 2019.0001", state: "at venue" },
    { specimenId: "b", accessionNumber: "AN 2019.0002", state: "travelling home" },
  ],
  withdrawn: [],
  recalls: [],
  openExtension: null,
  endsOn: "2027-06-01",
  agreedEndsOn: "2027-06-01",
  ...said,
});
const told = (said: Partial<TimeStepFacts>) =>
  timeSteps(facts(said)).map(({ outcome, code, action }) => `${outcome} ${code} ${action}`);

test.each<[string, Partial<TimeStepFacts>, string[]]>([
  ["nothing while its days stand", {}, []],
  [
    "a withdrawal offers to ask back what is out",
    { withdrawn: ["a"] },
    ["bar next.consent-withdrawn recallLoan"],
  ],
  ["not what is on its way home", { withdrawn: ["b"] }, []],
  [
    "what is asked back is sent home, and is offered no second time",
    { withdrawn: ["a"], recalls: [{ specimenIds: ["a"], returnBy: "2027-03-20" }] },
    ["attend next.recalled sendHome"],
  ],
  [
    "late, it is a bar",
    { recalls: [{ specimenIds: ["a"], returnBy: "2027-03-09" }] },
    ["bar next.recalled sendHome"],
  ],
  [
    "what is on its way home is not asked for any more",
    { recalls: [{ specimenIds: ["b"], returnBy: "2027-03-20" }] },
    [],
  ],
  [
    "a longer loan waits for its answer",
    { openExtension: { endsOn: "2027-09-01" } },
    ["attend next.answer-extension answerExtension"],
  ],
  [
    "an agreement of other days wants an amendment",
    { agreedEndsOn: "2027-05-01" },
    ["attend next.amend-days null"],
  ],
  ["without an agreement of both nothing is to be amended", { agreedEndsOn: null }, []],
])("%s", (_what, said, steps) => {
  expect(told(said)).toEqual(steps);
});

test("of two recalls of one specimen the earlier day counts", () => {
  const recalls = [
    { specimenIds: ["a"], returnBy: "2027-04-01" },
    { specimenIds: ["a", "b"], returnBy: "2027-03-15" },
  ];
  expect(recalledSpecimens(facts({ recalls }))).toEqual([
    { specimenId: "a", accessionNumber: "AN 2019.0001", returnBy: "2027-03-15" },
  ]);
});

test.each([
  ['{"term":{"returnBy":"2027-06-01"}}', "2027-06-01"],
  ['{"term":{"returnBy":"soon"}}', null],
  ["{}", null],
  ["no JSON", null],
])("frozen terms %s say %s", (frozen, day) => {
  expect(agreedReturnBy(frozen)).toBe(day);
});
