/** Words of the desk, in English. */
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
  startLoan: "Find specimens and put them on a slip to ask for a loan.",
  find: "Find specimens",
  sentences: {
    "due.missing": "{loan}, {borrower}: missing specimens: {count}. Look, ask, and record what is found.",
    "due.consent-withdrawn":
      "{loan}, {borrower}: a donor has withdrawn. Stop the display and plan a safe return.",
    "due.cover-ends": "{loan}, {borrower}: cover ends on {date}, before the loan does.",
    "due.overdue": "{loan}, {borrower}: overdue by {days} days.",
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
    "due.permit": "{specimen}: {kind} valid until {date}.",
    "due.consent-review": "{donor}: consent is due for review (specimens: {count}).",
    "due.consent-not-in-force": "{donor}: consent is not in force (specimens: {count}).",
  },
} as const;
