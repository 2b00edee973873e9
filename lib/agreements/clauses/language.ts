/**
 * What a language of the clauses is: the words of every clause and what fills them.
 * In a text {name} is a parameter and {name|day|days} a number with the word that
 * agrees with it. A language is one file with a value of this type, named below; a
 * clause, a parameter or an option without words does not compile.
 */
import type { ClauseId } from "#lib/agreements/clauses/library.ts";
import type { ChoiceName, OptionOf, ParameterName, WordsName } from "#lib/agreements/clauses/parameters.ts";
import type { fluids } from "#lib/specimens/schema.ts";

export const clauseLanguages = ["en", "de", "fr"] as const;
export type ClauseLanguageCode = (typeof clauseLanguages)[number];

export type ClauseLanguage = {
  locale: string;
  /** The first day of a month, where it is written otherwise than the others. */
  firstOfMonth?: string;
  clauses: Readonly<Record<ClauseId, { heading: string; text: string }>>;
  /** What each parameter is called where it is listed, its unit included. */
  labels: Readonly<Record<ParameterName, string>>;
  choices: { readonly [Name in ChoiceName]: Readonly<Record<OptionOf<Name>, string>> };
  /** What stands where the parties have said nothing of their own. */
  standardWords: Readonly<Record<WordsName, string>>;
  notStated: string;
  /** Behind a telephone number that is not answered at every hour. */
  officeHours: string;
  none: string;
  noLimit: string;
  fluids: Readonly<Record<(typeof fluids)[number], string>>;
  /** Filled with {authority}, {number}, and {day}. */
  paper: string;
  paperWithoutEnd: string;
  languages: Readonly<Record<ClauseLanguageCode, string>>;
  /** Texts beside the specimens, for annex K. */
  notices: { human: string; pictures: string; handling: string; fluid: string; acknowledgement: string };
};
