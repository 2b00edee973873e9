/**
 * Which drawing stands for a specimen. Its title decides, in English or Latin, read
 * from its beginning: what a person wrote first is what the specimen is. A rule asks
 * for as much as its drawing shows, so an organ is never drawn for a part of it, an
 * adult never for a child, a human organ never for an animal's. What no rule knows gets
 * the plate of how it is kept: a plate never shows something that the specimen is not.
 */
import type { SheetPlace } from "#lib/specimens/drawing/sheet-place.ts";

export type DrawingRequest = {
  kind: string;
  preparation: string;
  /** Scientific name. */
  species: string;
  title: string;
  latinTitle: string;
  side: string;
  /** Structures recorded as shown, by their id in the vocabulary. */
  shown: readonly { structure: string; latin: string }[];
  /** Of a sheet that belongs to a series, its place there; it decides alone. */
  sheet: SheetPlace | null;
  /** What keeps the drawing the same for ever: the accession number; for a sheet, its series' code. */
  seed: string;
};

export const neutralMotifs = [
  "neutral-jar",
  "neutral-sheet",
  "neutral-dome",
  "neutral-stand",
  "neutral-plinth",
  "closed-box",
] as const;

const organMotifs = [
  "nervous-system",
  "urinary-system",
  "heart-with-lungs",
  "upper-abdomen",
  "brainstem",
  "hemisphere-fibres",
  "hemisphere-inside",
  "brain-below",
  "brain",
  "spinal-cord",
  "heart-window",
  "heart-opened",
  "heart",
  "lung",
  "lungs",
  "larynx-opened",
  "larynx",
  "pharynx",
  "diaphragm",
  "thoracic-wall",
  "stomach-opened",
  "stomach",
  "caecum",
  "colon",
  "bowel",
  "liver-below",
  "liver",
  "spleen",
  "pancreas",
  "kidney-halved",
  "kidney",
  "uterus",
  "half-pelvis",
  "half-head",
  "neck",
  "face",
  "orbit",
  "upper-limb-with-girdle",
  "upper-limb",
  "forearm-from-behind",
  "palm",
  "shoulder-joint",
  "knee",
  "lower-limb-lymph",
  "lower-limb",
  "gluteal-region",
  "popliteal-fossa",
  "groin",
  "sole",
] as const;

const boneMotifs = [
  "hand-bones",
  "wrist-ligaments",
  "lower-jaws",
  "lower-jaw",
  "skull-newborn",
  "skull-apart",
  "temporal-bone",
  "skull-front",
  "skull",
  "spine-with-pelvis",
  "vertebra",
  "femur",
  "scapula",
  "bony-pelvis",
  "rib-cage",
  "skeleton",
] as const;

const animalMotifs = [
  "animal",
  "animal-skeleton",
  "equine-foot",
  "ruminant-stomach",
  "dog-organs",
  "fish-organs",
] as const;

const castMotifs = [
  "cast-lungs",
  "cast-kidney",
  "cast-liver",
  "cast-heart",
  "cast-placenta",
  "cast-foot",
  "cast-air-sacs",
] as const;

const sheetMotifs = [
  "trunk-sheet",
  "head-sheet",
  "sagittal-head-sheet",
  "coronal-brain-sheet",
  "foot-sheet",
  "equine-digit-sheet",
] as const;

export const motifs = [
  ...neutralMotifs,
  "slide",
  "body",
  "seated-body",
  ...organMotifs,
  ...boneMotifs,
  ...animalMotifs,
  ...castMotifs,
  ...sheetMotifs,
] as const;
export type Motif = (typeof motifs)[number];

type Rule<Kind extends Motif = Motif> = readonly [says: RegExp, motif: Kind];

/** The title names this and nothing more than how it is cut, kept or seen. */
function thing(words: string): RegExp {
  return new RegExp(`^(?:${words})(?=$|[,;:(]| (?:in|from|with|whole|opened|injected)\\b)`);
}

const organRules: readonly Rule<(typeof organMotifs)[number]>[] = [
  [/^brain\b.*\bspinal cord\b.*\b(plexus|nerves)|^nervous system\b|^systema nervosum\b/, "nervous-system"],
  [/^kidneys\b.*\bureters\b.*\bbladder\b|^systema urinarium\b/, "urinary-system"],
  [/^heart and lungs\b|^cor et pulmones\b/, "heart-with-lungs"],
  [/^upper abdominal organs\b.*\bcoeliac trunk\b|^organa epigastrica\b/, "upper-abdomen"],
  [/^brainstem\b.*\bcranial nerves\b|^truncus encephali cum nervis\b/, "brainstem"],
  [/^cerebral hemisphere\b.*\bfib(re|er)|^hemispherium cerebri\b.*\bfibrae\b/, "hemisphere-fibres"],
  [/^cerebral hemisphere\b.*\bmedial\b|^hemispherium cerebri\b.*\bfacies medialis\b/, "hemisphere-inside"],
  [/^brain\b.*\b(base|below)\b|^encephalon\b.*\bcirculus arteriosus\b/, "brain-below"],
  [thing("brain|encephalon"), "brain"],
  [thing("spinal cord|medulla spinalis"), "spinal-cord"],
  [/^heart\b.*\bwindow\b.*\bleft ventricle\b/, "heart-window"],
  [/^heart\b.*\b(opened|halved|section)\b|^cor apertum\b/, "heart-opened"],
  [thing("heart|cor"), "heart"],
  [thing("lungs|pulmones"), "lungs"],
  [thing("lung|pulmo(?: dexter| sinister)?"), "lung"],
  [/^larynx\b.*\bopened from behind\b|^larynx a dorso aperta\b/, "larynx-opened"],
  [thing("larynx"), "larynx"],
  [/^tongue\b.*\bpharynx\b.*\bbehind\b|^pharynx\b.*\bopened from behind\b/, "pharynx"],
  [thing("diaphragm|diaphragma"), "diaphragm"],
  [/^thoracic wall\b.*\bwithin\b/, "thoracic-wall"],
  [/^stomach\b.*\bopened\b|^gaster apertus\b/, "stomach-opened"],
  [thing("stomach|gaster"), "stomach"],
  [/^ca?ecum\b.*\bappendix\b/, "caecum"],
  [thing("colon|large intestine|large bowel|intestinum crassum"), "colon"],
  [thing("intestines|small and large (?:intestine|bowel)"), "bowel"],
  [/^liver\b.*\b(porta|below|visceral surface)\b/, "liver-below"],
  [thing("liver|hepar"), "liver"],
  [thing("spleen|splen|lien"), "spleen"],
  [/^pancreas\b.*\bduoden/, "pancreas"],
  [/^kidney\b.*\b(section|halved|opened)\b|^ren\b.*\bsectio\b/, "kidney-halved"],
  [thing("kidney|ren(?: dexter| sinister)?"), "kidney"],
  [/^uterus\b.*\b(tubes|ovaries|adnexa)\b/, "uterus"],
  [
    /^(fe)?male pelvis\b.*\bmedian section\b|^pelvis (feminina|masculina)\b.*\bsectio mediana\b/,
    "half-pelvis",
  ],
  [/^half of (a |the )?head and neck\b.*\bmedian\b|^caput et collum\b.*\bsectio mediana\b/, "half-head"],
  [/^neck\b.*\btriangles\b|^collum\b.*\btrigona\b/, "neck"],
  [/^(side of (a |the )?)?face\b.*\bfacial nerve\b/, "face"],
  [/^orbit\b.*\babove\b/, "orbit"],
  [/^upper limb\b.*\bshoulder girdle\b|^membrum superius\b.*\bcingulo\b/, "upper-limb-with-girdle"],
  [thing("upper limb|membrum superius(?: dextrum| sinistrum)?"), "upper-limb"],
  [thing("forearm and hand|antebrachium et manus"), "forearm-from-behind"],
  [/^hand\b.*\bpalm\b|^manus\b.*\bpalma\b/, "palm"],
  [/^shoulder joint\b.*\bopened\b/, "shoulder-joint"],
  [/^knee joint\b.*\bopened\b/, "knee"],
  [/^lymph vessels of (an? |the )?(right |left )?lower limb\b/, "lower-limb-lymph"],
  [thing("lower limb|membrum inferius(?: dextrum| sinistrum)?"), "lower-limb"],
  [/^gluteal region\b.*\bbehind\b/, "gluteal-region"],
  [/^popliteal fossa and calf\b/, "popliteal-fossa"],
  [thing("inguinal region|regio inguinalis(?: dextra| sinistra)?"), "groin"],
  [/^foot\b.*\bsole\b|^pes\b.*\bplanta\b/, "sole"],
];

const boneRules: readonly Rule<(typeof boneMotifs)[number]>[] = [
  [/^bones of (an? |the )?(right |left )?hand\b|^ossa manus\b/, "hand-bones"],
  [/^ligaments of (an? |the )?(right |left )?wrist\b|^ligamenta carpi\b/, "wrist-ligaments"],
  [/^lower jaws\b|^mandibulae\b/, "lower-jaws"],
  [thing("lower jaw|mandible|mandibula"), "lower-jaw"],
  [/^skull of a newborn\b|^cranium neonati\b/, "skull-newborn"],
  [/^skull\b.*\bbones mounted apart\b|^cranium\b.*\bossa disiuncta\b/, "skull-apart"],
  [/^temporal bone\b.*\bear opened\b/, "temporal-bone"],
  [/^skull\b.*\bfrom the front\b/, "skull-front"],
  [thing("skull|cranium"), "skull"],
  [/^vertebral column with pelvis\b|^columna vertebralis et pelvis\b/, "spine-with-pelvis"],
  [thing("(?:thoracic |lumbar )?vertebra"), "vertebra"],
  [thing("femur|thigh bone|os femoris"), "femur"],
  [thing("scapula|shoulder blade"), "scapula"],
  [thing("bony pelvis|pelvis"), "bony-pelvis"],
  [thing("rib cage|thoracic cage|bony thorax"), "rib-cage"],
  [/^(articulated |mounted )*skeleton( of an adult)?(?=$|,)|^skeleton articulatum\b/, "skeleton"],
];

const castRules: readonly Rule<(typeof castMotifs)[number]>[] = [
  [/^(bronchial tree|lungs|bronchi)\b|^arbor bronchialis\b/, "cast-lungs"],
  [/^(vessels? .*)?kidney\b|^ren\b/, "cast-kidney"],
  [/^(vessels? .*)?liver\b|^hepar\b/, "cast-liver"],
  [/^coronary (arteries|vessels)\b|^(vessels? .*)?heart\b/, "cast-heart"],
  [/^(vessels? .*)?placenta\b/, "cast-placenta"],
  [/^arteries of (an? |the )?(right |left )?foot\b|^arteriae pedis\b/, "cast-foot"],
];

export const animalNames: readonly (readonly [words: RegExp, animal: string])[] = [
  [/\bequus (ferus )?caballus\b/, "horse"],
  [/\bbos (primigenius )?taurus\b/, "cow"],
  [/\bovis\b/, "sheep"],
  [/\bsus\b/, "pig"],
  [/\bcanis\b|\bvulpes\b/, "dog"],
  [/\bfelis\b/, "cat"],
  [/\b(aonyx|lontra|lutra)\b/, "otter"],
  [/\b(gallus|columba)\b/, "fowl"],
  [/\bfalco\b/, "falcon"],
  [/\b(carassius|cyprinus|rutilus|salmo)\b/, "fish"],
  [/\b(coronella|elaphe|natrix|pantherophis|python|vipera)\b/, "snake"],
];

function readable(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[-_/]+/g, " ")
    .trim();
}

export function isHuman(species: string): boolean {
  return species.trim() === "" || /homo sapiens/i.test(species);
}

/** The animal drawn for a species, or null where none is like it. */
export function animalOf(species: string): string | null {
  const text = readable(species);
  return animalNames.find(([words]) => words.test(text))?.[1] ?? null;
}

/** The titles without their side, "the" and "human". */
export function titlesOf({ title, latinTitle }: Pick<DrawingRequest, "title" | "latinTitle">): string[] {
  return [readable(title).replace(/^((the|an?|right|left|both|human|adult) )+/, ""), readable(latinTitle)];
}

export function titleSays(request: Pick<DrawingRequest, "title" | "latinTitle">, words: RegExp): boolean {
  return titlesOf(request).some((title) => words.test(title));
}

export function shows(request: Pick<DrawingRequest, "shown">, structure: string): boolean {
  return request.shown.some((one) => one.structure === structure);
}

function firstRule<Kind extends Motif>(request: DrawingRequest, rules: readonly Rule<Kind>[]): Kind | null {
  return rules.find(([says]) => titleSays(request, says))?.[1] ?? null;
}

const notGrown = /\b(newborn|neonat\w*|infant\w*|child\w*|juvenile|f(o)?et(us|al)|embryo\w*)\b/;

/** What the title says, as far as the record bears it out. */
function organOf(request: DrawingRequest): Motif | null {
  const organ = firstRule(request, organRules);
  if (organ === "lung" && request.side !== "left" && request.side !== "right") return null;
  if (organ === "forearm-from-behind" && !shows(request, "extensor-digitorum")) return null;
  if (organ === "half-pelvis" && request.side !== "left" && request.side !== "right") return null;
  return organ;
}

function humanMotif(request: DrawingRequest): Motif | null {
  if (/skelet|bone/.test(request.kind)) {
    const bone = firstRule(request, boneRules);
    return bone !== null && (bone === "skull-newborn" || !titleSays(request, notGrown)) ? bone : null;
  }
  if (titleSays(request, notGrown)) return null;
  if (request.kind !== "whole body") return organOf(request);
  if (titleSays(request, /\b(seated|sitting)\b/)) return "seated-body";
  return titleSays(request, /\bstanding\b/) ? "body" : null;
}

function animalMotif(request: DrawingRequest): Motif | null {
  const animal = animalOf(request.species);
  const isRuminant = /\b(bos|bison|capra|cervus|ovis)\b/.test(readable(request.species));
  if (isRuminant && titleSays(request, /\bstomach with (its|the) four chambers\b/)) return "ruminant-stomach";
  if (animal === null) return null;
  if (/skelet|bone/.test(request.kind)) return titleSays(request, /\bskeleton\b/) ? "animal-skeleton" : null;
  if (animal === "horse" && titleSays(request, /\b(forelimb below the carpus|foot)\b/)) return "equine-foot";
  if (animal === "dog" && titleSays(request, /\bthoracic and abdominal organs\b/)) return "dog-organs";
  if (animal === "fish" && titleSays(request, /\bviscera\b/)) return "fish-organs";
  return request.kind === "whole body" && animal !== "falcon" ? "animal" : null;
}

function castMotif(request: DrawingRequest): Motif | null {
  if (isHuman(request.species)) return firstRule(request, castRules);
  const isFowl = animalOf(request.species) === "fowl";
  return isFowl && titleSays(request, /\bair sacs\b/) ? "cast-air-sacs" : null;
}

function sheetMotif(request: DrawingRequest): Motif | null {
  if (!isHuman(request.species)) {
    const isHorse = animalOf(request.species) === "horse";
    return isHorse && titleSays(request, /\bsagittal\b.*\bdigit\b/) ? "equine-digit-sheet" : null;
  }
  const title = request.sheet?.title ?? request.title;
  const words = `${readable(title)} ${request.sheet?.plane ?? ""}`;
  if (/\bbrain\b/.test(words)) {
    return /\bcoronal\b.*\bmammillary bod/.test(words) && request.sheet === null
      ? "coronal-brain-sheet"
      : null;
  }
  if (/\bsagittal\b/.test(words)) {
    if (/\bfoot\b/.test(words) && request.sheet === null) return "foot-sheet";
    return /\bhead\b/.test(words) ? "sagittal-head-sheet" : null;
  }
  if (!/\btransverse\b/.test(words)) return null;
  return /\btrunk\b/.test(words) ? "trunk-sheet" : /\bhead\b/.test(words) ? "head-sheet" : null;
}

/** How it is kept, when nothing is known of what it is. */
function neutralMotif({ kind, preparation }: DrawingRequest): Motif {
  if (kind === "sheet" || preparation.endsWith("sheet")) return "neutral-sheet";
  if (preparation === "fluid-preserved" || kind === "fluid-preserved specimen") return "neutral-jar";
  if (kind === "cast") return "neutral-dome";
  if (kind === "whole body") return "neutral-plinth";
  if (preparation === "dry") return "closed-box";
  return "neutral-stand";
}

export function chooseMotif(request: DrawingRequest): Motif {
  const { kind, preparation } = request;
  if (kind === "histological slide" || preparation === "slide") return "slide";
  const known =
    kind === "sheet" || preparation.endsWith("sheet")
      ? sheetMotif(request)
      : kind === "cast" || preparation === "corrosion cast"
        ? castMotif(request)
        : isHuman(request.species)
          ? humanMotif(request)
          : animalMotif(request);
  return known ?? neutralMotif(request);
}
