import fc from "fast-check";
import { expect, test } from "vitest";
import { RequestDraft } from "#lib/loans/inputs.ts";
import {
  conservatorWord,
  currentDecisions,
  oversightWord,
  toColumns,
  toCoverFacts,
  toRequest,
} from "#lib/loans/stored-request.ts";
import {
  audiences,
  displayStyles,
  faultOfDays,
  opensOutside,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import { anyDay } from "#tests/support/consents.ts";

const anyText = (most: number) => fc.string({ maxLength: most }).map((text) => text.trim());
const anyDraft: fc.Arbitrary<RequestDraft> = fc
  .record({
    venueId: fc.uuid(),
    title: anyText(160),
    purpose: fc.constantFrom("" as const, ...purposes),
    teachingUse: fc.constantFrom(...teachingUses),
    audience: fc.constantFrom(...audiences),
    paidAdmission: fc.boolean(),
    displayStyle: fc.constantFrom(...displayStyles),
    pictures: fc.uniqueArray(fc.constantFrom(...plannedPictures)),
    activities: fc.uniqueArray(fc.constantFrom(...plannedActivities)),
    startsOn: anyDay,
    endsOn: anyDay,
    opensOn: fc.option(anyDay),
    factsConfirmed: fc.boolean(),
    contactName: anyText(120),
    contactEmail: fc.constantFrom("", "lecturer@example.org"),
    contactPhone: fc.constantFrom("", "+47 000 000", "+353 1 555 0100"),
    cover: fc.option(
      fc.record({ minor: fc.integer({ min: 1, max: 1e12 }), currency: fc.constantFrom("EUR", "NOK") }),
    ),
    note: anyText(200),
  })
  .filter((days) => faultOfDays(days) === null)
  .map((draft) => (opensOutside(draft) ? { ...draft, opensOn: draft.startsOn } : draft));
const now = new Date("2027-01-15T09:00:00Z");

test("what was stated comes back as it was stated", () => {
  fc.assert(
    fc.property(anyDraft, (draft) => {
      expect(toRequest(toColumns(draft, now))).toEqual(draft);
      expect(RequestDraft.parse(draft)).toEqual(draft);
    }),
  );
});

test("facts are confirmed at a moment, or not at all", () => {
  const [draft] = fc.sample(anyDraft, 1) as [RequestDraft];
  expect(toColumns({ ...draft, factsConfirmed: true }, now).factsConfirmedAt).toEqual(now);
  expect(toColumns({ ...draft, factsConfirmed: false }, now).factsConfirmedAt).toBeNull();
  const { factsConfirmed: _left, opensOn: _out, ...shorter } = draft;
  expect(toColumns(shorter, now)).toMatchObject({ factsConfirmedAt: null, opensOn: null });
});

test.each([
  [null, null],
  ["2027-03-01", null],
  ["2027-06-30", null],
  ["2027-02-28", "loan.opens-outside"],
  ["2027-07-01", "loan.opens-outside"],
])("an opening on %s of a loan from 1 March to 30 June: %s", (opensOn, message) => {
  const [draft] = fc.sample(anyDraft, 1) as [RequestDraft];
  const days = { startsOn: "2027-03-01", endsOn: "2027-07-01", opensOn };
  const issues = RequestDraft.safeParse({ ...draft, ...days }).error?.issues ?? [];
  expect(issues.map((issue) => issue.message)).toEqual(message === null ? [] : [message]);
});

test("a request that is not stated may be saved, a reversed one may not", () => {
  const draft = {
    ...toRequest(toColumns(fc.sample(anyDraft, 1)[0] as RequestDraft, now)),
    title: "",
    contactName: "",
    contactEmail: "",
    contactPhone: "",
  };
  expect(RequestDraft.safeParse(draft).success).toBe(true);
  const reversed = RequestDraft.safeParse({
    ...draft,
    startsOn: "2027-03-01",
    endsOn: "2027-03-01",
    opensOn: null,
  });
  expect(reversed.error?.issues).toMatchObject([{ path: ["endsOn"], message: "loan.period-reversed" }]);
});

test("a certificate is read as rules read it", () => {
  const row = {
    id: "1",
    loanId: "2",
    insurer: "Mutual cover",
    policyNumber: "P 1",
    amountMinor: 9_900n,
    currency: "EUR",
    startsAt: new Date("2027-01-01T00:00:00Z"),
    endsAt: new Date("2027-12-31T00:00:00Z"),
    coversTransit: true,
    coversStay: true,
    territories: ["NO"],
  };
  expect(toCoverFacts(row)).toEqual({
    amount: { minor: 9_900, currency: "EUR" },
    startsAt: "2027-01-01T00:00:00.000Z",
    endsAt: "2027-12-31T00:00:00.000Z",
    coversTransit: true,
    coversStay: true,
    territories: ["NO"],
  });
});

const decision = (office: string, outcome: string, day: string) => ({
  id: `${office} ${day}`,
  loanId: "1",
  accountId: "a",
  decidedBy: "A",
  office,
  outcome,
  conditions: "",
  grounds: "g",
  reference: "OB 4",
  specimenIds: [],
  decidedAt: new Date(`${day}T10:00:00Z`),
});
const submitted = new Date("2027-01-10T10:00:00Z");

test("words on an earlier request count no more", () => {
  const rows = [
    decision("donor officer", "accept", "2027-01-09"),
    decision("donor officer", "accept", "2027-01-11"),
  ];
  expect(currentDecisions(rows, submitted).map(({ id }) => id)).toEqual(["donor officer 2027-01-11"]);
  expect(currentDecisions(rows, null)).toEqual([]);
});

test("the oversight body's last word counts, where it accepts", () => {
  const yes = decision("oversight body", "accept", "2027-01-11");
  const no = decision("oversight body", "decline", "2027-01-12");
  expect(oversightWord([yes], submitted)).toEqual({ reference: "OB 4", decidedOn: "2027-01-11" });
  expect(oversightWord([yes, no], submitted)).toBeNull();
  expect(oversightWord([decision("oversight body", "accept", "2027-01-09")], submitted)).toBeNull();
});

test("the conservator's last word counts, where it accepts, with its conditions", () => {
  const yes = { ...decision("conservator", "accept", "2027-01-11"), conditions: "On its side." };
  const no = decision("conservator", "decline", "2027-01-12");
  expect(conservatorWord([yes], submitted)).toEqual({ decidedOn: "2027-01-11", conditions: "On its side." });
  expect(conservatorWord([yes, no], submitted)).toBeNull();
  expect(conservatorWord([decision("conservator", "accept", "2027-01-09")], submitted)).toBeNull();
  expect(conservatorWord([decision("curator", "accept", "2027-01-11")], submitted)).toBeNull();
});
