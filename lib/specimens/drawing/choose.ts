/**
 * Which drawing stands for a specimen. The kind decides first (a slide is a slide
 * whatever is on it), then the organ or bone that its title, region or structures
 * name, then the region. What no drawing knows gets its closed box: a plate never
 * shows something that the specimen is not.
 *
 * Words are matched as the trade writes them in English or Latin; ids of the
 * vocabulary ("upper-limb") read as their words.
 */
export type DrawingRequest = {
  /** The specimen's kind, as the catalogue names it. */
  kind: string;
  preparation?: string | undefined;
  /** Scientific name; without one, human. */
  species?: string | undefined;
  title?: string | undefined;
  /** Region and structures, by id or name, the most telling first. */
  regions?: readonly string[] | undefined;
  structures?: readonly string[] | undefined;
  side?: string | undefined;
  plane?: string | undefined;
  /** Place of a sheet in its series, 0 at the first end of the body, 1 at the other. */
  level?: number | undefined;
  /** What keeps the drawing the same for ever: the accession number; for a sheet, its series'. */
  seed: string;
  /** Latin names with leader lines. */
  named?: boolean | undefined;
  /** For a list: without shading and fine twigs, to whole units, a third of the bytes. */
  small?: boolean | undefined;
};

export const motifs = [
  "slide",
  "closed-box",
  "body",
  "skeleton",
  "animal",
  "animal-skeleton",
  "equine-foot",
  "trunk-sheet",
  "head-sheet",
  "sagittal-head-sheet",
  "limb-sheet",
  "cast-lungs",
  "cast-kidney",
  "cast-liver",
  "cast-heart",
  "cast-placenta",
  "upper-limb",
  "hand",
  "lower-limb",
  "foot",
  "knee",
  "head",
  "skull",
  "skull-front",
  "brain",
  "brain-below",
  "spinal-cord",
  "vertebra",
  "femur",
  "scapula",
  "pelvis",
  "rib-cage",
  "heart",
  "heart-opened",
  "lungs",
  "larynx",
  "liver",
  "stomach",
  "kidney",
  "kidney-halved",
  "spleen",
  "pancreas",
  "bowel",
  "uterus",
] as const;
export type Motif = (typeof motifs)[number];

type Rule = readonly [words: RegExp, motif: Motif];

const organRules: readonly Rule[] = [
  [/\bheart\b.*\b(opened|halved|section|bisected|chambers)|\b(opened|halved|bisected) heart/, "heart-opened"],
  [/\b(heart|cor|coronary|myocard\w*|ventricle of heart|atri(um|al) of heart)\b/, "heart"],
  [
    /\bkidneys?\b.*\b(halved|section|bisected|opened)|\b(halved|bisected) kidney|\brenal pelvis/,
    "kidney-halved",
  ],
  [/\b(kidneys?|ren|renal|ureter|nephr\w*)\b/, "kidney"],
  [/\b(lungs?|pulmo|pulmonary|bronch\w*|trachea)\b/, "lungs"],
  [/\b(larynx|laryngeal|thyroid|cricoid|hyoid|glottis|pharynx)\b/, "larynx"],
  [/\b(liver|hepar|hepatic|gallbladder|biliary)\b/, "liver"],
  [/\b(stomach|gaster|gastric|oesophagus|esophagus)\b/, "stomach"],
  [/\b(spleen|splen|lien|splenic)\b/, "spleen"],
  [/\b(pancreas|pancreatic|duodenum)\b/, "pancreas"],
  [/\b(colon|caecum|cecum|appendix|ileum|jejunum|bowel|intestin\w*|rectum|mesenter\w*)\b/, "bowel"],
  [/\b(uterus|ovar\w*|uterine|vagina|adnexa)\b/, "uterus"],
  [
    /\bbrain\b.*\b(base|below|inferior)|\b(base of (the )?brain|circle of willis|arterial circle|cranial nerves)\b/,
    "brain-below",
  ],
  [/\b(brain|cerebr\w*|encephalon|cerebell\w*|hemisphere|brainstem)\b/, "brain"],
  [/\b(spinal cord|medulla spinalis|cauda equina|spinal nerves?)\b/, "spinal-cord"],
];

const boneRules: readonly Rule[] = [
  [/\bskull\b.*\b(front|anterior)|\bfacial skeleton|\bviscerocranium/, "skull-front"],
  [/\b(skulls?|cranium|calvaria|mandible|temporal bone|maxilla|neurocranium)\b/, "skull"],
  [/\b(femur|thigh bone|os femoris|humerus|long bone|tibia|fibula|radius|ulna)\b/, "femur"],
  [/\b(scapula|shoulder blade|clavicle)\b/, "scapula"],
  [/\b(bony pelvis|hip bones?|os coxae|sacrum|ilium|pelvic girdle)\b/, "pelvis"],
  [/\b(vertebra\w*|atlas|axis|lumbar spine|spine)\b/, "vertebra"],
  [/\b(rib cage|ribs?|sternum|thoracic cage|thoracic skeleton)\b/, "rib-cage"],
];

const regionRules: readonly Rule[] = [
  [/\b(knee|cruciate|menisc\w*|patella)\b/, "knee"],
  [/\b(hand|palm|wrist|carpal|finger|metacarp\w*|palmar)\b/, "hand"],
  [/\b(foot|ankle|tarsal|plantar|calcaneus|metatars\w*|talus)\b/, "foot"],
  [
    /\b(upper limb|membrum superius|arm|forearm|elbow|shoulder|axilla|brachial|median nerve|ulnar|radial)\b/,
    "upper-limb",
  ],
  [
    /\b(lower limb|membrum inferius|thigh|leg|hip|gluteal|sciatic|femoral|popliteal|inguinal)\b/,
    "lower-limb",
  ],
  [/\b(head|face|facial|neck|orbit|eye|ear|parotid|oral|nose|temporal|scalp)\b/, "head"],
  [/\b(pelvis|perineum|pelvic|bladder|prostate)\b/, "pelvis"],
  [/\b(thorax|thoracic|chest|mediastinum|breast)\b/, "lungs"],
  [/\b(abdomen|abdominal|peritone\w*|retroperitone\w*)\b/, "bowel"],
  [/\b(back|vertebral column)\b/, "spinal-cord"],
  [/\b(trunk|torso|whole body)\b/, "body"],
];

function readable(text: string | undefined): string {
  return (text ?? "").toLowerCase().replaceAll(/[-_/]+/g, " ");
}

function firstMatch(rules: readonly Rule[], texts: readonly string[]): Motif | null {
  for (const text of texts) {
    for (const [words, motif] of rules) {
      if (words.test(text)) return motif;
    }
  }
  return null;
}

/** Title first, then region, then structures in their order: the title is what a person chose to say. */
function textsOf(request: DrawingRequest): string[] {
  return [request.title, ...(request.regions ?? []), ...(request.structures ?? [])]
    .map(readable)
    .filter((text) => text !== "");
}

export const animalNames: readonly (readonly [words: RegExp, animal: string])[] = [
  [/equus|horse|pony|donkey/, "horse"],
  [/\bbos\b|cattle|cow|bison|bovine/, "cow"],
  [/\bovis\b|capra|sheep|goat|ovine/, "sheep"],
  [/\bsus\b|pig|porcine/, "pig"],
  [/canis|vulpes|dog|fox|wolf/, "dog"],
  [/felis|panthera|lynx|\bcat\b|feline/, "cat"],
  [
    /gallus|columba|anas|anser|corvus|buteo|strix|meleagris|passer|avian|\bbird|hen\b|fowl|pigeon|duck|goose|owl/,
    "bird",
  ],
  [/salmo|cyprinus|oncorhynchus|perca|esox|gadus|carassius|danio|\bfish|carp|trout|perch|pike/, "fish"],
  [/natrix|vipera|python|\bboa\b|coronella|pantherophis|snake|viper/, "snake"],
];

export function isHuman(species: string | undefined): boolean {
  return species === undefined || species.trim() === "" || /homo sapiens|human/i.test(species);
}

/** The animal drawn for a species, or null where none is like it. */
export function animalOf(species: string | undefined): string | null {
  const text = readable(species);
  return animalNames.find(([words]) => words.test(text))?.[1] ?? null;
}

function chooseSheet(request: DrawingRequest, texts: readonly string[]): Motif {
  const all = texts.join(" ");
  if (/\b(head|brain|face|cranium|cerebr\w*|skull)\b/.test(all)) {
    return /sagittal|median/.test(`${readable(request.plane)} ${all}`) ? "sagittal-head-sheet" : "head-sheet";
  }
  if (/\b(limb|thigh|leg|arm|forearm|knee|foot|hand)\b/.test(all)) return "limb-sheet";
  return "trunk-sheet";
}

function chooseCast(texts: readonly string[]): Motif {
  const all = texts.join(" ");
  if (/kidney|renal|ren\b/.test(all)) return "cast-kidney";
  if (/liver|hepat|portal/.test(all)) return "cast-liver";
  if (/heart|coron/.test(all)) return "cast-heart";
  if (/placent|umbilic/.test(all)) return "cast-placenta";
  if (/lung|bronch|pulmo|trache|airway/.test(all)) return "cast-lungs";
  return "closed-box";
}

export function chooseMotif(request: DrawingRequest): Motif {
  const kind = readable(request.kind);
  const preparation = readable(request.preparation);
  const texts = textsOf(request);
  const human = isHuman(request.species);
  if (/slide/.test(kind) || /slide/.test(preparation)) return "slide";
  if (/\bcast\b/.test(kind) || /corrosion/.test(preparation)) return chooseCast(texts);
  if (/sheet|slice/.test(kind)) return chooseSheet(request, texts);
  if (!human) {
    const part = firstMatch(
      [[/\b(hoof|equine foot|distal limb|digit|fetlock|pastern)\b/, "equine-foot"], ...organRules],
      texts,
    );
    if (part !== null && !/whole/.test(kind)) return part;
    if (animalOf(request.species) === null) return "closed-box";
    if (/skelet|bone/.test(kind) || /skelet/.test(preparation)) return "animal-skeleton";
    return /whole|fluid|system/.test(kind) || part === null ? "animal" : part;
  }
  if (/skelet|bone/.test(kind) || /mounted skeleton/.test(preparation)) {
    return firstMatch([...boneRules, ...regionRules.slice(0, 3)], texts) ?? "skeleton";
  }
  if (/whole body|organ system/.test(kind)) return "body";
  if (/region/.test(kind))
    return firstMatch([...regionRules, ...organRules, ...boneRules], texts) ?? "closed-box";
  return firstMatch([...organRules, ...boneRules, ...regionRules], texts) ?? "closed-box";
}
