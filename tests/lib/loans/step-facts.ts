/** Facts for tests of what stands between a loan and its next step: an enquiry that nothing is against, until a test says otherwise. */
import { nextSteps, type StepFacts } from "#lib/loans/next-step.ts";

export const id = "01920000-0000-7000-8000-000000000101";
export const other = "01920000-0000-7000-8000-000000000102";
export const facts = (said: Partial<StepFacts>): StepFacts => ({
  state: "enquiry",
  today: "2027-03-10",
  now: "2027-03-10T09:00:00.000Z",
  endsOn: "2027-07-01",
  missingFields: [],
  faultOfStart: null,
  lines: [{ specimenId: id, accessionNumber: "AN 1", state: "noted", isChecked: false }],
  findings: [],
  officesNeeded: ["curator"],
  officesAccepted: [],
  agreement: null,
  hasCover: false,
  gates: [],
  homeOn: "2027-07-01",
  booked: new Map([
    [id, { endsOn: "2027-07-15" }],
    [other, { endsOn: "2027-07-15" }],
  ]),
  harm: [],
  resting: [],
  ...said,
});
export const codes = (said: Partial<StepFacts>) =>
  nextSteps(facts(said)).map(({ outcome, code, action }) => [outcome, code, action]);
export const line = (state: StepFacts["lines"][number]["state"], isChecked = false) => [
  { specimenId: id, accessionNumber: "AN 1", state, isChecked },
];
export const second = (state: StepFacts["lines"][number]["state"], isChecked = false) => [
  { specimenId: other, accessionNumber: "AN 2", state, isChecked },
];
