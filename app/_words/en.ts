/** The English catalogue: every room's sentences in one flat table, by code. */
import { peopleWords } from "#app/_words/en/people.ts";
import { platformWords } from "#app/_words/en/platform.ts";
import { signInWords } from "#app/_words/en/sign-in.ts";

export const english: Readonly<Record<string, string>> = {
  ...platformWords.refusals,
  ...peopleWords.refusals,
  ...signInWords.refusals,
};
