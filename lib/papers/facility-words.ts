/**
 * What a facility report says by itself: its sections, its questions and the words of
 * its choices; one value of this type for each language. A question without its words
 * does not compile. What the venue answered in words of its own stays as it was typed.
 */
import type { ChoiceWord, FacilitySection, QuestionOf } from "#lib/people/facility-questions.ts";
import type { passageKinds } from "#lib/people/schema.ts";

/** Words with {names} are filled by `fill`. */
export type FacilityWords = {
  name: string;
  reported: string;
  confidential: string;
  sections: Readonly<Record<FacilitySection, string>>;
  questions: { readonly [Section in FacilitySection]: Readonly<Record<QuestionOf<Section>, string>> };
  choices: Readonly<Record<ChoiceWord, string>>;
  notKnown: string;
  answered: string;
  wayIn: string;
  passage: { where: string; kind: string; width: string; height: string; depth: string; load: string };
  passageKinds: Readonly<Record<(typeof passageKinds)[number], string>>;
  thenWidth: string;
  licences: string;
  licence: { kind: string; number: string; authority: string; person: string; until: string };
  none: string;
  hash: string;
};
