/** What the two sides of some loans have written to each other. */
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { Day } from "#seed/scenario/shape.ts";

export type ScenarioMessage = { day: Day; by: AccountKey; text: string };

/** By the key of the loan. */
export const messages: Readonly<Record<string, readonly ScenarioMessage[]>> = {
  "travelling out": [
    {
      day: -14,
      by: "vesterlunde lecturer",
      text: "Our dock is closed for works until noon. Could the van come after one o'clock?",
    },
    {
      day: -13,
      by: "registrar",
      text: "Yes. The driver rings half an hour before. Please keep the goods lift free; the larger crate goes upright only.",
    },
  ],
  overdue: [
    {
      day: -20,
      by: "registrar",
      text: "The summer school is nearly over. Which day suits you for the way home? The lorry and the ferry want a week's notice.",
    },
    {
      day: -5,
      by: "selwyn lecturer",
      text: "I am sorry for the silence. The hall is locked for the holidays; I can open it from Monday on.",
    },
  ],
  "at venue": [
    {
      day: -9,
      by: "curator",
      text: "Please send the readings of the logger for the past month with the next weekly check.",
    },
  ],
};
