/** Words of choosing the language of the reasons, in English. */
export const reasonsWords = {
  label: "Language of the reasons",
  readIn: "Read in:",
  languages: { en: "English", de: "German", fr: "French" },
} as const;
