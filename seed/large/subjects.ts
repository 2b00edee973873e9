/**
 * What a large invented collection is made of: subjects with their region, ways of
 * showing them, and words for what checks find. A specimen takes one of each by
 * its number, so that the same number always gives the same specimen.
 */
import type { FindingTerm } from "#lib/condition/terms.ts";
import type { Preparation, SpecimenKind } from "#lib/specimens/schema.ts";

export type Subject = {
  english: string;
  latin: string;
  /** Region of the vocabulary whose structures it can show. */
  region: string;
  kind: SpecimenKind;
  paired: boolean;
  /** Length, width and height in millimetres; mass in kilograms. */
  sizeMm: readonly [number, number, number];
  massKg: number;
};

const subject = (
  english: string,
  latin: string,
  region: string,
  kind: SpecimenKind,
  paired: boolean,
  sizeMm: readonly [number, number, number],
  massKg: number,
): Subject => ({ english, latin, region, kind, paired, sizeMm, massKg });

export const subjects: readonly Subject[] = [
  subject("shoulder region", "regio humeri", "shoulder", "body region", true, [280, 220, 160], 2.2),
  subject("axilla", "axilla", "axilla", "body region", true, [240, 200, 140], 1.6),
  subject("arm", "brachium", "arm", "body region", true, [340, 130, 120], 2.4),
  subject("elbow joint", "articulatio cubiti", "elbow", "organ", true, [200, 110, 100], 0.8),
  subject("forearm", "antebrachium", "forearm", "body region", true, [300, 110, 90], 1.3),
  subject("wrist", "carpus", "wrist", "organ", true, [120, 90, 60], 0.3),
  subject("hand", "manus", "hand", "body region", true, [210, 110, 60], 0.45),
  subject("hip joint", "articulatio coxae", "hip-region", "organ", true, [240, 200, 150], 2.1),
  subject("gluteal region", "regio glutealis", "gluteal-region", "body region", true, [340, 300, 180], 4.8),
  subject("thigh", "femur", "thigh", "body region", true, [460, 210, 200], 6.4),
  subject("knee joint", "articulatio genus", "knee", "organ", true, [250, 160, 160], 1.5),
  subject("leg", "crus", "leg", "body region", true, [410, 140, 140], 2.7),
  subject("ankle", "regio talocruralis", "ankle", "organ", true, [180, 120, 130], 0.8),
  subject("foot", "pes", "foot", "body region", true, [260, 110, 110], 1.1),
  subject("half head", "dimidium capitis", "head", "body region", true, [260, 220, 110], 2.6),
  subject("face", "facies", "face", "body region", true, [220, 180, 100], 1.8),
  subject("orbit", "orbita", "orbit", "organ", true, [90, 80, 60], 0.22),
  subject("ear region", "regio auricularis", "ear-region", "skeleton or bone", true, [90, 80, 60], 0.09),
  subject("brain", "encephalon", "cranium", "organ", false, [165, 135, 120], 1.2),
  subject("neck", "collum", "neck", "body region", false, [220, 200, 150], 2.9),
  subject("larynx", "larynx", "larynx-region", "organ", false, [110, 70, 60], 0.12),
  subject("mouth and pharynx", "os et pharynx", "oral-region", "organ", false, [170, 110, 80], 0.4),
  subject(
    "heart and great vessels",
    "cor et vasa magna",
    "mediastinum",
    "organ",
    false,
    [150, 120, 95],
    0.42,
  ),
  subject("thoracic wall", "paries thoracis", "thoracic-wall", "body region", true, [320, 260, 100], 2.5),
  subject(
    "upper abdominal organs",
    "organa epigastrica",
    "peritoneal-cavity",
    "organ system",
    false,
    [320, 250, 150],
    2.5,
  ),
  subject(
    "kidneys and ureters",
    "renes et ureteres",
    "retroperitoneum",
    "organ system",
    false,
    [400, 220, 100],
    0.9,
  ),
  subject("abdominal wall", "paries abdominis", "abdominal-wall", "body region", true, [280, 240, 60], 1.2),
  subject("pelvis", "pelvis", "pelvis", "body region", false, [310, 290, 170], 5.4),
  subject("perineum", "perineum", "perineum", "body region", false, [180, 160, 90], 1.1),
  subject("back", "dorsum", "back", "body region", false, [420, 320, 120], 5.9),
];

export type View = {
  english: string;
  latin: string;
  preparation: Preparation;
  terms: readonly FindingTerm[];
};

const silicone: readonly FindingTerm[] = [
  "structure.hairline",
  "structure.crack",
  "surface.dust",
  "surface.fingerprint",
  "surface.silicone-weep",
  "tissue.hardening",
  "tissue.fading",
];
const resin: readonly FindingTerm[] = [
  "sheet.bubble",
  "sheet.edge-chip",
  "sheet.haze",
  "sheet.yellowing",
  "sheet.scratch",
];
const jar: readonly FindingTerm[] = [
  "fluid.level-low",
  "fluid.colour",
  "fluid.lipid-film",
  "fluid.precipitate",
];
const filigree: readonly FindingTerm[] = ["cast.filament-broken", "cast.tip-loss", "cast.discolouration"];
const dryWords: readonly FindingTerm[] = ["tissue.shrinkage", "surface.dust", "structure.crack"];

const view = (
  english: string,
  latin: string,
  preparation: Preparation,
  terms: readonly FindingTerm[],
): View => ({
  english,
  latin,
  preparation,
  terms,
});

export const views: readonly View[] = [
  view("nerves and vessels", "nervi et vasa", "silicone-impregnated", silicone),
  view("muscles in layers", "musculi stratis", "silicone-impregnated", silicone),
  view("superficial dissection", "strata superficialia", "silicone-impregnated", silicone),
  view("deep dissection", "strata profunda", "silicone-impregnated", silicone),
  view("arteries injected", "arteriae repletae", "silicone-impregnated", silicone),
  view("veins injected", "venae repletae", "silicone-impregnated", silicone),
  view("opened from in front", "a fronte aperta", "silicone-impregnated", silicone),
  view("opened from behind", "a tergo aperta", "silicone-impregnated", silicone),
  view("lymph vessels and nodes", "vasa et nodi lymphatici", "silicone-impregnated", silicone),
  view("sheet", "lamina", "epoxy sheet", resin),
  view("clear sheet", "lamina pellucida", "polyester sheet", resin),
  view("in fluid", "in liquore", "fluid-preserved", jar),
  view("vessels, corrosion cast", "vasa, praeparatum corrosum", "corrosion cast", filigree),
  view("dry preparation", "praeparatum siccum", "dry", dryWords),
];

export const places = [
  "near the upper edge",
  "near the lower edge",
  "left of the middle",
  "right of the middle",
  "at the rim",
  "over the bone",
] as const;
export const sides = ["left", "right"] as const;
export const latinSides = { left: "sinister", right: "dexter" } as const;
export const examiners = ["Ines Calderwood", "Tomas Elsward", "Anneli Vasterby"] as const;
