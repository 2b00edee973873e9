/** Words of putting a set together, of asking again, and of what is kept of a borrower, in English. */
import { counted, formFor } from "#app/_words/counted.ts";
import type { unshownReasons } from "#lib/loans/queries/propose-set.ts";

export const borrowWords = {
  title: "Put a set together",
  about:
    "Name what has to be shown, when and for what; the program proposes the fewest specimens that show all of it, are free for the whole time and could be lent for that, as far as is known.",
  catalogue: "Look through the catalogue instead",
  wanted: "What has to be shown",
  structure: "Add a structure, a region or a system, in English, Latin or German",
  byName: "Structures, with commas between",
  noStructure: "Nothing yet. Choose at least one structure.",
  remove: (name: string) => `Take off: ${name}`,
  removeShort: "Take off",
  from: "Day of delivery",
  until: "Return by",
  untilHint: "The first day that is no longer the loan.",
  when: "When and where",
  whatFor: "What for",
  whatForHint:
    "Donors have said for what, before whom and in which countries they may be shown. What they did not allow is left out.",
  noVenue: "not known yet",
  lacksFrom: "Say on which day they would be delivered.",
  lacksUntil: "Say by when they would go back.",
  use: "How they are used",
  uses: { "viewing only": "shown", handling: "handled in teaching" },
  sheets: "Sheets of series too",
  propose: "Propose a set",
  set: "The set",
  notYet: "Choose what has to be shown, and both days. The set then stands here.",
  found: (specimens: number, structures: number, days: string) =>
    `${counted(specimens, "specimen", "specimens")} ${formFor(specimens, "shows", "show together")} ${counted(structures, "structure", "structures")} of those wanted, and ${formFor(specimens, "is", "are")} free for ${days}.`,
  judgedFor: (purpose: string, audience: string, place: string) =>
    `Looked at for ${purpose} before ${audience}, ${place}.`,
  atVenue: (venue: string, country: string) => `at ${venue}, ${country}`,
  somewhereIn: (country: string) => `somewhere in ${country}, since no venue is chosen`,
  paid: "with paid admission",
  none: (days: string) => `Nothing that shows any of it can be had for ${days}.`,
  kept: (days: string) => `With the days for packing, travel and checks they are away for ${days}.`,
  smallest: (compared: number) =>
    `No smaller set shows as much: ${counted(compared, "free specimen was", "free specimens were")} compared.`,
  bound: (atLeast: number, compared: number) =>
    `This is the smallest set that was found among ${counted(compared, "free specimen", "free specimens")}; at least ${counted(atLeast, "specimen is", "specimens are")} needed.`,
  firstOnly: (most: number) => `Only the ${most} specimens that show most of it were compared.`,
  tooSoon: (day: string) =>
    `Nothing can be delivered before ${day}: the days before a loan are kept for checks, packing and travel.`,
  tableCaption: "Specimens of the set",
  papers: "Before it may go",
  noPapers: "nothing more is known to be wanted",
  keptBack: "What is left out, and why",
  keptBackAbout: (count: number) =>
    `${counted(count, "specimen shows", "specimens show")} some of it and ${formFor(count, "is", "are")} free, and could not be lent for this as things stand.`,
  keptBackCaption: "Specimens that are left out",
  because: "Left out by",
  wayOut: "What would clear it",
  moreKeptBack: (count: number) =>
    `${counted(count, "more specimen is", "more specimens are")} left out for reasons of the same kind.`,
  shows: "Shows of what is wanted",
  unshown: "What stays unshown",
  reasons: {
    "nothing shows it": "nothing in the catalogue is recorded as showing it",
    "only to be looked at": "what shows it may only be looked at, not handled",
    "not to be lent so":
      "what shows it could not be lent for this purpose, audience and country, as things stand",
    "too soon": "what shows it cannot be packed and there so soon",
    "not free": "what shows it is promised on these days",
    "not with the others":
      "what shows it is free, but not with the days around that the others need; it wants a loan of its own",
  } satisfies Record<(typeof unshownReasons)[number], string>,
  next: (day: string) => `could be delivered on ${day} for as long`,
  putOnSlip: (count: number) => `Put ${counted(count, "specimen", "specimens")} on the slip`,
  putOnSlipAbout:
    "What the rules say of your purpose and venue stands on the slip, before anything is asked for.",
} as const;

export const askAgainWords = {
  title: "Ask again like last time",
  about:
    "Opens a slip with the same purpose, venue, contacts and specimens, on the same days of a coming year. Everything can be changed before it is submitted.",
  startsOn: "Day of delivery",
  startsOnHint: "Leave it empty for the same day of the coming year.",
  button: "Open the slip",
  leftOut: (numbers: readonly string[]) =>
    `Of last time these are left out, because they are not free on the new days or did not go: ${numbers.join(", ")}. Choose other days, or look for something that shows the same.`,
} as const;

export const keptFactsWords = {
  legend: "What is kept of your institution",
  hint: "It need not be typed again. Look whether it still holds; what does not is corrected where it is kept.",
  noVenue: "Choose a venue, and what is kept of it stands here.",
  address: "Venue",
  reportedOn: "Facts of the venue",
  reported: (day: string) => `reported on ${day}`,
  notReported: "never reported",
  climate: "Climate and light",
  temperature: (low: string, high: string) => `${low} to ${high} °C`,
  humidity: (low: string, high: string) => `${low} to ${high} % RH`,
  light: (lux: string) => `${lux} lx`,
  climateUnknown: "not stated",
  wayIn: "Way in",
  passages: (count: number) =>
    count === 0 ? "not described" : `${counted(count, "narrow point", "narrow points")} described`,
  report: "Facility report",
  reportOf: (version: number, day: string, until: string) =>
    `version ${version} of ${day}, counts until ${until}`,
  noReport: "none on record",
  licences: "Licences",
  insurances: "Insurance",
  paper: (name: string, until: string | null) =>
    [name, until === null ? "without an end" : `until ${until}`].filter(Boolean).join(", "),
  nonePapers: "none on record",
  confirm: "All of this still holds",
  confirmHint: "Needed to submit, not to save. The day on which you say so stands on the loan.",
  correctVenue: "Correct the venue",
  correctInstitution: "Correct the institution",
  byRegistrar: "Your registrar keeps these facts; ask there where one no longer holds.",
  confirmedOn: "Facts of the institution confirmed",
  notConfirmed: "not confirmed",
  opensOn: "Opening, or first day of the course",
  opensOnHint: "Leave it empty when it is not known yet. Steps are counted back from it.",
  held: "Held until",
} as const;

export const publicWords = {
  title: "Catalogue",
  about: (centre: string) =>
    `Preserved anatomical specimens that ${centre} lends for teaching, exhibition and research. Those of human origin come from people; please look at them with respect.`,
  ask: (email: string) => `To borrow, or to ask for what is not here, write to ${email}.`,
  search: "Number, title, or a structure in English, Latin or German",
  find: "Find",
  clear: "Clear the search",
  none: "Nothing in the catalogue answers this. Try another word, or ask the centre for what is not here.",
  caption: "Specimens of the open catalogue",
  months: "Free, by month",
  monthsAbout: "A month is filled where the whole of it is free. For days, ask the centre.",
  structures: "Shows",
  more: (count: number) => `and ${count} more`,
  species: "Species",
  picture: "Picture",
  pictureOf: (number: string, title: string) => `Photograph of ${number}, ${title}`,
  pictureBehindChoice: "a photograph, not shown yet",
  showPictures: "Show pictures of human specimens",
  hidePictures: "Hide pictures of human specimens",
  choiceAbout:
    "Photographs of human specimens are shown only where every donor agreed to it, and only when you choose to see them. The choice is kept until you close the browser.",
  signIn: "Sign in",
} as const;
