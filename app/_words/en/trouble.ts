/** Words for a borrower with whose specimens something is wrong: what to do, what not, and where it is said. */
export const troubleWords = {
  title: "Something is wrong",
  about:
    "Damage, a leak, something missing, a case that was opened, air or light beyond the limits: say it at once, however small. Nobody is blamed for saying so.",
  doTitle: "What to do",
  todo: [
    "Keep people away, close the case or the room, and leave everything where it lies.",
    "Take a photograph of the whole and one from near by, and note the hour and who was there.",
    "Say it here. In an emergency telephone as well:",
  ],
  dontTitle: "What not to do",
  dont: [
    "Do not wipe, glue, refill, press or move anything, and do not throw anything away, not the smallest part.",
    "Do not repack a specimen that has changed before the centre has answered.",
  ],
  source: "common practice, no source",
  which: "What it is about",
  wholeLoan: "the whole loan",
  kind: "What happened",
  kinds: [
    "damage or a change",
    "a leak or a loss of fluid",
    "something is missing",
    "climate or light beyond the limits",
    "somebody had access who had no business",
    "something else",
  ],
  text: "What you saw, when, and what you have done",
  textHint: "The centre and your registrar read it at once. Say nothing that tells who a donor was.",
  send: "Tell the centre",
  sent: "The centre has it, with a letter to its registrar. It stands under messages, and the answer will too.",
  message: (kind: string, about: string, text: string) => `${kind}: ${about}\n\n${text}`,
  check: "Record a check of it, with marks on the picture",
} as const;
