/**
 * The words of the catalogue: what a specimen is, how it was prepared, what it
 * shows and how well. One schema serves the form, the action and the API.
 * Lengths are millimetres, masses kilograms, percentages 0 to 100.
 */
import { z } from "zod";
import { CountryCode } from "#lib/platform/countries.ts";
import { DateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { CurrencyCode, minorUnits } from "#lib/platform/money.ts";

export const specimenKinds = [
  "whole body",
  "body region",
  "organ",
  "organ system",
  "sheet",
  "skeleton or bone",
  "cast",
  "fluid-preserved specimen",
  "histological slide",
] as const;
export type SpecimenKind = (typeof specimenKinds)[number];

export const preparations = [
  "silicone-impregnated",
  "epoxy sheet",
  "polyester sheet",
  "fluid-preserved",
  "corrosion cast",
  "dry",
  "mounted skeleton",
  "slide",
] as const;
export type Preparation = (typeof preparations)[number];

export const fluids = ["ethanol", "isopropanol", "formaldehyde solution", "glycerol", "other fluid"] as const;
export const sexes = ["female", "male", "unknown", "not applicable"] as const;
export const ageBands = [
  "0–9",
  "10–19",
  "20–29",
  "30–39",
  "40–49",
  "50–59",
  "60–69",
  "70–79",
  "80–89",
  "90 and over",
] as const;
export const specimenSides = ["left", "right", "both", "median", "not applicable"] as const;
export const uses = ["handling", "viewing only"] as const;
/** How much light the specimen bears, beyond its preparation: stained or colour-preserved material bears less. */
export const lightClasses = ["ordinary", "sensitive"] as const;

export const hazardSubstances = [
  "formaldehyde",
  "alcohol",
  "mercury",
  "arsenic",
  "lead pigment",
  "other",
] as const;
export const formerNumberKinds = ["former accession", "department", "jar", "field", "owner's"] as const;
export const costBases = ["preparation cost", "cost to replace", "agreed with the owner"] as const;

/** The largest file of a picture that is taken in. */
export const mostPictureBytes = 15 * 1024 * 1024;

/**
 * Side, visibility and state belong to what is seen on this specimen, not to the structure. What is unpaired and
 * lies off the median plane has its side, or none where it crosses it.
 */
export const shownSides = ["left", "right", "both", "median", "unknown", "not applicable"] as const;
export const seenGrades = ["fully exposed", "partly exposed", "in section", "landmark only"] as const;
export const shownStates = ["shown", "removed", "absent", "variant", "not assessed"] as const;

export const planes = ["transverse", "sagittal", "coronal", "oblique"] as const;
export const embeddings = ["epoxy", "polyester"] as const;
export const directions = [
  "head to foot",
  "foot to head",
  "left to right",
  "right to left",
  "front to back",
  "back to front",
] as const;
export const vertebralLevels = [
  ...Array.from({ length: 7 }, (_, i) => `C${i + 1}`),
  ...Array.from({ length: 12 }, (_, i) => `T${i + 1}`),
  ...Array.from({ length: 5 }, (_, i) => `L${i + 1}`),
  "S1",
  "S2",
  "S3",
  "S4",
  "S5",
  "Co",
] as const;

const text = (most: number) => z.string().trim().max(most);
const millimetres = z.number().int().min(1).max(10_000);
const kilograms = z.number().positive().max(2_000);
const percent = z.number().min(0).max(100);

/** Money: whole minor units (cents) and an ISO 4217 code. */
export const Money = z.object({
  minor: minorUnits(100_000_000_000),
  currency: CurrencyCode,
});
export type Money = z.infer<typeof Money>;

export const ReplacementCost = Money.extend({
  basis: z.enum(costBases),
  statedOn: DateText,
  statedBy: text(120).min(1),
});
export type ReplacementCost = z.infer<typeof ReplacementCost>;

export const Size = z.object({ lengthMm: millimetres, widthMm: millimetres, heightMm: millimetres });
export type Size = z.infer<typeof Size>;

export const Component = z.object({
  name: text(120).min(1),
  count: z.number().int().min(1).max(1_000),
  detachable: z.boolean(),
});
export type Component = z.infer<typeof Component>;

export const FormerNumber = z.object({
  number: text(60).min(1),
  kind: z.enum(formerNumberKinds),
  markedOn: text(120),
});
export type FormerNumber = z.infer<typeof FormerNumber>;

export const Hazard = z.object({
  substance: z.enum(hazardSubstances),
  percent: percent.nullable(),
  note: text(300),
});
export type Hazard = z.infer<typeof Hazard>;

export const Shown = z.object({
  structureId: z.string().trim().min(1).max(120),
  side: z.enum(shownSides),
  seen: z.enum(seenGrades),
  state: z.enum(shownStates),
  remark: text(500),
});
export type Shown = z.infer<typeof Shown>;

/** When the donor died, so coarse that it names nobody; the bounds are those that statutes draw. */
export const deathPeriods = [
  "before September 1906",
  "September 1906 to 1919",
  "1920 to 1932",
  "1933 to 1945",
  "1946 to 1969",
  "1970 to 1999",
  "2000 or later",
] as const;
/** When the specimen was made, where the day is not known. */
export const madePeriods = [
  "before 1800",
  "1800 to 1849",
  "1850 to 1899",
  "1900 to 1949",
  "1950 to 1999",
  "2000 or later",
] as const;
/** Appendices of the convention on trade in endangered species. */
export const speciesAppendices = ["not listed", "I", "II", "III"] as const;

/** What rules of law ask of a specimen. Null is not known, and never taken for good. */
export const LegalFacts = z.object({
  containsCells: z.boolean().nullable(),
  wholeBody: z.boolean().nullable(),
  /** Where the body or the animal came from. */
  originCountry: CountryCode.nullable(),
  /** It came to the lender's country from another. */
  imported: z.boolean().nullable(),
  /** Since when it has been held in a collection, here or before. */
  heldSince: DateText.nullable(),
  deathPeriod: z.enum(deathPeriods).nullable(),
  /** Papers on the cause and the registration of the death are on file. */
  deathPapers: z.boolean().nullable(),
  /** Used, or authorised to be used, for anatomical examination, anywhere. */
  anatomicalExamination: z.boolean().nullable(),
  speciesAppendix: z.enum(speciesAppendices).nullable(),
  madePeriod: z.enum(madePeriods).nullable(),
  freeFluidMl: z.number().int().min(0).max(1_000_000).nullable().meta({ title: "Free fluid", unit: "ml" }),
});
export type LegalFacts = z.infer<typeof LegalFacts>;

export const nothingKnownInLaw: LegalFacts = {
  containsCells: null,
  wholeBody: null,
  originCountry: null,
  imported: null,
  heldSince: null,
  deathPeriod: null,
  deathPapers: null,
  anatomicalExamination: null,
  speciesAppendix: null,
  madePeriod: null,
  freeFluidMl: null,
};

/** A specimen as it is typed in. The accession number's pattern is a setting of the centre. */
export const SpecimenInput = z
  .object({
    accessionNumber: text(40).min(1),
    title: text(200).min(1),
    latinTitle: text(200),
    kind: z.enum(specimenKinds),
    preparation: z.enum(preparations),
    fluidName: z.enum(fluids).nullable(),
    fluidPercent: percent.nullable(),
    human: z.boolean(),
    scientificName: text(120).min(1),
    sex: z.enum(sexes),
    ageBand: z.enum(ageBands).nullable(),
    side: z.enum(specimenSides),
    pose: text(200),
    size: Size.nullable(),
    massKg: kilograms.nullable(),
    mountedSize: Size.nullable(),
    mountedMassKg: kilograms.nullable(),
    massWeighed: z.boolean(),
    partsAtRisk: text(500),
    use: z.enum(uses),
    light: z.enum(lightClasses),
    replacementCost: ReplacementCost.nullable(),
    preparedOn: DateText.nullable(),
    acquiredOn: DateText.nullable(),
    publishable: z.boolean(),
    note: text(2_000),
    wholeId: Id.nullable(),
    components: z.array(Component).max(60),
    formerNumbers: z.array(FormerNumber).max(20),
    hazards: z.array(Hazard).max(10),
    legal: LegalFacts.default(nothingKnownInLaw),
  })
  .check((context) => {
    const { value, issues } = context;
    const refuse = (path: string[], message: string) =>
      issues.push({ code: "custom", input: value, path, message });
    if (value.human !== (value.scientificName === "Homo sapiens"))
      refuse(["scientificName"], "specimen.species-mismatch");
    if (value.preparation === "fluid-preserved" && value.fluidName === null)
      refuse(["fluidName"], "specimen.fluid-missing");
    if (value.preparation !== "fluid-preserved" && (value.fluidName !== null || value.fluidPercent !== null))
      refuse(["fluidName"], "specimen.fluid-not-for-this");
    if (!value.human && value.ageBand !== null) refuse(["ageBand"], "specimen.age-band-human-only");
    if (value.massKg !== null && value.mountedMassKg !== null && value.mountedMassKg < value.massKg)
      refuse(["mountedMassKg"], "specimen.mount-lighter-than-specimen");
    if (value.human && value.legal.speciesAppendix !== null)
      refuse(["legal", "speciesAppendix"], "specimen.appendix-animal-only");
    if (!value.human && value.legal.deathPeriod !== null)
      refuse(["legal", "deathPeriod"], "specimen.death-period-human-only");
  });
export type SpecimenInput = z.infer<typeof SpecimenInput>;

/** A body or region cut into sheets. */
export const SeriesInput = z.object({
  code: text(40).min(1),
  title: text(200).min(1),
  plane: z.enum(planes),
  direction: z.enum(directions),
  thicknessMm: z.number().min(0.01).max(100),
  sawLossMm: z.number().min(0).max(20),
  startLevelMm: z.number().min(-5_000).max(5_000),
  firstNumber: z.number().int().min(0).max(10_000),
  sheetCount: z.number().int().min(1).max(10_000),
  embedding: z.enum(embeddings),
  imagedFace: text(60),
  /** Area shrinkage of the whole process as a fraction of the fresh area, where it was measured. */
  shrinkageArea: z.number().min(0, "share.up-to-90").max(0.9, "share.up-to-90").nullable(),
  note: text(2_000),
  landmarks: z
    .array(z.object({ number: z.number().int().min(0).max(10_000), level: z.enum(vertebralLevels) }))
    .max(40),
});
export type SeriesInput = z.infer<typeof SeriesInput>;

/** Steps of the making, in their usual order. Durations are common practice, no source. */
export const preparationStepNames = [
  "fixation",
  "injection",
  "dissection",
  "freezing",
  "sawing",
  "sectioning",
  "dehydration",
  "defatting",
  "impregnation",
  "positioning",
  "casting",
  "maceration",
  "curing",
  "mounting",
  "filling",
] as const;

export const PreparationStepInput = z.object({
  step: z.enum(preparationStepNames),
  startedOn: DateText.nullable(),
  endedOn: DateText.nullable(),
  note: text(500),
});
export type PreparationStepInput = z.infer<typeof PreparationStepInput>;
