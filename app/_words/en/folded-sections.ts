/** What a folded section of a loan's file says of itself in one line, in English. */
import { formFor } from "#app/_words/counted.ts";

const none = (count: number, one: string, more: string) =>
  count === 0 ? `no ${one}` : `${count} ${formFor(count, one, more)}`;

export const foldedWords = {
  outcomes: (bars: number, attend: number) => {
    if (bars + attend === 0) return "every specimen clear";
    return [bars > 0 && `${bars} barred`, attend > 0 && `${attend} to attend to`].filter(Boolean).join(", ");
  },
  acceptedBy: (offices: string) => `accepted by: ${offices}`,
  steps: (done: number, all: number) => `${done} of ${all} steps done`,
  signed: (version: number) => `version ${version}, signed by both`,
  certificates: (count: number) => none(count, "certificate", "certificates"),
  crates: (count: number) => none(count, "crate", "crates"),
  about: {
    request: "what was asked for, as it was stated",
    limits: "climate and light, all specimens together",
    facility: "what the venue lacked when it was judged",
    venue: "arrival, opening and what went with it",
    longer: "wishes to keep it longer, and what was asked back",
    home: "arrival, checks and the close",
    happened: "every act on this loan, the newest first",
  },
} as const;
