/** Openings that were stated after a loan was asked for, and longer loans that are asked for, by the key of the loan. */
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
