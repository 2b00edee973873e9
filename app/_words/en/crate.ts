/** Words of crates, in English. */
import type { HandlingCaution } from "#lib/transport/handling.ts";
import type { PlanReason } from "#lib/transport/schema.ts";

/** Why a plan is not clear. */
const reasons: Readonly<Record<PlanReason, string>> = {
  "no-cushion-holds": "No foam of the list keeps the shock low enough: a crate has to be designed.",
  "passage-bars": "A passage on the way in is too small or bears too little.",
  "passage-to-attend": "A passage on the way in is tight or not measured.",
  "way-in-not-known": "The venue's doors and lift are not known; that is never clear.",
  "base-to-be-engineered": "The base of a crate of this mass is an engineer's design.",
  "tips-unlashed": "It stands only lashed: on the road it could tip over.",
};

const cautions: Readonly<Record<HandlingCaution, string>> = {
  "mark-mass-on-each-face": "Mark the gross mass on each face.",
  "may-be-thrown-when-light": "Under 15 kg a package is apt to be thrown: put small ones together.",
  "two-lift-less-than-twice-one": "Two lift two thirds of what each could lift alone.",
  "never-lift-by-battens": "Lift by the handles or from below, never by the battens.",
  "trolley-or-truck-on-each-floor": "A pallet truck or trolley is needed on each floor.",
  "topples-onto-two": "Tall on a narrow base: it topples onto two who carry it.",
  "secure-against-tipping": "Secure it against tipping.",
  "not-downhill-of-it": "Nobody stands downhill of it on a ramp.",
  "keep-upright": "Keep it upright.",
  "mark-centre-of-gravity": "Mark the centre of gravity outside.",
};

export const crateWords = {
  carrier: "Reckoned for",
  carriers: {
    "specialist-door-to-door": "a specialist carrier, door to door",
    "specialist-with-air": "a specialist carrier with air freight",
    "mixed-carriers": "mixed carriers",
    "commercial-freight": "commercial freight",
    "parcel-or-courier": "parcel or courier",
  },
  untested: "Cushion figures are modelled until drop-tested; a second person checks and signs.",
  outcome: "Plan",
  kind: "Kind of crate",
  fragility: "Bears at most",
  dropHeight: "Drop height",
  foam: "Foam",
  thickness: "Cushion",
  bearing: "Bearing area by face",
  inner: "Inside",
  outer: "Outside",
  wall: "Walls",
  gross: "Gross mass",
  volumetric: "Volumetric mass",
  handling: "Handling",
  support: "Sheet support",
  passages: "The way in",
  passage: "Passage",
  spare: "To spare",
  answer: "Answer",
  contents: "Contents",
  position: "Position",
  label: "Crate",
  state: "State",
  seal: "Seal",
  notBefore: "Not before",
  noVenue: "No venue is chosen, so the way in is not judged.",
  reasons,
  cautions,
  handlingFilters: (one: string, two: string, higherOne: string, higherTwo: string) =>
    `One person alone up to ${one} kg, two up to ${two} kg: the lower filters, so that anyone may lift. By the higher, for men, ${higherOne} and ${higherTwo} kg. Filters for a good lift close to the body, not limits: local rules prevail.`,
} as const;
