/** The English catalogue: every room's sentences in one flat table, by code. */
import { anatomyWords } from "#app/_words/en/anatomy.ts";
import { deskWords } from "#app/_words/en/desk.ts";
import { peopleWords } from "#app/_words/en/people.ts";
import { platformWords } from "#app/_words/en/platform.ts";
import { provenanceWords } from "#app/_words/en/provenance.ts";
import { signInWords } from "#app/_words/en/sign-in.ts";
import { specimensWords } from "#app/_words/en/specimens.ts";
import { whereaboutsWords } from "#app/_words/en/whereabouts.ts";

export const english: Readonly<Record<string, string>> = {
  ...platformWords.refusals,
  ...peopleWords.refusals,
  ...signInWords.refusals,
  ...anatomyWords.refusals,
  ...deskWords.sentences,
  ...provenanceWords.refusals,
  ...specimensWords.refusals,
  ...whereaboutsWords.refusals,
};
