/** Words of the rule book's page, in English. */
export const rulesWords = {
  title: "Rule book",
  about:
    "Every rule that suitability asks of a loan, with what it looks at and what it rests on. The book screens: it never decides what the law of a place asks. Check with the local authority.",
  version: (version: string) => `Version ${version}`,
  caption: "Rules by number",
  rule: "Rule",
  place: "Counts",
  looksAt: "Looks at",
  answers: "Can answer",
  restsOn: "Rests on",
  checkedOn: "Held against it on",
  overriddenBy: "Whose word may go against it",
  nobody: "nobody",
  withEvidence: "with evidence",
  from: (day: string) => `from ${day}`,
  until: (day: string) => `until ${day}`,
  link: "The rules that suitability asks, with their sources",
} as const;
