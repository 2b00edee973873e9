import { expect, test } from "vitest";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { judgeUse } from "#lib/suitability/rules/use.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const handling: Partial<RequestFacts> = { teachingUse: "handling" };
const jar = aSpecimenCase({ specimen: { preparation: "fluid-preserved", fluidName: "ethanol" } });
const publicShow: Partial<RequestFacts> = { purpose: "exhibition", audience: "general public" };
const stranger = "01920000-0000-7000-8000-0000000000ff";

const rows: [string, SpecimenCase, Partial<RequestFacts>, string, string, string][] = [
  ["viewing is clear", aSpecimenCase(), {}, "U1", "clear", "use.viewing"],
  ["handling what may be handled is clear", aSpecimenCase(), handling, "U1", "clear", "use.handling"],
  [
    "handling what may only be viewed is a bar",
    aSpecimenCase({ specimen: { use: "viewing only" } }),
    handling,
    "U1",
    "bar",
    "use.viewing-only",
  ],
  [
    "formaldehyde in hand is attend",
    aSpecimenCase({ specimen: { hazards: [{ substance: "formaldehyde", percent: 1, note: "" }] } }),
    handling,
    "U2",
    "attend",
    "use.hazard-in-hand",
  ],
  [
    "formaldehyde behind glass is clear",
    aSpecimenCase({ specimen: { hazards: [{ substance: "formaldehyde", percent: 1, note: "" }] } }),
    {},
    "U2",
    "clear",
    "use.no-hazard",
  ],
  [
    "a jar without a spill tray is attend",
    jar,
    { venue: aVenueFact({ spillProvision: false }) },
    "U2",
    "attend",
    "use.no-spill-provision",
  ],
  [
    "a jar where nobody has said is attend",
    jar,
    { venue: aVenueFact({ spillProvision: null }) },
    "U2",
    "attend",
    "use.spill-not-known",
  ],
  ["a jar above a spill tray is clear", jar, {}, "U2", "clear", "use.no-hazard"],
  ["a supervised room is clear", aSpecimenCase(), {}, "U3", "clear", "use.supervised"],
  [
    "a room without anybody is attend",
    aSpecimenCase(),
    { venue: aVenueFact({ supervisedRoom: false }) },
    "U3",
    "attend",
    "use.not-supervised",
  ],
  [
    "a room nobody has described is attend",
    aSpecimenCase(),
    { venue: aVenueFact({ supervisedRoom: null }) },
    "U3",
    "attend",
    "use.supervision-not-known",
  ],
  [
    "an open view in public is attend",
    aSpecimenCase(),
    { ...publicShow, venue: aVenueFact({ restrictedView: false }) },
    "U3",
    "attend",
    "use.open-view",
  ],
  [
    "a borrower on hold is a bar",
    aSpecimenCase(),
    { borrower: { ...aRequestFact().borrower, standing: "on hold" } },
    "U4",
    "bar",
    "use.borrower-on-hold",
  ],
  [
    "a borrower nobody has verified is attend",
    aSpecimenCase(),
    { borrower: { ...aRequestFact().borrower, verified: false } },
    "U4",
    "attend",
    "use.borrower-not-verified",
  ],
  ["the borrower's own venue is clear", aSpecimenCase(), {}, "G11", "clear", "use.own-venue"],
  [
    "a specimen that is due home from elsewhere before the days is clear",
    aSpecimenCase({ elsewhere: { loanNumber: "L 1", missing: false, dueOn: "2027-02-15" } }),
    {},
    "G11",
    "clear",
    "use.own-venue",
  ],
  [
    "one that would go straight on to the next venue is a bar",
    aSpecimenCase({ elsewhere: { loanNumber: "L 1", missing: false, dueOn: "2027-02-16" } }),
    {},
    "G11",
    "bar",
    "use.next-venue",
  ],
  ["a borrower without an earlier loan is clear", aSpecimenCase(), {}, "U5", "clear", "use.no-earlier-loan"],
  [
    "a borrower that brought everything home well is clear",
    aSpecimenCase(),
    { borrower: { ...aRequestFact().borrower, record: { loans: 3, late: 0, damaged: 0 } } },
    "U5",
    "clear",
    "use.good-record",
  ],
  [
    "a borrower that was late once is attend",
    aSpecimenCase(),
    { borrower: { ...aRequestFact().borrower, record: { loans: 3, late: 1, damaged: 0 } } },
    "U5",
    "attend",
    "use.record-with-marks",
  ],
  [
    "a borrower from whom one came home damaged is attend",
    aSpecimenCase(),
    { borrower: { ...aRequestFact().borrower, record: { loans: 3, late: 0, damaged: 1 } } },
    "U5",
    "attend",
    "use.record-with-marks",
  ],
  [
    "somebody else's venue is lending on, a bar",
    aSpecimenCase(),
    { venue: aVenueFact({ institutionId: stranger }) },
    "G11",
    "bar",
    "use.lending-on",
  ],
];

test.each(rows)("%s", (_what, subject, request, rule, outcome, fact) => {
  const found = judgeUse(subject, aRequestFact(request)).find((finding) => finding.rule === rule);
  expect(found).toMatchObject({ group: "use", outcome, fact });
});
