/** Words of setting a bar aside, and of what changed since the last evaluation, in English. */
export const setAsideWords = {
  open: "Set this bar aside",
  about:
    "Your word then stands against the bar, for these specimens of this loan alone, with your name and grounds. It does not say that something is lawful: check with the local authority.",
  decides: (offices: readonly string[], needsEvidence: boolean) =>
    `Decides: ${offices.join(" or ")}${needsEvidence ? ", with a paper" : ""}.`,
  nobodyDecides: "Decides: nobody may set it aside; only the way out clears it.",
  office: "You speak as",
  grounds: "Grounds",
  evidence: "Evidence: the paper that it rests on",
  evidenceNeeded: "Without a paper this rule is not set aside.",
  record: (rule: string) => `Set rule ${rule} aside`,
  done: "The bar is set aside; the word is on the file.",
  standsAgainst: (by: string, office: string) => `A bar, set aside by ${by} (${office}) on`,
  changes: "What changed since then",
  changesCaption: "Answers that changed since they were last kept",
  specimen: "Specimen",
  rule: "Rule",
  before: "Then",
  after: "Now",
  noAnswer: "no answer",
  refusals: {
    "suitability.no-such-bar": "This bar does not stand any more. Look at the suitability again.",
    "suitability.not-to-set-aside": "The rule book does not let the {office} set rule {rule} aside.",
    "suitability.evidence-missing": "Name the paper that your word rests on.",
    "decision.grounds-short": "Say why in at least ten characters; it stands in the file.",
  },
} as const;
