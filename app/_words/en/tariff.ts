/** Words of the tariff codes of a stage, in English. */
import type { OfferedHeading } from "#lib/loans/tariff.ts";

export const tariffWords = {
  refusals: {
    "tariff.code-shape":
      "Write the code in figures: six, and what the country adds, with or without full stops.",
    "tariff.no-specimens": "Nothing is left that this would be decided for. Choose the specimens.",
    "tariff.country-off-way": "The way does not touch {country}: no code is decided there.",
  },
  title: (way: string) => `Tariff codes, ${way.toLowerCase()}`,
  about:
    "A code is a decision: by a broker, or by customs. It is kept with who made it and when, and stands on the pro-forma invoice. The program takes none from the kind of specimen.",
  caption: (way: string) => `Tariff codes, ${way.toLowerCase()}`,
  country: "Country",
  code: "Code",
  specimens: "For",
  decidedBy: "Decided by",
  decidedOn: "Decided on",
  note: "Note",
  open: "not decided",
  decide: "Write down a decision",
  decideOn: (way: string) => `${way}: write down a tariff code`,
  codeHint:
    "Offered from heading 9705 of the Harmonized System, 2022. For samples of tissue the United States have used 0511.99 (customs ruling H317142 of 2024): ask a broker.",
  headings: {
    "9705.21": "human specimens and parts thereof",
    "9705.22": "extinct or endangered species and parts thereof",
    "9705.29": "other",
  } satisfies Record<OfferedHeading, string>,
  decidedByHint: "The broker, or the customs office, by name.",
  groups: {
    open: "all that have no code there yet",
    human: "all human specimens",
    animal: "all animal specimens",
    all: "all specimens",
  },
  done: "The decision is written down.",
} as const;
