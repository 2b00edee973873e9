/** Words of the list of all answers of the rules, in English. */
export const everyAnswerWords = {
  title: (count: number) => `Everything that was asked: ${count} answers`,
  caption: "Every answer of the rules",
  rule: "Rule",
  outcome: "Outcome",
  fact: "What was found",
  specimens: "Specimens",
  all: "all",
} as const;
