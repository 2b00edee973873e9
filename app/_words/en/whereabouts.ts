/** Words and sentences about places, moves, custody and bookings, in English. */
import { formFor } from "#app/_words/counted.ts";
import type { BookingPurpose, PlaceKind } from "#lib/whereabouts/schema.ts";

export const whereaboutsWords = {
  refusals: {
    "booking.taken": "{accessionNumber} is promised on some of these days. {wayOut}",
    "booking.free-from": "It is free again from {freeFrom}.",
    "booking.deliver-from":
      "With its days for packing, travel and checks it can be delivered from {deliverFrom} on, for as long as you asked.",
    "booking.period-reversed": "The last day cannot lie before the first.",
    "booking.too-long": "A specimen can be promised for ten years at most. Choose an earlier last day.",
    "booking.asked-twice":
      "The same specimen is asked for twice on the same days, by itself or as a part of another. Ask for it once.",
    "booking.of-a-loan": "This booking belongs to a loan. It is given back with the loan.",
    "booking.of-its-whole":
      "This part is booked together with its whole, {accessionNumber}. Release that booking instead.",
    "booking.lapsed":
      "The hold on {accessionNumber} has run out, and its days may have gone to somebody else. Take the hold again first.",
    "custody.broken-chain":
      "Custody has changed hands meanwhile, so this hand-over no longer begins where the last one ended. Look at the chain, then try again.",
    "move.outside-the-house":
      "This place is not inside the house. The ways out and home are recorded with the loan.",
    "move.not-in-the-house":
      "The specimen is with {holder}. It can be moved here once it has been received home.",
    "move.not-checked-in":
      "It came home with {loan} and nobody has checked it in. Take it to a room or a workshop to look at it; its check-in puts it back.",
    "move.already-there": "The specimen stands there already: {place}.",
    "move.moment-unreadable": "Give the day and the time.",
    "move.in-the-future": "This moment has not come yet. Record a move when it is made, or afterwards.",
    "move.before-the-last":
      "The record of this specimen goes on until {last}. A move that is told afterwards cannot lie before that.",
    "place.code-taken": "There is already a place with the code {code}.",
    "place.inside-itself": "A place cannot lie inside itself. Choose another place around it.",
    "place.around-outside":
      "A place of the house lies in the house. Choose a room, a store or a shelf around it, or none.",
    "place.stays-inside":
      "{place} is a place inside the house, and what was moved there was in the house. Make a new place instead.",
    "place.kept-by-the-program":
      "{place} stands for what is outside the house. The program finds it by its code; only its name can be changed.",
    "place.venue-of-its-kind":
      "Name the borrower's venue for a place of the kind “venue”, and for no other kind.",
  },
} as const;

/** Words of the pages of places. */
export const placePageWords = {
  title: "Places",
  about:
    "Rooms, stores and shelves of the house, a larger place before what lies in it. A specimen stands where its last move led.",
  caption: "Places of the house",
  none: "No place is on record yet. Begin with a room or a store; cabinets and shelves lie in it.",
  newPlace: "New place",
  newInside: "New place in here",
  newInsideOf: (name: string) => `New place in ${name}`,
  edit: "Edit the place",
  editTitle: (name: string) => `Edit ${name}`,
  name: "Name",
  nameHint: "As people call it: Dry store, Bay 3.",
  code: "Code",
  codeHint: "As it stands on the label, and on no other place: H-DRY.3.",
  kind: "Kind",
  parent: "Lies in",
  parentHint: "The next larger place around it.",
  outermost: "nothing larger: it is an outermost place",
  kinds: {
    store: "store",
    room: "room",
    cabinet: "cabinet",
    shelf: "shelf",
    workshop: "workshop",
    venue: "venue of a borrower",
    "on the way": "on the way",
  } satisfies Record<PlaceKind, string>,
  here: "Here",
  total: "In all",
  outside: "Outside the house",
  outsideAbout:
    "Venues of borrowers and the way between. The program makes them when a loan needs them; what stands there is moved by its loan.",
  specimens: "Specimens",
  record: "Record",
  inside: "Inside",
  nothingInside: "No smaller place lies in it.",
  insideCaption: (name: string) => `Places in ${name}`,
  standing: "What stands here",
  standingCaption: (name: string) => `Specimens in ${name}`,
  nothingStands: "Nothing stands here. A specimen comes here by a move, from the whereabouts on its sheet.",
  nothingStandsOutside: "Nothing is here now.",
  happened: "What happened",
  number: "Number",
  specimen: "Specimen",
  place: "Place",
  since: "Since",
  count: (total: number) => (total === 0 ? "empty" : total === 1 ? "1 specimen" : `${total} specimens`),
  venueOf: "Stands for",
  keptByProgram: "This place stands for what is outside the house; the program keeps it.",
  someUnplaced: "Some specimens on record have no place yet.",
  unplaced: "Without a place",
  unplacedAbout:
    "These specimens are on record, and nobody has said where they stand. Give each its place on its sheet.",
  unplacedCaption: "Specimens without a place",
  save: "Save",
} as const;

/** Words of moves and bookings on a specimen's sheet. */
export const moveWords = {
  moves: "Moves",
  earlierMoves: (count: number) => `${count} earlier ${formFor(count, "move", "moves")}`,
  when: "When",
  place: "Place",
  why: "Why",
  by: "By",
  nobodyYet: "the house; it was never handed over",
  move: "Move this specimen",
  placeFirst: "Give it its place",
  to: "To",
  choose: "choose a place",
  reason: "Why it is moved",
  reasonHint: "In a few words, such as: back from the lesson, store rearranged.",
  at: "When it was moved",
  atHint: "In universal time (UTC), as all moments here. Leave it empty for now.",
  partsGoAlong: "Parts that stand with it go along.",
  moved: (place: string) => `It stands at ${place} now.`,
  noPlaces: "There is no place to move it to yet.",
  makePlace: "Make a place",
} as const;

export const bookingWords = {
  book: "Book days for the house",
  purpose: "For",
  purposes: {
    loan: "loan",
    "teaching in the house": "teaching in the house",
    examination: "examination",
    treatment: "treatment",
    "picture-taking": "picture-taking",
    rest: "rest",
  } satisfies Record<BookingPurpose, string>,
  firstDay: "First day",
  lastDay: "Last day",
  lastDayHint: "The day after is free again.",
  partsGoAlong: "Its parts are booked with it.",
  booked: (days: string) => `Booked: ${days}.`,
  days: "Days",
  by: "By",
  strength: "Strength",
  next: "Next",
  release: "Release",
  releaseOf: (days: string) => `Release ${days}`,
  released: "The days are free again.",
  withLoan: "given back with the loan",
  earlier: (count: number) => `${count} earlier or given back`,
  earlierCaption: "Bookings that are over or were given back",
  standing: "Standing",
  over: "over",
  givenBack: (day: string) => `given back on ${day}`,
  ranOut: (day: string) => `the hold ran out on ${day}`,
  again: "Book again",
  againOf: (days: string) => `Book again: ${days}`,
} as const;
