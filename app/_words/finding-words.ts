/** What a language needs to tell what a rule found. English is told by the words of the screens. */

/** Words that stand in parameters as the program knows them, by the name of the parameter. */
export type FindingValues = Readonly<Record<string, Readonly<Record<string, string>>>>;

export type FindingWords = {
  /** Every code that a rule gives as a fact or a way out. */
  sentences: Readonly<Record<string, string>>;
  values: FindingValues;
  /** The end of what rests on law. */
  endOfLaw: string;
};
