/** Words and sentences of the centre's own page, in English. */

export const centreWords = {
  title: "The centre",
  about: "What the house says of itself. It stands on agreements, on the page of a carrier, and in custody.",
  none: "Nobody has said yet who this house is. Until then no specimen can be recorded and no loan be agreed.",
  state: "State who the house is",
  edit: "Edit the settings",
  editTitle: "Settings of the centre",
  who: "Who it is",
  name: "Name",
  nameHint:
    "A new name holds from now on; what was signed and handed over under the old one stays as it was written.",
  formerNames: "Earlier names",
  address: "Address",
  city: "Town",
  country: "Country",
  countryHint: "Two capital letters, for example NO. Where a border is crossed is told from it.",
  languages: "Languages",
  languagesHint:
    "In which people may write to the house; as tags with commas between, for example nb, en, de-AT.",
  email: "E-mail",
  phone: "Telephone",
  emergencyPhone: "Telephone at any hour",
  emergencyPhoneHint:
    "For what happens on the way or at a venue. It stands on crate labels, travel sheets and agreements; left empty, they name the telephone with the words “office hours”.",
  emergencyPhoneNone: "none; papers name the telephone with the words “office hours”",
  numbers: "Numbers and money",
  pattern: "Pattern of accession numbers",
  patternHint:
    "A regular expression that a number follows as a whole; | stands between two ways of writing one. New records and revisions are held to it.",
  example: "An example",
  exampleHint: "Shown beside the field for a number; it has to follow the pattern.",
  currency: "Currency",
  currencyHint:
    "Three capital letters, for example EUR. Offered first where an amount is asked for; amounts on record keep theirs.",
  reportMonths: "Months that a facility report counts",
  reportMonthsHint: "Or until the venue files a new one. Left empty, 24 months (common practice, no source).",
  monthsOf: (months: number) => `${months} months`,
  openness: "Open to the public",
  publicCatalogue: "The catalogue is open to the public",
  publicCatalogueHint:
    "Without signing in, anybody then reads number, title, species, preparation and what it shows, of specimens that are marked for it, and sees pictures of human specimens only where every donor agreed to showing them openly online. Nothing of donors, places or costs is shown.",
  publicOpen: "open, at",
  publicClosed: "not open",
  happened: "What happened",
  save: "Save",
  refusals: {
    "centre.example-differs": "The example does not follow the pattern. Change one of the two.",
  },
} as const;
