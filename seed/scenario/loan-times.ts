/** Openings that were stated after a loan was asked for, longer loans that are asked for, and what is asked back, by the key of the loan. */
import type { RecallGround } from "#lib/loans/extension.ts";
import type { Day } from "#seed/scenario/shape.ts";

export const openings: Readonly<Record<string, { stated: Day; day: Day }>> = {
  agreed: { stated: -30, day: 61 },
  "plain request": { stated: -3, day: 114 },
};

export const extensionsAsked: Readonly<Record<string, { day: Day; until: Day; grounds: string }>> = {
  "at venue": {
    day: -2,
    until: 76,
    grounds: "The resit course takes place four weeks later than planned; both specimens are on its list.",
  },
};

type Recalled = { day: Day; specimens: readonly string[]; ground: RecallGround; text: string; returnBy: Day };

export const recalls: Readonly<Record<string, Recalled>> = {
  "sheets at venue": {
    day: -1,
    specimens: ["SR 03.029", "SR 03.030"],
    ground: "own need",
    text: "Both sheets are wanted for the house's own course on the heart. The other eleven stay with you until the end.",
    returnBy: 36,
  },
};
