/**
 * The clauses of the loan agreement, as data, in this project's own plain words.
 * A clause applies by what the loan is; {names} are filled from its facts. The
 * words are a house draft and no legal advice: the parties' counsel has the last
 * word, and what an authority asks is to be checked with it.
 */
import type { AgreementTerms } from "#lib/loans/frozen-terms.ts";

export type ClauseFacts = {
  hasHuman: boolean;
  hasAnimal: boolean;
  hasJars: boolean;
  isPublic: boolean;
  isExport: boolean;
  isTeaching: boolean;
  isShown: boolean;
  hasDisposition: boolean;
  /** Sampling, casting or scanning is allowed for every specimen. */
  allowsActivities: boolean;
  allowsSampling: boolean;
};

export type ClauseText = {
  id: string;
  heading: string;
  text: string;
  applies: (facts: ClauseFacts) => boolean;
};

const always = () => true;
const human = (facts: ClauseFacts) => facts.hasHuman;

export const clauseTexts: readonly ClauseText[] = [
  {
    id: "parties",
    heading: "Parties",
    text: "The lender is {lender}. The borrower is {borrower}. Each party states that the person who signs for it has the authority to do so. The borrower's contact for this loan is {contact}.",
    applies: always,
  },
  {
    id: "precedence",
    heading: "What this agreement is made of",
    text: "It consists of the conditions of the decision, the schedule of specimens with its limits, and these clauses. Where they differ, the first named prevails. Nothing said outside them binds a party.",
    applies: always,
  },
  {
    id: "specimens",
    heading: "Specimens",
    text: "The schedule names {specimens} by accession number, with components, size and mass. A component or a sheet that the schedule names is part of the loan and is counted at every hand-over.",
    applies: always,
  },
  {
    id: "ownership",
    heading: "Ownership",
    text: "A loan changes who holds the specimens for a time, and nothing else. Ownership stays as it is. The borrower may not sell, pledge, keep back or lend on a specimen, and no creditor of the borrower gains a right to it.",
    applies: always,
  },
  {
    id: "human-material",
    heading: "Human material",
    text: "The specimens are parts of people who gave their bodies. They are not goods and not waste. The borrower treats them, and lets them be treated, with respect, and speaks of specimens and donors in all its texts.",
    applies: human,
  },
  {
    id: "purpose",
    heading: "Purpose",
    text: "The specimens are lent for {purpose}. They are shown to {audience}, {admission}; the manner is {style}. Any other use needs the lender's consent in writing before it begins.",
    applies: always,
  },
  {
    id: "consent",
    heading: "What the donors allowed",
    text: "The lender has compared the purpose with what the donors allowed, as far as its records go, and states the restrictions that follow in the schedule. The borrower keeps within them. The evidence is held by the lender and may be inspected there, without the donors' names. Whether the use is allowed at the venue is for the borrower to check with the local authority.",
    applies: human,
  },
  {
    id: "withdrawal",
    heading: "If consent ends or somebody makes a claim",
    text: "If a consent is withdrawn, or a family, a community or an authority makes a claim, the lender tells the borrower. The borrower takes the specimen from view and from use within 24 hours and keeps it safe until the lender brings it home. Neither party charges the other for it.",
    applies: human,
  },
  {
    id: "anonymity",
    heading: "Donors stay unknown",
    text: "Nobody tries to find out who a donor was. No picture of a face, no text and no remark may help others to do so. Whoever believes that they have recognised a person tells the lender and nobody else.",
    applies: human,
  },
  {
    id: "licences",
    heading: "Licences for showing",
    text: "The borrower holds what licences the place asks for showing human material in public, names the responsible person, and sends the lender a copy before the first specimen leaves. It checks this with the local authority.",
    applies: (facts) => facts.hasHuman && facts.isPublic,
  },
  {
    id: "term",
    heading: "Term",
    text: "The loan begins with delivery on {startsOn}. The specimens are to be ready for collection so that they leave the venue by {returnBy}. The lender keeps {daysBefore} days before and {daysAfter} days after for checks, packing, travel and rest.",
    applies: always,
  },
  {
    id: "venue",
    heading: "Venue",
    text: "The specimens stay at {venue}, {venueAddress}. A move to another room or building needs the lender's consent in writing.",
    applies: always,
  },
  {
    id: "extension",
    heading: "Extension",
    text: "The borrower asks for an extension in writing at least 30 days before the end. The lender answers after it has checked cover, consent, licences and the next booking again.",
    applies: always,
  },
  {
    id: "recall",
    heading: "Recall",
    text: "The lender may recall a specimen at once when a term is broken, when it is in danger, or when the law asks for it; and with 30 days' notice for its own need. A specimen is always let go home.",
    applies: always,
  },
  {
    id: "costs",
    heading: "Costs",
    text: "The borrower bears the costs of checks, packing, transport both ways, cover, permits and display that both have agreed in writing. An agreed cost that arises from a recall for the lender's own need is borne by the lender.",
    applies: always,
  },
  {
    id: "no-price",
    heading: "No price for human material",
    text: "Charges recover costs. Nothing is paid for the remains themselves, and the borrower makes no profit from showing them beyond its own costs.",
    applies: human,
  },
  {
    id: "replacement-cost",
    heading: "Replacement cost for cover",
    text: "The schedule states for each specimen what it would cost to prepare or replace it, in all {coverNeeded}. It is a basis for cover and says nothing of worth. It is looked at again when the loan lasts longer than 12 months.",
    applies: always,
  },
  {
    id: "cover",
    heading: "Cover",
    text: "The borrower takes out cover against all risks from the moment a specimen leaves its place until it is back in it, transit included, for at least the replacement cost, in the countries of the journey. The lender receives the certificate 14 days before dispatch. Nothing leaves without it.",
    applies: always,
  },
  {
    id: "care",
    heading: "Care",
    text: "The borrower gives the specimens the care that it gives to the best of its own and answers for loss and damage from receipt until the carrier takes them over, whoever caused it.",
    applies: always,
  },
  {
    id: "total-loss",
    heading: "If a human specimen is destroyed",
    text: "What remains goes back to the lender. It is not salvage, it is not left to an insurer, and it is not disposed of by anybody else.",
    applies: human,
  },
  {
    id: "condition",
    heading: "Checks of condition",
    text: "Each specimen is checked four times: before it leaves, after it is unpacked, before it is packed again, and at home. Each check is dated and signed and stands beside the one before. The borrower reports any difference on the day it sees it.",
    applies: always,
  },
  {
    id: "no-alteration",
    heading: "Nothing is altered",
    text: "The borrower does not clean, treat, sample, cast, scan, take apart or pose a specimen anew without consent in writing. It may do what keeps a specimen from immediate harm, and says so at once.",
    applies: always,
  },
  {
    id: "activities",
    heading: "What may be done with the specimens",
    text: "Allowed for every specimen of the schedule: {activities}. The lender's written permission says what and how, and nothing is done beyond it. The lender receives a copy of every result.",
    applies: ({ allowsActivities }) => allowsActivities,
  },
  {
    id: "sampling",
    heading: "No sampling",
    text: "No tissue, fluid or surface is sampled and no genetic analysis is made of human material.",
    applies: ({ hasHuman, allowsSampling }) => hasHuman && !allowsSampling,
  },
  {
    id: "genetic-analysis",
    heading: "No genetic analysis",
    text: "Whatever is sampled, no genetic analysis is made of human material.",
    applies: ({ hasHuman, allowsSampling }) => hasHuman && allowsSampling,
  },
  {
    id: "environment",
    heading: "Air and light",
    text: "The borrower keeps each specimen within the limits of the schedule and all of them within the limits of the group. It records temperature and humidity at least every 30 minutes, keeps the record, and reports when a limit is passed or the record has a gap of more than two hours.",
    applies: always,
  },
  {
    id: "display",
    heading: "Display",
    text: "Each specimen stands or lies as the lender has agreed, behind a case or a barrier unless it may be handled, away from daylight, heat and draught. A notice beside human specimens tells that they are from donors and asks for respect.",
    applies: (facts) => facts.isShown,
  },
  {
    id: "handling",
    heading: "Handling",
    text: "Only trained people lift, turn or unpack a specimen, in the number and in the manner of the crate's instructions.",
    applies: always,
  },
  {
    id: "teaching",
    heading: "Teaching",
    text: "A teacher is present whenever learners are with a specimen. Specimens do not leave the room. {teachingUse} The borrower keeps a list of the days of use.",
    applies: (facts) => facts.isTeaching,
  },
  {
    id: "security",
    heading: "Security and fire",
    text: "The room is locked when nobody is in charge of it, keys are accounted for, fire is detected day and night, and somebody can be reached at any hour.",
    applies: always,
  },
  {
    id: "jars",
    heading: "Jars",
    text: "Jars stay upright, closed and above a tray that holds their fluid, in a ventilated room without open flame. The borrower has the safety sheet of the fluid and what is needed for a spill, and tells the lender when a level falls.",
    applies: (facts) => facts.hasJars,
  },
  {
    id: "packing",
    heading: "Packing",
    text: "The crates are the lender's. The borrower keeps them empty and closed, in the climate of the specimens, and packs in the same manner with the same materials for the way home.",
    applies: always,
  },
  {
    id: "transport",
    heading: "Transport",
    text: "Carriers and routes are agreed by both parties. Crates are never left unattended and travel with as few changes of vehicle as possible. The way out and the way home are planned as the schedule of crates and stages states.",
    applies: always,
  },
  {
    id: "border",
    heading: "Borders",
    text: "The specimens cross a border for a time and come back. The borrower and the lender each obtain the papers of their own country, check with the local authority which these are, and see that they are discharged when the specimens are home.",
    applies: (facts) => facts.isExport,
  },
  {
    id: "receipt",
    heading: "Receipt and rest",
    text: "On arrival the borrower counts the crates, looks at seals and outsides, and confirms receipt the same day. A crate stays closed in the room until the moment that the receipt states, so that no damp settles inside. Specimens and components are counted when it is opened.",
    applies: always,
  },
  {
    id: "access",
    heading: "Access",
    text: "The lender may see the specimens and the records of air and light at any reasonable time. The borrower tells the lender in good time of building works, staff changes and events near the specimens.",
    applies: always,
  },
  {
    id: "incident",
    heading: "Incidents",
    text: "When something happens, the borrower makes the specimen safe, takes pictures for the lender, repairs nothing, and calls at once. It writes within two working days and reports in full within ten.",
    applies: always,
  },
  {
    id: "pictures",
    heading: "Pictures",
    text: "Allowed are: {pictures}. All others are not allowed, those by visitors included.",
    applies: always,
  },
  {
    id: "credit",
    heading: "Credit",
    text: "The specimens are credited to {lender}. Texts about human specimens are shown to the lender before they are printed or posted.",
    applies: always,
  },
  {
    id: "promotion",
    heading: "No promotion with human material",
    text: "Human specimens and their likeness are not used in advertising, on merchandise or as decoration.",
    applies: human,
  },
  {
    id: "objections",
    heading: "Objections",
    text: "An objection to the showing of a human specimen is answered with respect and told to the lender within two working days.",
    applies: human,
  },
  {
    id: "confidentiality",
    heading: "Confidence",
    text: "Reports on the venue, replacement costs and names of persons are used for this loan only and kept from others.",
    applies: always,
  },
  {
    id: "cancellation",
    heading: "Cancellation",
    text: "Either party may cancel in writing before dispatch. It then bears the agreed costs that have already arisen.",
    applies: always,
  },
  {
    id: "breach",
    heading: "Breach and insolvency",
    text: "If the borrower breaks a term and does not mend it when asked, or can no longer pay, the lender may fetch the specimens and deal with the venue directly. The cost of the way home is secured before dispatch.",
    applies: always,
  },
  {
    id: "changes",
    heading: "Changes",
    text: "A change, a specimen added or exchanged included, is made as a new version of this agreement that both parties sign. Until then the last signed version holds.",
    applies: always,
  },
  {
    id: "disposition",
    heading: "Specimens that are owed back",
    text: "Some specimens are owed to burial, cremation or a family by a day that the schedule states. They are home well before it, and no extension is given beyond it.",
    applies: (facts) => facts.hasDisposition,
  },
  {
    id: "animals",
    heading: "Animal material",
    text: "The lender states what papers of species protection it holds. The borrower keeps them with the specimen, shows them when asked, and checks with the local authority whether its country asks for more.",
    applies: (facts) => facts.hasAnimal,
  },
  {
    id: "law",
    heading: "Law and disputes",
    text: "The law of {lenderCountry} applies as far as the parties may choose it. They try to settle a dispute by talking, then by mediation, then before the courts at {lenderCity}.",
    applies: always,
  },
  {
    id: "signature",
    heading: "Signature",
    text: "Both parties sign this version in the lending office's program. A signature holds the signer's name and role, the time, and the SHA-256 of these terms; a signed version never changes. A party that asks for ink or for another form says so before it signs.",
    applies: always,
  },
];

export type Clause = AgreementTerms["clauses"][number];

/**
 * The clauses that apply, numbered, with their words filled in.
 * @throws {RangeError} when a word of a clause has nothing to be filled with
 */
export function clausesFor(facts: ClauseFacts, words: Readonly<Record<string, string>>): Clause[] {
  return clauseTexts
    .filter((clause) => clause.applies(facts))
    .map(({ id, heading, text }, index) => ({
      id,
      number: index + 1,
      heading,
      text: text.replace(/\{(\w+)\}/g, (_whole, name: string) => {
        const word = words[name];
        if (word === undefined) throw new RangeError(`clause ${id}: nothing for {${name}}`);
        return word;
      }),
    }));
}
