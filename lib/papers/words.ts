/**
 * Everything that the papers say by themselves, as one typed catalogue. Papers have
 * a language of their own, that of the agreement, whatever language the screen is
 * in. A further language is one more file with a value of this type, named in
 * languages.ts. Codes of the trade are looked up here; what has no entry is printed
 * as it is, so that a word that is added later is never lost.
 */

import type { bandQuantities, LimitSource, Restriction } from "#lib/agreements/frozen-terms.ts";
import type { SignatureMethod } from "#lib/agreements/signing.ts";
import type { Grade } from "#lib/condition/grade.ts";
import type { AnnexWords } from "#lib/papers/annex-words.ts";
import type { ClosureWords } from "#lib/papers/closure-words.ts";
import type { ConditionWords } from "#lib/papers/condition-words.ts";
import type { CourierWords } from "#lib/papers/courier-words.ts";
import type { CustomsWords } from "#lib/papers/customs-words.ts";
import type { SourceWords } from "#lib/papers/english-sources.ts";
import type { FacilityWords } from "#lib/papers/facility-words.ts";
import type { TradeWords } from "#lib/papers/trade-words.ts";
import type { TravelWords } from "#lib/papers/travel-words.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { dispositions } from "#lib/provenance/schema.ts";
import type { Direction } from "#lib/shipments/schema.ts";
import type {
  costBases,
  fluids,
  hazardSubstances,
  preparations,
  specimenKinds,
  uses,
} from "#lib/specimens/schema.ts";
import type {
  audiences,
  displayStyles,
  offices,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import type { HandlingMode } from "#lib/transport/handling.ts";
import type { CrateKind, CrateOrientation } from "#lib/transport/schema.ts";
import type { Standing } from "#lib/workings/standing.ts";

type Audience = Extract<Restriction, { code: "restriction.audience-within" }>["parameters"]["audience"];
type WordsFor<Codes extends readonly string[]> = Readonly<Record<Codes[number], string>>;

/** Words with {names} are filled by `fill`. */
export type PaperWords = {
  /** How this language writes days, moments, figures and countries. */
  write: {
    day: (date: DateText) => string;
    /** A moment in universal time, and says so. */
    moment: (iso: string) => string;
    number: (value: number, decimals?: { least: number; most: number }) => string;
    country: (code: string) => string;
    days: (count: number) => string;
    list: (items: readonly string[]) => string;
    /** A list after a "not". */
    either: (items: readonly string[]) => string;
    /** The amount alone, with as many decimals as the currency has. */
    amount: (money: { minor: number; currency: string }) => string;
    decimalMark: string;
    /** Between a name and what it holds, and between things that hold commas; with their spaces. */
    colon: string;
    semicolon: string;
  };
  agreement: {
    name: string;
    version: string;
    subtitle: string;
    drawnUp: string;
    pageOf: string;
    termsHash: string;
    metadata: { title: string; subject: string };
  };
  sections: Readonly<
    Record<
      | "parties"
      | "loan"
      | "conditions"
      | "schedule"
      | "limits"
      | "consent"
      | "transport"
      | "cover"
      | "clauses"
      | "signatures",
      string
    >
  >;
  parties: { lender: string; borrower: string; contact: string };
  loan: {
    purpose: string;
    admission: string;
    manner: string;
    pictures: string;
    activities: string;
    /** Of what was planned, nothing is allowed for all specimens. */
    none: string;
    venue: string;
    delivery: string;
    returnBy: string;
    returnByMeaning: string;
    daysAround: string;
    daysAroundMeaning: string;
    noConditions: string;
    purposes: WordsFor<typeof purposes>;
    teachingUses: WordsFor<typeof teachingUses>;
    audiences: WordsFor<typeof audiences>;
    displayStyles: WordsFor<typeof displayStyles>;
    plannedPictures: WordsFor<typeof plannedPictures>;
    plannedActivities: WordsFor<typeof plannedActivities>;
    admissionPaid: string;
    admissionFree: string;
    purposeForAudience: string;
    reference: string;
    offices: WordsFor<typeof offices>;
  };
  schedule: {
    number: string;
    accessionNumber: string;
    specimen: string;
    length: string;
    width: string;
    height: string;
    mass: string;
    cost: string;
    costIn: string;
    currency: string;
    total: string;
    totalAtLeast: string;
    note: string;
    human: string;
    sheetOf: string;
    components: string;
    hazards: string;
    withMount: string;
    notStated: string;
    checked: string;
    notChecked: string;
    costStated: string;
    noCost: string;
    kinds: WordsFor<typeof specimenKinds>;
    preparations: WordsFor<typeof preparations>;
    inFluid: string;
    fluids: WordsFor<typeof fluids>;
    hazardSubstances: WordsFor<typeof hazardSubstances>;
    uses: Readonly<Record<Exclude<(typeof uses)[number], "handling">, string>>;
    costBases: WordsFor<typeof costBases>;
    grades: Readonly<Record<Grade, string>>;
  };
  limits: {
    lead: string;
    leadOfOne: string;
    specimens: string;
    allTogether: string;
    each: string;
    temperature: string;
    temperatureChange: string;
    humidity: string;
    humidityChange: string;
    illuminance: string;
    lightInYear: string;
    ultraviolet: string;
    noneInCommon: string;
    apart: string;
    /** Filled with {atLeast} and {atMost}, and with the numbers of those that {need} and those that {bear} it. */
    conflicts: WordsFor<typeof bandQuantities>;
    sources: string;
    source: string;
    sourceOf: string;
    /** What a source says of itself in the program's own words; titles of what was published stay as they are. */
    sourceWords: SourceWords;
    /** How well a source is known, where that is not a matter of course. */
    standings: Readonly<Record<Exclude<Standing, "read">, string>>;
    quantities: Readonly<Record<LimitSource["quantity"], string>>;
  };
  consent: {
    lead: string;
    number: string;
    restriction: string;
    none: string;
    /** Filled with the parameters of the code, in words. */
    restrictions: Readonly<Record<Restriction["code"], string>>;
    audiences: Readonly<Record<Audience, string>>;
    dispositions: WordsFor<typeof dispositions>;
  };
  transport: {
    crates: string;
    noCrates: string;
    crate: string;
    contents: string;
    length: string;
    width: string;
    height: string;
    grossMass: string;
    handling: string;
    stages: string;
    noStages: string;
    direction: string;
    carrier: string;
    through: string;
    noneBetween: string;
    departs: string;
    arrives: string;
    crateKinds: Readonly<Record<CrateKind, string>>;
    orientations: Readonly<Record<CrateOrientation, string>>;
    handlingModes: Readonly<Record<HandlingMode, string>>;
    directions: Readonly<Record<Direction, string>>;
  };
  cover: {
    needed: string;
    neededPerRow: string;
    stated: string;
    notStated: string;
    certificate: string;
    noCertificate: string;
    policy: string;
    amount: string;
    period: string;
    transit: string;
    stay: string;
    noStay: string;
    noTransit: string;
    territories: string;
    anyTerritory: string;
  };
  signatures: {
    statement: string;
    version: string;
    hash: string;
    forLender: string;
    forBorrower: string;
    signature: string;
    signedInProgram: string;
    /** Below the line of what a countersigned file stands for. */
    signedElsewhere: string;
    name: string;
    role: string;
    time: string;
    method: string;
    methods: Readonly<Record<SignatureMethod, string>>;
    /** What a drawn name shows. Filled with {name}. */
    drawnBy: string;
    electronic: string;
    electronicAgreed: string;
    notElectronic: string;
    termsHash: string;
    fileHash: string;
  };
  /** The code that leads to the page where a paper is checked. */
  check: { alternative: string; sentence: string; hash: string };
  travel: TravelWords;
  /** Quotations and cost statements. */
  trade: TradeWords;
  /** A pro-forma invoice and the list of a carnet. */
  customs: CustomsWords;
  /** The form that is filled in by hand. */
  condition: ConditionWords;
  courier: CourierWords;
  closure: ClosureWords;
  facility: FacilityWords;
  /** The clauses, the annexes and what an amendment changes. */
  annexes: AnnexWords;
};

/** @throws {RangeError} when there is nothing to fill a {name} with */
export function fill(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (_whole, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`Nothing for {${name}} in: ${sentence}`);
    return String(value);
  });
}

/** The word for a code, or the code itself. */
export function say(words: Readonly<Record<string, string>>, code: string): string {
  return Object.hasOwn(words, code) ? (words[code] ?? code) : code;
}

/** A word as the first of a sentence. */
export const capital = (text: string): string => text.replace(/^./u, (letter) => letter.toUpperCase());
