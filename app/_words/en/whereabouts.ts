/** Sentences about places, custody and bookings, in English. */
export const whereaboutsWords = {
  refusals: {
    "booking.taken": "{accessionNumber} is promised on some of these days. It is free again from {freeFrom}.",
    "booking.period-reversed": "The last day has to lie after the first.",
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
    "move.already-there": "The specimen stands there already: {place}.",
    "place.code-taken": "There is already a place with the code {code}.",
    "place.inside-itself": "A place cannot lie inside itself. Choose another place around it.",
    "place.venue-of-its-kind":
      "Name the borrower's venue for a place of the kind “venue”, and for no other kind.",
  },
} as const;
