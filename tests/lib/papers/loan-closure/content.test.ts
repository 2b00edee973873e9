import { expect, test } from "vitest";
import { closureSubjects, LoanClosureContent, loanClosureContent } from "#lib/papers/loan-closure/content.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const plain = someCase({ specimens: 3, crates: 1 });
const home = (accessionNumber: string, at: string, toParty: string) => ({
  direction: "home" as const,
  at,
  fromParty: "Gentle Freight",
  toParty,
  releasedBy: "carrier",
  receivedBy: "Ada Keeper",
  accessionNumber,
});
const paperCase = {
  ...plain,
  handovers: [
    home("AN 2004.0001", "2027-03-01T08:00:00.000Z", "Gentle Freight"),
    home("AN 2004.0001", "2027-03-03T10:00:00.000Z", "Lending Centre"),
    home("AN 2004.0002", "2027-03-04T10:00:00.000Z", "Lending Centre"),
  ],
};

test("a closure reads back as it was written, each specimen with the day it was taken over again", () => {
  const content = loanClosureContent(paperCase, "", someHead());
  expect(LoanClosureContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
  expect(content.specimens.map(({ backOn }) => backOn)).toEqual(["2027-03-03", "2027-03-04", null]);
});

test("what was withdrawn before is not among what came back", () => {
  const [first, ...others] = paperCase.specimens;
  if (!first) throw new RangeError("There is a specimen.");
  const off = { ...first, ending: { ...first.ending, state: "withdrawn" } };
  const { specimens } = loanClosureContent({ ...paperCase, specimens: [off, ...others] }, "", someHead());
  expect(specimens).toHaveLength(2);
});

test("a loan that is not closed, or that ended without having left, has no closure", () => {
  expect(closureSubjects(paperCase)).toEqual([""]);
  const open = { ...paperCase, loan: { ...paperCase.loan, closedOn: null } };
  expect(closureSubjects(open)).toEqual([]);
  expect(() => loanClosureContent(open, "", someHead())).toThrow(RangeError);
  expect(closureSubjects({ ...paperCase, specimens: [] })).toEqual([]);
});
