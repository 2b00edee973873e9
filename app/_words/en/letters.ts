/**
 * Words of letters by mail, messages and reminders, in English. A letter is a
 * subject and a text; both are told the facts that its plan names. Nothing here
 * speaks of donors, of consent or of how a specimen is.
 */
import type { LetterEvent } from "#lib/loans/letters.ts";
import type { MessageSide } from "#lib/loans/messages.ts";
import type { LetterState } from "#lib/platform/mail.ts";

type LetterWords = { subject: string; text: string };

const needed = "Somebody else needs a specimen of this loan from {neededFrom}.";

export const letters: Record<LetterEvent, LetterWords> = {
  submitted: {
    subject: "{loan}: request submitted",
    text: "{borrower} asks for {count} [count:specimen|specimens] from {startsOn}, to be back by {endsOn}. The days are held for {days} [days:day|days] while the request is decided.",
  },
  "donor-office-asked": {
    subject: "{loan}: your office is asked for a word",
    text: "A request of {borrower} cannot be decided before the donor office has spoken. The ground stands in the loan's file.",
  },
  "office-spoken": {
    subject: "{loan}: an office has spoken",
    text: "An office that was asked for its word has given it. It stands in the loan's file, with what is still to be said.",
  },
  "office-recused": {
    subject: "{loan}: somebody does not speak in this",
    text: "Somebody has recused themselves from this request. The file says for which office another voice is needed.",
  },
  "bar-set-aside": {
    subject: "{loan}: an office has set a bar aside",
    text: "An office has set a bar aside, with its grounds and evidence. Both stand in the loan's file.",
  },
  substituted: {
    subject: "{loan}: another specimen in place of one",
    text: "A specimen of the request is replaced by another one. The loan's file shows which.",
  },
  decided: {
    subject: "{loan}: request accepted",
    text: "{count} [count:specimen is|specimens are] accepted, from {startsOn}, to be back by {endsOn}. The agreement comes next; the file says what is asked of whom.",
  },
  declined: {
    subject: "{loan}: request declined",
    text: "The request of {borrower} is declined and the held days are given back. The grounds stand in the loan's file.",
  },
  quotation: {
    subject: "{loan}: quotation {version}",
    text: "Version {version} of the quotation is in the loan's file, with the day until which it can be answered.",
  },
  "quotation-accepted": {
    subject: "{loan}: quotation {version} accepted",
    text: "{borrower} accepts version {version} of the quotation.",
  },
  "quotation-refused": {
    subject: "{loan}: quotation {version} refused",
    text: "{borrower} refuses version {version} of the quotation. What was said about it stands in the loan's file.",
  },
  "cost-statement": {
    subject: "{loan}: cost statement {version}",
    text: "Version {version} of the cost statement is in the loan's file, beside what was quoted.",
  },
  agreement: {
    subject: "{loan}: agreement to be signed",
    text: "Version {version} of the agreement is drawn up. Please read it in the loan's file and have it signed by somebody who may.",
  },
  "agreement-to-sign": {
    subject: "{loan}: one signature is there",
    text: "Version {version} of the agreement bears one signature. The other side's is missing.",
  },
  signed: {
    subject: "{loan}: agreement signed by both",
    text: "Version {version} of the agreement is signed by both sides. It is in the loan's file.",
  },
  dispatched: {
    subject: "{loan}: on the way",
    text: "{count} [count:specimen has|specimens have] left the house. Please look at seals and crates on arrival, say in the loan's file that they came, and leave the crates closed until the moment it gives.",
  },
  received: {
    subject: "{loan}: arrived at the venue",
    text: "{borrower} has received {count} [count:specimen|specimens]. The crates rest closed until the moment in the loan's file.",
  },
  opened: {
    subject: "{loan}: opened at the venue",
    text: "{borrower} has opened and counted a crate: {count} [count:specimen is|specimens are] there.",
  },
  harm: {
    subject: "{loan}: something needs to be looked at",
    text: "Something was found that somebody has to look at now. Do not repair anything. What was seen stands in the loan's file.",
  },
  "sent-home": {
    subject: "{loan}: on the way home",
    text: "{count} [count:specimen is|specimens are] on the way home.",
  },
  "received-home": {
    subject: "{loan}: back in the house",
    text: "{count} [count:specimen is|specimens are] back in the house, to be counted and checked once the crates have rested.",
  },
  "missing-home": {
    subject: "{loan}: not everything came home",
    text: "At the count in the house {count} [count:specimen is|specimens are] missing or not complete. What is missing stands in the loan's file.",
  },
  claim: {
    subject: "{loan}: claim {claim}",
    text: "Something was recorded in claim {claim}. It stands in the loan's file.",
  },
  "judged-worse": {
    subject: "{loan}: judged worse than before",
    text: "Something that the loan rests on has changed, and the rules were run again: {count} [count:specimen is|specimens are] judged worse than before. What changed stands in the loan's file, under Suitability.",
  },
  "cover-ends": {
    subject: "{loan}: cover ends on {coverEndsOn}",
    text: "The cover on record ends on {coverEndsOn}, in {days} [days:day|days]. Please record one that reaches until everything is home; nothing leaves without it.",
  },
  "checked-in": {
    subject: "{loan}: everything is checked in",
    text: "Every specimen is checked in. The loan can be closed.",
  },
  closed: { subject: "{loan}: closed", text: "The loan is closed. Thank you." },
  withdrawn: {
    subject: "{loan}: request withdrawn",
    text: "The request of {borrower} is withdrawn and the held days are given back.",
  },
  cancelled: {
    subject: "{loan}: loan cancelled",
    text: "The loan to {borrower} is cancelled after it was accepted. Its days are given back; what the agreement or the quotation says of a cancellation holds.",
  },
  "cover-taken-back": {
    subject: "{loan}: a certificate of cover is taken back",
    text: "A certificate of cover is no longer on record for this loan. Nothing leaves without cover over the whole way.",
  },
  "message-to-borrower": {
    subject: "{loan}: a message from the centre",
    text: "{centre} has written to you about this loan. The message is in the loan's file, where you can answer it.",
  },
  "message-to-centre": {
    subject: "{loan}: a message from {borrower}",
    text: "{borrower} has written about this loan. The message is in the loan's file.",
  },
  "reminder-ahead": {
    subject: "{loan}: due back on {endsOn}",
    text: "The specimens are due back on {endsOn}, in {days} [days:day|days]. Please book the way home, or ask for a longer loan in the file.",
  },
  "reminder-today": {
    subject: "{loan}: due back today",
    text: "The specimens are due back today, {endsOn}. Please send them home; nothing bars the way home.",
  },
  "reminder-overdue": {
    subject: "{loan}: overdue by {days} [days:day|days]",
    text: "The specimens were due back on {endsOn}, {days} [days:day|days] ago. Please send them home now, or write in the file when they come.",
  },
  "reminder-urgent": {
    subject: "{loan}: overdue by {days} [days:day|days], please answer",
    text: "The specimens were due back on {endsOn}, {days} [days:day|days] ago. This goes to the institution as well. Please name the day on which they come home.",
  },
  "reminder-last": {
    subject: "{loan}: last reminder, overdue by {days} [days:day|days]",
    text: "The specimens were due back on {endsOn}, {days} [days:day|days] ago, and nothing has been answered. {centre} now decides whether {borrower} may have new loans before they are home.",
  },
  recalled: {
    subject: "{loan}: specimens asked back by {returnBy}",
    text: "{centre} asks {count} [count:specimen|specimens] back by {returnBy}. What to do, and by when, stands in the loan's file under “Longer or sooner”, with a sheet to print. Nothing bars the way home.",
  },
  "extension-asked": {
    subject: "{loan}: a longer loan is asked for",
    text: "{borrower} asks to keep the specimens until {askedUntil} instead of {endsOn}. The file shows what stands against it.",
  },
  "extension-granted": {
    subject: "{loan}: the longer loan is granted",
    text: "The specimens are now due back on {endsOn}. Cover has to reach as far.",
  },
  "extension-refused": {
    subject: "{loan}: the longer loan is refused",
    text: "The loan is not made longer until {askedUntil}; the specimens are due back on {endsOn}. The reason stands in the loan's file.",
  },
};

/** What stands around every letter. */
export const letterFrame = {
  about: "{loan}, {title}",
  aboutUntitled: "{loan}",
  needed,
  file: "The loan's file: {address}",
  foot: "Written by the program for {centre}. Please answer in the loan's file, not by mail.",
} as const;

const states: Record<LetterState, string> = {
  waiting: "unsent",
  sent: "sent",
  fault: "fault",
  kept: "kept",
};

export const letterPages = {
  title: "Letters",
  section: "Messages and letters",
  aboutAll: "Every letter by mail that the program has written, the newest first.",
  aboutOwn: "Letters that the program has written to you, the newest first.",
  noServer: "No mail server is named. Letters are kept here and are not sent. README says how to name one.",
  caption: "Letters, the newest first",
  subject: "Letter",
  to: "To",
  loan: "Loan",
  written: "Written",
  state: "State",
  sentAt: "Sent",
  attempts: "Attempts",
  fault: "What the mail server said",
  language: "Language",
  none: "No letter yet. Letters are written when something happens to a loan.",
  noneFound: "No letter stands so.",
  filter: "Which letters",
  any: "any state",
  find: "Show",
  states,
  text: "Text",
  back: "All letters",
  again: "Send it again",
  againTitle: "Send it again",
  againAddress: "To this address",
  againDone: "The letter is in the outbox again.",
  about: "What a letter says.",
  aboutNote:
    "A letter says which loan, which days and what is asked, and leads to the file. It never says anything of a donor.",
} as const;

export const messageWords = {
  title: "Messages",
  none: "Nobody has written yet. What is written here is read by both sides and is never changed.",
  sides: { centre: "the centre", borrower: "the borrower" } satisfies Record<MessageSide, string>,
  unread: "not read yet",
  read: "Mark as read",
  readDone: "Marked as read.",
  write: "Write a message",
  text: "Message",
  hint: "Both sides of the loan read it. Say nothing that tells who a donor was.",
  send: "Send the message",
  sent: "The message is in the file.",
  letters: (count: number) => `${count} ${count === 1 ? "letter" : "letters"} by mail about this loan`,
  hold: "Hold new loans of this borrower",
  holdAbout:
    "Every reminder was taken and the specimens are still out. Whether the borrower may have new loans is for you to decide; the plan sets no hold by itself.",
  holdDone: "The borrower is on hold for new loans. The institution's page lifts it again.",
} as const;

export const reminderWords = {
  title: "Days of reminders",
  about:
    "On which days before (with a minus) and after the return-by day the borrower is written to, for every loan that is out. Of days that were missed only the latest is taken; a longer loan begins anew.",
  days: "Days",
  daysHint: "Whole numbers with commas between them, such as -60, -30, -14, -3, 0, 3, 7, 14.",
  who: "Before the day the contact is written to; from the day on the borrower's registrars as well; from 7 days after it the institution itself and the centre's registrar. After the last one a hold on new loans is proposed to the registrar.",
  source: "The days are common practice of lending offices, without a source; the centre may set its own.",
  save: "Save the days",
  saved: "The days of reminders are saved.",
} as const;

/** Sentences by code, for the flat catalogue. */
export const lettersWords = {
  refusals: {
    "letter.sent-already": "This letter has been sent already.",
    "message.empty": "Write at least two characters.",
    "reminders.whole": "Days are whole numbers.",
    "reminders.range": "At most 365 days before or after.",
    "reminders.none": "Name at least one day.",
    "reminders.twice": "A day is named twice.",
    "reminders.nothing-to-hold":
      "{loan}: no hold to decide on. The last reminder is not taken, the specimens are on their way, or the borrower is on hold already.",
  },
  due: {
    "due.message": "{loan}, {borrower}: {count} [count:message has|messages have] not been read.",
    "due.letter-fault": "{loan}: a letter to {address} could not be sent.",
    "due.propose-hold":
      "{loan}, {borrower}: the last reminder is taken and nothing has come. Decide whether to hold new loans.",
  },
  letters: Object.fromEntries(
    Object.entries(letters).flatMap(([event, { subject, text }]) => [
      [`letter.${event}.subject`, subject],
      [`letter.${event}.text`, text],
    ]),
  ) as Readonly<Record<string, string>>,
  frame: {
    "letter.about": letterFrame.about,
    "letter.about-untitled": letterFrame.aboutUntitled,
    "letter.needed": letterFrame.needed,
    "letter.file": letterFrame.file,
    "letter.foot": letterFrame.foot,
  },
} as const;
