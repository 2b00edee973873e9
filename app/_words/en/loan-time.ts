/** Words of a loan's days, in English: the plan, cover over the whole way, a longer loan, a recall. */

import type { RecallGround } from "#lib/loans/extension.ts";
import type { PlanScope, PlanStepName } from "#lib/loans/plan-defaults.ts";
import type { GapReason } from "#lib/suitability/cover-gaps.ts";

export const planStepNames = {
  request: "request submitted",
  decision: "decision",
  "indemnity form": "form for a state indemnity",
  permits: "permits and customs papers",
  "crate order": "crates ordered or planned",
  agreement: "agreement signed by both",
  certificate: "certificate of cover",
  "condition out": "condition check before it leaves",
  pack: "packed and sealed",
  depart: "departure",
  arrive: "arrival at the venue",
  "open crates": "crates opened",
  install: "installation",
  opening: "opening day",
} satisfies Record<PlanStepName, string>;

export const planScopeNames = {
  international: "abroad",
  national: "within the country",
  "teaching nearby": "course within the country",
} satisfies Record<PlanScope, string>;

export const planWords = {
  title: "Plan",
  about:
    "Counted backwards from the opening day: the last possible day of every paper and step. A day that has passed with its step not done turns into a bar by itself.",
  fromDelivery: "No opening day is stated; the plan is counted from the day of delivery.",
  counted: (scope: PlanScope) => `Counted as a loan ${planScopeNames[scope]}`,
  source: "Each figure is a default with its standing; the centre may set its own.",
  caption: "Steps and their last days",
  step: "Step",
  lastDay: "Last day",
  state: "State",
  countedFrom: "Counted",
  act: "Act",
  done: "done",
  doneOn: "Done on",
  passed: "passed, not done",
  soon: "due",
  later: "to come",
  byHand: "marked by hand",
  moved: "moved",
  stated: "as the transport is planned",
  statedDay: "as stated with the request",
  before: (days: number, step: string) => `${days} ${days === 1 ? "day" : "days"} before ${step}`,
  seeStep: {
    request: ["#request", "See the request"],
    decision: ["#decision", "Decide"],
    "indemnity form": ["#plan", "Mark it done"],
    permits: ["#suitability", "See the permits"],
    "crate order": ["#crates", "Plan the crates"],
    agreement: ["#agreement", "See the agreement"],
    certificate: ["#cover", "Record cover"],
    "condition out": ["#specimens", "Check the specimens"],
    pack: ["#crates", "Pack and seal"],
    depart: ["#crates", "Plan the way"],
    arrive: ["#crates", "Plan the way"],
    "open crates": ["#venue", "See the venue"],
    install: ["#plan", "Mark it done"],
    opening: ["#plan", "Move the day"],
  } satisfies Record<PlanStepName, readonly [string, string]>,
  conflicts: "What does not fit",
  move: "Move a date",
  moveStep: "Step",
  moveTo: "Last day or opening day",
  moveHint:
    "What follows moves with it as far as it must. What cannot move is named, and nothing is changed then.",
  moveButton: "Move it",
  giveBack: "An empty day gives the step back to the plan.",
  movedDone: (steps: number) =>
    steps === 0
      ? "The step is back in the plan."
      : `Moved: ${steps} ${steps === 1 ? "step has" : "steps have"} another day now.`,
  nothingMoved: "Nothing has another day now.",
  mark: "Mark as done by hand",
  markOn: "Done on",
  markHint: "For steps that no record shows. An empty day takes the mark back.",
  markButton: "Mark it",
  marked: "The mark is on the plan.",
  earliest: "Asked for today, the earliest delivery by this plan",
  strip: "The plan on a line of time",
  legend: { done: "done", bar: "passed, not done", attend: "due within 14 days", clear: "to come" },
  noTravel:
    "Crates leave, arrive and are opened on working days. Weekends and national holidays of both ends are left out; the list of holidays is short and from memory, so check with the place.",
  settings: "Days of the plan",
  settingsAbout:
    "How many days before what each step is due, for every loan from now on. Dates that somebody moved in a loan's file stay.",
  settingsEdit: "Change the days",
  settingsSave: "Save the days",
  settingsSaved: "The days of the plan are saved.",
  standing: "Where the default comes from",
  daysBefore: "days before",
  default: "default",
  stepsCounted: "Steps and their days",
} as const;

export const coverLineWords = {
  title: "Cover from nail to nail",
  caption: "Cover by stage of the way",
  stage: "Stage",
  out: "way out",
  stay: "at the venue",
  home: "way home",
  from: "From",
  until: "Until",
  where: "Countries",
  inForce: "In force together",
  state: "State",
  covered: "covered",
  specimens: (numbers: string) => `${numbers}: all of them travel and stay on the same days`,
  reasons: {
    "no-cover": "no certificate",
    "not-on-the-road": "not on the road",
    "not-at-the-venue": "not at the venue",
    "other-country": "another country",
    "other-currency": "another currency",
    "too-low": "too low",
  } satisfies Record<GapReason, string>,
  hours: (hours: number) =>
    hours < 48 ? `${hours} ${hours === 1 ? "hour" : "hours"}` : `${Math.floor(hours / 24)} days`,
  gaps: (count: number) =>
    count === 0
      ? "Covered without a gap."
      : `${count} ${count === 1 ? "uncovered time" : "uncovered times"}.`,
  legend: { covered: "covered", gap: "not covered" },
} as const;

export const extensionWords = {
  section: "Longer or sooner",
  ask: "Ask for a longer loan",
  asked: "Longer loans asked for",
  endsOn: "Return-by asked for",
  grounds: "Why",
  groundsHint: "At least ten characters. Every rule is judged anew for the longer time.",
  askButton: "Ask for it",
  askedDone: "The centre has your wish and answers it.",
  by: "Asked by",
  answer: "Answer",
  answeredBy: "Answered by",
  waiting: "waits for the registrar",
  granted: "granted",
  refused: "refused",
  none: "Nobody has asked for a longer loan.",
  reasons: "Judged anew for the longer time",
  clear: "Nothing stands against it.",
  answerTitle: "Answer the wish",
  grant: "grant it",
  refuse: "refuse it",
  outcome: "Answer",
  answerText: "What the borrower reads",
  answerHint: "A refusal says why, in at least ten characters.",
  coverAsked: "Longer certificates of cover have been asked for",
  answerButton: "Give this answer",
  answered: "The answer is on the file.",
  answeredAttend: (count: number) =>
    `The answer is on the file. ${count} ${count === 1 ? "thing wants" : "things want"} attention now.`,
  amend: "The agreement keeps its words until it is amended.",
} as const;

export const recallWords = {
  title: "Ask specimens back",
  about:
    "Specimens may be asked back at any time where consent, conditions, condition or an authority ask for it; for the centre's own need with 30 days' notice. Nothing ever bars the way home.",
  source:
    "Recall at any time where conditions are broken: guidelines of an international council of museums, 1974; 30 days for own need: a collection's loan policy",
  ground: "Ground",
  grounds: {
    "consent withdrawn": "a donor has withdrawn",
    "conditions broken": "conditions of the loan are broken",
    "condition of the specimen": "condition of the specimen",
    "an authority asks": "an authority asks for it",
    "own need": "the centre needs it",
  } satisfies Record<RecallGround, string>,
  text: "What the borrower reads",
  textHint: "At least ten characters. Say nothing of a donor.",
  withdrawnText:
    "Consent to the use of these specimens no longer holds. Please take them off display and out of use now, keep them closed, and send them home by the day stated.",
  stopUse: "Stop showing and using them now",
  returnBy: "Back by",
  button: "Ask them back",
  done: "The specimens are asked back. The way home is open.",
  recalled: "Asked back",
  stop: "stop use",
  specimens: "Specimens",
  on: "On",
  withdrawn: (numbers: string) => `A donor has withdrawn: ${numbers}. Ask these back with one act.`,
} as const;

export const loanTimeWords = {
  refusals: {
    "plan.too-late-for":
      "{step} cannot be kept: {before} would end on {needed}, and it stands on {day}. Move it first, or choose an earlier day.",
    "plan.would-be-past": "Then the last day of {step} would be {day}, which has passed, and it is not done.",
    "plan.follows-later":
      "On {day} what comes before it is not done yet; {needed} is the first day it can be.",
    "plan.before-kept-days":
      "The departure on {day} is before {from}, the first day that is kept for the specimens.",
    "plan.after-delivery": "The arrival on {day} is after {startsOn}, the day of delivery.",
    "plan.not-a-step": "This loan has no such step: {step}.",
    "plan.done-already": "{step} is done already; its day is not moved.",
    "plan.day-past": "{day} has passed. A step is moved to today or later.",
    "plan.opening-outside-loan": "{day} is not within the loan, which runs from {startsOn} to {until}.",
    "plan.day-of-transport":
      "{step} has the day of the transport that is planned. Plan the way anew instead.",
    "plan.no-travel-day": "On {day} nothing travels in {country}: a weekend or a holiday.",
    "plan.shown-by-record": "The record itself shows when this is done: {step}.",
    "extension.not-longer": "A longer loan ends after the return-by that it has now.",
    "extension.asked-already":
      "A longer loan, until {endsOn}, is asked for already and waits for its answer.",
    "extension.answered-already": "The wish has its answer already.",
    "extension.say-why": "Say why it is refused, in at least ten characters.",
    "extension.barred": "{specimen} is barred for the longer time. {fact} {wayOut}",
    "extension.days-taken": "{specimen} is promised to somebody else from {takenFrom}.",
    "extension.cover-ends":
      "Cover is missing from {from}. Ask for longer certificates, and say that you have.",
    "extension.carnet-ends":
      "A carnet would end on {date}, before the loan does. See to the customs papers first.",
    "extension.customs": "Customs papers were made out for {date}. Have them made longer.",
    "extension.asked-late": "It was asked for {days} days before the end; 30 are usual.",
    "extension.way-home-planned": "A way home is planned for {date}. Plan it anew.",
    "recall.other-ground": "From the donors' office a recall is about consent only.",
    "recall.too-soon":
      "For the centre's own need specimens are asked back with 30 days' notice: {earliest} at the earliest.",
    "recall.too-soon-field": "Earlier than the notice allows.",
    "recall.no-specimens": "Choose at least one specimen.",
  },
  steps: {
    "next.consent-withdrawn":
      "A donor has withdrawn while {specimens} [specimens:specimen is|specimens are] away. Ask [specimens:it|them] back.",
    "next.recalled":
      "{specimens} [specimens:specimen is|specimens are] asked back by {returnBy}. Send [specimens:it|them] home; nothing bars that.",
    "next.answer-extension": "A longer loan is asked for, until {endsOn}. Answer it.",
    "next.amend-days":
      "The loan runs until {endsOn} and the signed agreement says {agreed}. The agreement needs an amendment.",
  },
  due: {
    "due.cover-expires":
      "{loan}, {borrower}: cover ends on {date}, in {days} [days:day|days], and specimens are away.",
    "due.cover-expires-today":
      "{loan}, {borrower}: cover ends today, {date}, and specimens are away. Nothing is covered after that.",
    "due.cover-ended":
      "{loan}, {borrower}: cover ended on {date}, and specimens are away. Nothing is covered now.",
    "due.plan-step": "{loan}, {borrower}: the last day for {step} was {date}, and it is not done.",
    "due.plan-steps":
      "{loan}, {borrower}: the last day for {step} was {date}, and it is not done; {more} further [more:step has|steps have] passed too.",
    "due.answer-extension": "{loan}, {borrower}: a longer loan is asked for, until {date}.",
    "due.recalled": "{loan}, {borrower}: {count} [count:specimen is|specimens are] asked back by {date}.",
    "due.stop-use":
      "{loan}, {borrower}: stop showing and using {count} [count:specimen|specimens] now, and send [count:it|them] home by {date}.",
  },
} as const;
