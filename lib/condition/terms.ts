/**
 * The words for what is found on a specimen, in groups, and which groups are
 * asked of which preparation. A key is stored and never changes; the English
 * word is what a reader sees. Groups and most words are common practice;
 * yellowing, cracking and loss of transparency of resin are published words.
 */
import type { PreparationCode } from "#lib/environment/schema.ts";
import { cite } from "#lib/workings/sources.ts";

/** What the words and the contents of a check rest on. */
export const findingSources = [
  cite("en-16095", "essential contents of a condition report"),
  cite("resin-terms"),
  cite("fluid-storage", "closures, level, concentration"),
  cite("practice", "all other words, severities and activities"),
] as const;

export const findingGroups = [
  "structure",
  "surface",
  "tissue",
  "sheet",
  "fluid",
  "cast",
  "bone",
  "slide",
] as const;
export type FindingGroup = (typeof findingGroups)[number];

export const findingGroupNames: Readonly<Record<FindingGroup, string>> = {
  structure: "Structure and mount",
  surface: "Surface",
  tissue: "Tissue",
  sheet: "Sheet or block",
  fluid: "Fluid and jar",
  cast: "Cast",
  bone: "Bone and teeth",
  slide: "Slide",
};

const words = {
  "structure.crack": "crack",
  "structure.hairline": "hairline",
  "structure.fracture": "fracture",
  "structure.loss": "loss",
  "structure.detached-part": "detached part",
  "structure.loose-joint": "loose joint or armature",
  "structure.deformation": "deformation",
  "structure.sagging": "sagging",
  "structure.warp": "warp",
  "structure.delamination": "delamination",
  "structure.broken-projection": "broken projection",
  "structure.missing-part": "missing part",
  "structure.mount-failure": "failure of the mount",
  "surface.abrasion": "abrasion",
  "surface.scratch": "scratch",
  "surface.dust": "dust",
  "surface.soiling": "soiling",
  "surface.fingerprint": "fingerprint",
  "surface.tack": "tackiness",
  "surface.bloom": "bloom",
  "surface.efflorescence": "efflorescence",
  "surface.salt": "salt",
  "surface.silicone-weep": "silicone at the surface",
  "surface.fat-seepage": "fat or oil at the surface",
  "surface.crystals": "crystals",
  "tissue.shrinkage": "shrinkage",
  "tissue.wrinkling": "wrinkling",
  "tissue.hardening": "hardening",
  "tissue.stiffening": "loss of flexibility",
  "tissue.hair-nail-loss": "loss of hair or nail",
  "tissue.layer-separation": "separation of layers",
  "tissue.desiccation": "drying out",
  "tissue.fading": "fading",
  "tissue.browning": "browning",
  "tissue.pigment-migration": "migration of pigment",
  "tissue.pest": "trace of insects",
  "tissue.mould": "mould",
  "tissue.odour": "odour",
  "sheet.yellowing": "yellowing",
  "sheet.haze": "haze or loss of transparency",
  "sheet.crazing": "crazing",
  "sheet.crack": "crack in the resin",
  "sheet.edge-chip": "chip at the edge",
  "sheet.bubble": "bubble",
  "sheet.tissue-separation": "tissue parting from the resin",
  "sheet.warp": "warp of the sheet",
  "sheet.scratch": "scratch in the resin",
  "sheet.tack": "tacky resin",
  "sheet.sink-mark": "sink mark",
  "sheet.fluorescence": "fluorescence",
  "fluid.level-low": "low level",
  "fluid.concentration": "concentration off its mark",
  "fluid.clouding": "clouding",
  "fluid.colour": "colour of the fluid",
  "fluid.precipitate": "precipitate",
  "fluid.lipid-film": "film of fat",
  "fluid.mould": "mould in the jar",
  "fluid.label-detached": "label detached",
  "fluid.seal-leak": "leak at the seal",
  "fluid.lid-corrosion": "corrosion of the lid",
  "fluid.jar-damage": "crack or chip in the jar",
  "fluid.specimen-moved": "specimen floating or sunk",
  "fluid.tissue-exposed": "tissue above the fluid",
  "fluid.maceration": "maceration",
  "cast.filament-broken": "broken filament",
  "cast.tip-loss": "lost tip",
  "cast.sag": "sagging branches",
  "cast.tack": "tacky cast",
  "cast.discolouration": "discolouration",
  "bone.crack": "crack in bone or tooth",
  "bone.flake": "flaking",
  "bone.fat-bleed": "fat bleeding",
  "bone.stain": "stain",
  "bone.split-enamel": "split enamel",
  "bone.loose-suture": "loose suture",
  "bone.wire-corrosion": "corrosion of wire",
  "bone.powdering": "powdering",
  "slide.stain-fade": "faded stain",
  "slide.mountant-yellowing": "yellowed mounting medium",
  "slide.mountant-retraction": "shrunken mounting medium",
  "slide.mountant-crystals": "crystals in the mounting medium",
  "slide.cover-slip-loose": "loose cover slip",
  "slide.broken": "broken slide",
} as const satisfies Record<`${FindingGroup}.${string}`, string>;

export type FindingTerm = keyof typeof words;
export const findingTerms = Object.keys(words) as [FindingTerm, ...FindingTerm[]];

/** The English word of a term. */
export function findingWord(term: FindingTerm): string {
  return words[term];
}

export function groupOf(term: FindingTerm): FindingGroup {
  return term.slice(0, term.indexOf(".")) as FindingGroup;
}

const groupsByPreparation: Readonly<Record<PreparationCode, readonly FindingGroup[]>> = {
  "silicone-body": ["structure", "surface", "tissue"],
  "silicone-organ": ["structure", "surface", "tissue"],
  "epoxy-sheet": ["structure", "surface", "sheet"],
  "polyester-sheet": ["structure", "surface", "sheet"],
  "alcohol-jar": ["fluid", "tissue", "structure"],
  "aqueous-jar": ["fluid", "tissue", "structure"],
  "corrosion-cast": ["cast", "structure", "surface"],
  bone: ["bone", "structure", "surface"],
  teeth: ["bone", "structure", "surface"],
  slide: ["slide", "surface"],
  wax: ["structure", "surface"],
  dry: ["structure", "surface", "tissue"],
};

/** The groups of words asked of a preparation, the most telling first. */
export function groupsFor(preparation: PreparationCode): readonly FindingGroup[] {
  return groupsByPreparation[preparation];
}

/** The terms of a preparation, group by group. */
export function termsFor(preparation: PreparationCode): FindingTerm[] {
  return groupsFor(preparation).flatMap((group) => findingTerms.filter((term) => groupOf(term) === group));
}
