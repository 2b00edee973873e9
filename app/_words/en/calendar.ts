/** Words of a person's calendar, in English: its page, and what each event is called in other programs. */
export const calendarWords = {
  title: "Calendar",
  about:
    "Your own calendar as an address that calendar programs read (iCalendar): departures, arrivals, openings, returns, checks, the steps of plans, crates that rest, and the end of cover, insurance, permits and consents, as far as you may see them.",
  secret:
    "Whoever has the address reads your calendar without signing in. Keep it to yourself; make a new one when it may have been seen, and the old one stops.",
  none: "You have no address yet.",
  since: "You have an address since",
  toldOnce: "It was told once and is kept nowhere.",
  make: "Make an address",
  makeNew: "Make a new address",
  revoke: "Revoke the address",
  revokeFollows: "Programs that read it find nothing any more.",
  revoked: "The address is revoked.",
  once: "Copy the address now: it is told once.",
  copy: "Copy",
  copied: "Copied",
  name: (who: string) => `Anatheca, ${who}`,
  ahead: "What is in it",
  noEvents: "Nothing of yours falls on a day within the next two years.",
  on: "On",
  what: "What",
  more: (count: number) => `and ${count} more, later`,
} as const;

export const calendarSentences = {
  "calendar.departs-out": "{loan}, {borrower}: departure",
  "calendar.arrives-out": "{loan}, {borrower}: arrival at the venue",
  "calendar.departs-home": "{loan}, {borrower}: departure for home",
  "calendar.arrives-home": "{loan}, {borrower}: arrival at home",
  "calendar.opening": "{loan}, {borrower}: opening",
  "calendar.return-by": "{loan}, {borrower}: return-by",
  "calendar.cover-ends": "{loan}, {borrower}: cover ends ({insurer})",
  "calendar.may-open": "{loan}, {borrower}: crate {crate} rests closed until now",
  "calendar.recalled": "{loan}, {borrower}: specimens are asked back by today",
  "calendar.check-in": "{loan}, {borrower}: checks at home are due",
  "calendar.plan-step": "{loan}, {borrower}: last day for {step}",
  "calendar.insurance-ends": "{institution}: insurance ends ({insurer})",
  "calendar.permit-ends": "{specimen}: {kind} ends",
  "calendar.licence-ends": "{institution}, {venue}: licence for {kind} ends ({number})",
  "calendar.consent-ends": "{specimen}: consent ends",
  "calendar.consent-review": "{specimen}: consent is due for review",
} as const;
