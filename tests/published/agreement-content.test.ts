/**
 * What published procedure standards, guidelines and templates ask of a loan
 * agreement, item by item, and the clause or annex in which each one appears. Only
 * the facts are taken over; the words are this project's own. Sources were read as
 * summaries or copies where the whole was not at hand.
 */
import { describe, expect, test } from "vitest";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { clauseIds, clauseLibrary } from "#lib/agreements/clauses/library.ts";
import { writeClause } from "#lib/agreements/clauses/written-clause.ts";
import type { AnnexMark } from "#lib/agreements/terms-annexes.ts";
import { annexBlocks } from "#lib/papers/agreement-annexes.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { sampleBefore } from "#tests/support/clause-samples.ts";

const clauses = new Map(
  clauseIds.map((id) => [clauseLibrary[id].number, writeClause(id, sampleBefore, clausesIn.en).text]),
);
const terms = someTerms(5, {
  amends: {
    number: 1,
    version: 1,
    sha256: "a".repeat(64),
    differences: [{ path: ["term", "returnBy"], before: "2027-06-01", after: "2027-07-01" }],
    earlier: [{ version: 1, sha256: "a".repeat(64) }],
  },
});
const printed = textOfBlocks(annexBlocks(terms, englishPaper));
const annexes = new Map(
  printed.split(/\n(?=[A-M] Annex )/).map((text) => [text.trim().charAt(0) as AnnexMark, text] as const),
);

type Place = number | AnnexMark;
const textOf = (place: Place) => (typeof place === "number" ? clauses.get(place) : annexes.get(place)) ?? "";

const frame1974 = "International council of museums, guidelines for loans, 1974: frame of a loan agreement";
const standardLoan = "Network of European museum organisations, standard loan agreement";
const touring = "Touring form of a network of exhibition services: attachments";
const procedure = "Open procedure standard for collections, loans out: minimum of a loan";
const organisers = "Group of large exhibition organisers, 1995: checklists of contract and facilities";
const green = "Group of large exhibition organisers, green protocol, 2023";
const ethics = "Code of ethics for museums, 2004: human remains";
const imageAdvice = "International federation of associations of anatomists: recommendations on images";
const donation =
  "International federation of associations of anatomists, 2012: good practice of donation (detail from memory)";
const anatomists = "American association of anatomists, 2019: body donation policy";
const packing = "Packing lists of the trade, and EN 15946 by its scope: packing for transport";
const condition = "EN 16095 by its scope: condition recording";
const facility = "Standard facility report forms, 1998 and 2008";
const couriers = "Registrars' couriering guidance, and the shared courier training framework, 2020";
const network = "Loan form of a collection network: incidents";
const library = "Loan terms of a library: example rule";
const natural = "Loan policy of a natural history collection";
const indemnity = "Government indemnity scheme: application form and conditions";
const provenance = "Declaration on human anatomy collections, Leiden 2012";
const electronic = "Regulation (EU) 910/2014, Articles 25 and 26";
const privacy = "General data protection regulation (from memory: Article 33)";
const display = "Guidance on public display of human remains: licence and responsible person";
const species = "Convention on trade in endangered species: papers of a specimen";
const anatomyPractice = "Practice notes for anatomical examination: time of burial or cremation";

const rows: [item: string, source: string, place: Place, words: RegExp][] = [
  ["fixed period", procedure, 11, /begins with delivery on .* ends when the specimens have left/],
  ["stated reason", procedure, 6, /uses the specimens for .* only/],
  [
    "written agreement, signed before the loan begins",
    procedure,
    49,
    /days before dispatch.*Without both signatures nothing leaves/,
  ],
  [
    "cover for the whole time, transit included",
    procedure,
    18,
    /until it is back in it, transit and stay included/,
  ],
  ["condition known and up to date", procedure, "B", /last check of each specimen/],
  ["location stays known", procedure, 12, /moves nothing before the lender has consented/],
  ["title stays with the lender", procedure, 4, /Ownership stays where it is/],
  ["extension asked for in time", procedure, 13, /at least 30\u00A0days before the end/],
  ["parties", standardLoan, 1, /The lender is .* The borrower is/],
  ["specimens", standardLoan, "A", /Accession number/],
  ["exhibition or course", standardLoan, 6, /under the title/],
  ["data of the insurance", standardLoan, "G", /Certificate/],
  ["costs", standardLoan, "I", /Who bears what/],
  ["conditions as part of the agreement", standardLoan, 2, /these clauses, the schedule and the annexes/],
  ["translation with one text that rules", standardLoan, 2, /the text in English rules/],
  ["responsibilities and expenses", frame1974, 15, /transport both ways/],
  ["condition reports", frame1974, 21, /checked four times/],
  ["insurance", frame1974, 18, /against all risks/],
  ["customs", frame1974, 33, /Importer of record/],
  ["packing", frame1974, 30, /with the same materials/],
  ["transport", frame1974, 31, /carrier and route/],
  ["escorts", frame1974, 32, /lender's courier/],
  ["physical environment", frame1974, 24, /relative humidity/],
  ["security", frame1974, 28, /locked when nobody is in charge/],
  ["photography and reproduction", frame1974, 39, /Pictures by visitors/],
  ["sections changed in writing by agreement", frame1974, 47, /numbered amendment/],
  ["list of works", touring, "A", /Upper limb/],
  ["itinerary and carriers", touring, "E", /Careful carriers/],
  ["crate list", touring, "F", /C-01/],
  ["venue contacts", touring, "E", /Borrower at any hour/],
  ["publication details", touring, 41, /of each publication/],
  ["evaluation", touring, 41, /short report/],
  ["contract checklist: liability", organisers, 19, /answers for loss and damage/],
  ["contract checklist: cancellation", organisers, 45, /may cancel in writing/],
  ["contract checklist: law and disputes", organisers, 48, /The law of/],
  ["contract checklist: credit", organisers, 40, /credit/],
  ["contract checklist: no treatment without consent", organisers, 22, /without consent in writing/],
  ["facilities checklist: deviations", organisers, "C", /Deviation/],
  ["greener option first", green, 52, /burdens the environment least/],
  ["climate band of 16–25 °C and 40–60 %", green, 30, /16–25 °C and 40–60 %/],
  ["removal requests answered quickly", ethics, 43, /within 48\u00A0hours/],
  ["respect and the views of communities of origin", ethics, 43, /community of origin/],
  ["tact and dignity on display", ethics, 25, /asks for respect/],
  ["images derive from persons", imageAdvice, 39, /treated like the specimens themselves/],
  ["no three-dimensional files in public", imageAdvice, 39, /Three-dimensional data: not published/],
  ["payment for costs, never for remains", donation, 16, /nothing is paid for the remains/],
  ["anonymity of the donor", donation, 9, /tries to find out who a donor was/],
  ["use within consent", donation, 7, /within what the donors allowed/],
  ["withdrawal of consent", donation, 8, /consent is withdrawn/],
  ["documented disposal by the lender alone", anatomists, 20, /nobody but the lender decides/],
  ["secured rooms and supervised learners", anatomists, 27, /No learner is alone with a specimen/],
  ["crate by number, outer size and gross mass", packing, "F", /Length mm\tWidth mm\tHeight mm\tGross kg/],
  ["contents of each crate", packing, "F", /AN 2004.0100/],
  ["orientation and lifting", packing, "F", /Two persons lift it.*This side up/s],
  ["date, state and reference of each condition report", condition, "B", /Checked on\tCondition\tSHA-256/],
  ["pictures with the report, signed by both", condition, 21, /picture.* signed by both parties/],
  ["climate and light of the venue", facility, "C", /Highest temperature.*Light, lx/s],
  ["fire detection and night guard", facility, "C", /Fire detection.*Guard at night/s],
  [
    "provision for a spill and restricted view",
    facility,
    "C",
    /Provision for a spill|Room that nobody sees into/,
  ],
  ["why a courier is sent", couriers, 32, /ask first whether the journey is needed/],
  ["courier signs the checks", couriers, 32, /signs the checks for the lender/],
  [
    "notice now, in writing within 2, in full within 10 working days",
    network,
    37,
    /at once.*2\u00A0working days.*10\u00A0working days/,
  ],
  ["revaluation beyond 12 months", library, 17, /longer than 12\u00A0months/],
  ["recall for own need with 30 days", natural, 14, /30\u00A0days' notice/],
  ["indemnity and immunity asked three months before", indemnity, 34, /3\u00A0months before dispatch/],
  ["cover from the normal place until back in it", indemnity, 18, /leaves its place until it is back in it/],
  ["specimen never without its record", provenance, "H", /Evidence by specimen/],
  ["electronic signature and what it holds", electronic, 49, /SHA-256 of the terms/],
  ["leak told in time", privacy, 44, /within 72\u00A0hours/],
  ["licence, premises and responsible person", display, 10, /responsible person/],
  ["papers of animal specimens", species, 51, /species protection/],
  ["specimens owed back are home in time", anatomyPractice, 50, /at least 60\u00A0days before/],
  ["handling, spill and emergency sheet", facility, "J", /Spill:.*Fire or water:/s],
  ["texts beside specimens", ethics, "K", /meet them with respect/],
  ["record of air and light", facility, "L", /% RH/],
  ["what an amendment changes", frame1974, "M", /return by/],
];

test.each(rows)("%s (%s) stands in %s", (_item, _source, place, words) => {
  expect(textOf(place)).toMatch(words);
});

describe("the list of clauses", () => {
  test("is of fifty-two clauses and thirteen annexes", () => {
    expect(clauses.size).toBe(52);
    expect([...annexes.keys()].join("")).toBe("ABCDEFGHIJKLM");
  });
});
