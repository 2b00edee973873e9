/** Words of the evaluations of a loan as they were kept, in English. */
import { formFor } from "#app/_words/counted.ts";

export const keptRunWords = {
  title: (count: number) => `Every evaluation, and what changed between (${count})`,
  caption: "Answers that changed since the evaluation before",
  first: "The first evaluation.",
  same: "No answer changed.",
  after: "Here",
  changed: (count: number) => `${count} ${formFor(count, "answer", "answers")} changed`,
  occasions: {
    request: "when the request was submitted",
    decision: "at the decision",
    agreement: "when the agreement was drawn up",
    signature: "at a signature",
    dispatch: "at the release",
    extension: "when a longer loan was granted",
    "decision refused": "at a decision that it stopped",
    "agreement refused": "at an agreement that it stopped",
    "signature refused": "at a signature that it stopped",
    "dispatch refused": "at a release that it stopped",
    "extension refused": "at a longer loan that it stopped",
    "consent changed": "when consent changed or ended",
    "licence changed": "when a licence, a permit or the title changed or ended",
    "venue changed": "when the venue or its facility report changed",
  } as Readonly<Record<string, string>>,
};
