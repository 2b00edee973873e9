/** Words of the desk, in English. */
import { counted } from "#app/_words/counted.ts";
import type { Turn } from "#lib/desk/waits-for.ts";

export const deskWords = {
  title: "Due and at risk",
  due: "What needs somebody",
  dueOn: "By",
  outcome: "Outcome",
  what: "What",
  none: "Nothing waits. Enquiries, papers and returns appear here when they need somebody.",
  away: "Away now",
  loan: "Loan",
  borrower: "Borrower",
  venue: "Venue",
  endsOn: "Due home",
  specimens: "Specimens",
  noneAway: "Every specimen is in the house.",
  sentences: {
    "due.missing":
      "{loan}, {borrower}: {count} [count:specimen is|specimens are] missing. Look, ask, and record what is found.",
    "due.consent-withdrawn":
      "{loan}, {borrower}: a donor has withdrawn. Stop the display and plan a safe return.",
    "due.judged-worse":
      "{loan}, {borrower}: {count} [count:specimen is|specimens are] judged worse since {date}. What changed stands in its file.",
    "due.cover-ends": "{loan}, {borrower}: cover ends on {date}, before the loan does.",
    "due.overdue": "{loan}, {borrower}: overdue by {days} [days:day|days].",
    "due.return-not-booked": "{loan}, {borrower}: return transport is not booked; due home on {date}.",
    "due.decide": "{loan}, {borrower}: waiting for a decision (specimens: {count}).",
    "due.hold-expires": "{loan}, {borrower}: the held days lapse on {date}.",
    "due.draw-up": "{loan}, {borrower}: accepted, the agreement has to be drawn up.",
    "due.lender-signs": "{loan}, {borrower}: the centre has to sign the agreement.",
    "due.borrower-signs": "{loan}, {borrower}: the borrower has to sign the agreement.",
    "due.release": "{loan}, {borrower}: agreed from {date}; release when every gate holds.",
    "due.arrives": "{loan}, {borrower}: on the way; receipt has to be signed on arrival.",
    "due.seal-broken":
      "{loan}, {borrower}: crate {crate} came with a broken seal. Stays until each specimen in it has been checked since; {unchecked} to go.",
    "due.crate-damaged":
      "{loan}, {borrower}: crate {crate} came damaged outside: {damage}. Stays until each specimen in it has been checked since; {unchecked} to go.",
    "due.seal-broken-and-damaged":
      "{loan}, {borrower}: crate {crate} came with a broken seal and damaged outside: {damage}. Stays until each specimen in it has been checked since; {unchecked} to go.",
    "due.changed-away":
      "{loan}, {borrower}: {specimen} changed while it was away ({new} new, {worse} worse). Stays until somebody of the house has checked it, or it is checked in.",
    "due.changed-home":
      "{loan}, {borrower}: {specimen} came home changed ({new} new, {worse} worse). Stays until it is checked in.",
    "due.judged-gravely":
      "{loan}, {borrower}: {specimen} was checked in with the verdict “{verdict}”. Stays until it is checked again.",
    "due.open": "{loan}, {borrower}: crates rest until {moment}; open after that.",
    "due.coming-home": "{loan}, {borrower}: on the way home.",
    "due.check-in": "{loan}, {borrower}: home, to be counted and checked (specimens: {count}).",
    "due.close": "{loan}, {borrower}: everything is checked in; the loan can be closed.",
    "due.quotation-open":
      "{loan}, {borrower}: the quotation, version {version}, waits for an answer until {date}.",
    "due.quotation-expired":
      "{loan}, {borrower}: nobody answered the quotation, version {version}, until {date}. A new version is needed.",
    "due.cost-old":
      "{specimen}: the replacement cost for cover is of {date}, older than twelve months, and the specimen is on {loan}. Value it anew in its record.",
    "due.permit": "{specimen}: {kind} valid until {date}.",
    "due.consent-review": "{donor}: consent is due for review (specimens: {count}).",
    "due.consent-not-in-force": "{donor}: consent is not in force (specimens: {count}).",
  },
} as const;

/** The first page of a borrower. */
export const borrowerDeskWords = {
  question: "What do you want to show?",
  field: "A structure, a region or a number",
  hint: "English, Latin or German: “brachial plexus”, “regio axillaris”, “Niere”. A typing error is forgiven.",
  find: "Find specimens",
  browse: "See the whole catalogue",
  set: "Something that shows several structures",
  onSlip: (count: number) => `${counted(count, "specimen", "specimens")} on your slip`,
  needsYou: "What is expected of you",
  by: "by",
  requests: "Where your requests stand",
  noRequests:
    "Nothing is asked for yet. Find a specimen, note it on the slip, and send the slip when it says when and where.",
  finishSlip: "finish and send the slip",
  turn: "Whose turn",
  turns: { borrower: "yours", centre: "waiting for the centre", nobody: "nothing is due" } satisfies Record<
    Turn,
    string
  >,
  allLoans: "All your loans, those that are over too",
} as const;
