/** Words of the letter by which specimens are asked back, in English: what to do, by when, and what stays as it is. */
import { counted, formFor } from "#app/_words/counted.ts";
import type { RecallGround } from "#lib/loans/extension.ts";

export const recallLetterWords = {
  title: "Specimens asked back",
  link: "What to do, to print",
  toLoan: "Back to the loan",
  print: "Print",
  none: "Nothing of this loan is asked back. What is asked back later stands here, with what to do by when.",
  to: "To",
  from: "From",
  askedOn: "Asked on",
  ground: "Ground",
  /** A borrower reads of consent, and nothing of who gave it. */
  grounds: {
    "consent withdrawn": "consent to this use no longer holds",
    "conditions broken": "conditions of the loan are not kept",
    "condition of the specimen": "the condition of the specimens",
    "an authority asks": "an authority asks for it",
    "own need": "the centre needs them, with the notice that was agreed",
  } satisfies Record<RecallGround, string>,
  backBy: (count: number, day: string) =>
    `Please send ${counted(count, "specimen", "specimens")} home, so that ${formFor(count, "it is", "they are")} back by ${day}.`,
  allOnTheWay: "All of it has been sent home. Nothing more is asked of you.",
  specimens: (day: string) => `Specimens asked back by ${day}`,
  where: "Where it is",
  whatToDo: "What to do, and by when",
  step: "What to do",
  byWhen: "By when",
  now: "now",
  beforeItLeaves: "before they leave",
  stopUse: "Take them off display and out of use. Keep them closed and away from visitors and learners.",
  agree:
    "Agree with the centre who fetches them and on which day; the day is set so that they arrive in time.",
  look: "Look at each specimen, record what you see, and put it into the crate in which it came.",
  seal: "Close each crate with a new seal, and state its number when you send them home in the loan's file.",
  home: "Home at the centre.",
  notCleared: "What does not change",
  stays: [
    "Nothing bars the way home: no rule, no missing paper and no open question keeps a specimen from being sent.",
    "Your cover stays in force until the specimens are back at the centre.",
    "Do not clean, repair or open anything; what is not as it was is recorded and told to the centre.",
  ],
  cannot: (email: string, phone: string) =>
    `Where a day cannot be kept, tell the centre at once: ${email}, ${phone}. What is not home by its day counts as overdue.`,
  sendHome: "Send home",
} as const;
