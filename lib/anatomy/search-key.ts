/**
 * The key under which a name is found, and a searched text is looked up: what two
 * ways of writing one name have in common. Case, accents, punctuation, British or
 * American spelling, abbreviations of the trade (n., aa., lig.), Latin and English
 * endings and the order of the words make no difference, so that "n. medianus",
 * "Nervi mediani", "median nerve" and "median n." have one key. A German umlaut is
 * its vowel with e behind it: "Schläfe" and "Schlaefe" are one.
 *
 * A cranial nerve has the key of its number: "X", "CN X", "n. X", "tenth nerve"
 * and "10th cranial nerve" are "cn10".
 *
 * The key of a key is that key again is not promised; names and searched texts
 * are each keyed once. A text without letters or digits has the empty key, which
 * no name has. The spelling pairs and endings are from memory of school Latin.
 */

/** Written out before stemming; a doubled letter is a plural. */
const abbreviations = new Map(
  Object.entries({
    a: "arteria",
    aa: "arteriae",
    v: "vena",
    vv: "venae",
    n: "nervus",
    nn: "nervi",
    m: "musculus",
    mm: "musculi",
    r: "ramus",
    rr: "rami",
    lig: "ligamentum",
    ligg: "ligamenta",
    gl: "glandula",
    gll: "glandulae",
    artt: "articulationes",
    proc: "processus",
    procc: "processus",
    forr: "foramina",
    tuberc: "tuberculum",
    gg: "ganglia",
    gangl: "ganglion",
    nl: "nodus lymphoideus",
    nll: "nodi lymphoidei",
    lnn: "nodi lymphoidei",
    nucl: "nucleus",
    cart: "cartilago",
    fasc: "fascia",
    bur: "bursa",
    sulc: "sulcus",
    gyr: "gyrus",
    superf: "superficialis",
    dext: "dexter",
  }),
);

/** Only with their dot: without it they are words, or the beginning of some. */
const dottedAbbreviations = new Map(
  Object.entries({
    art: "articulatio",
    for: "foramen",
    gang: "ganglion",
    ln: "nodus lymphoideus",
    pl: "plexus",
    br: "bronchus",
    vag: "vagina",
    dex: "dexter",
    sin: "sinister",
    ant: "anterior",
    post: "posterior",
    sup: "superior",
    inf: "inferior",
    lat: "lateralis",
    prof: "profundus",
  }),
);

/** Forms whose stem is another than that of the dictionary form. */
const dictionaryForms = new Map(
  Object.entries({
    ossis: "os",
    ossa: "os",
    ossium: "os",
    capitis: "caput",
    capita: "caput",
    corporis: "corpus",
    corpora: "corpus",
    foraminis: "foramen",
    foramina: "foramen",
    abdominis: "abdomen",
    apicis: "apex",
    apices: "apex",
    corticis: "cortex",
    cortices: "cortex",
    verticis: "vertex",
    radicis: "radix",
    radices: "radix",
    cervicis: "cervix",
    cervices: "cervix",
    appendicis: "appendix",
    appendices: "appendix",
    pollicis: "pollex",
    hallucis: "hallux",
    indicis: "index",
    dentis: "dens",
    dentes: "dens",
    pedis: "pes",
    pedes: "pes",
    partis: "pars",
    partes: "pars",
    cordis: "cor",
    pontis: "pons",
    lentis: "lens",
    frontis: "frons",
    faciei: "facies",
    vasis: "vas",
    vasa: "vas",
    viscera: "viscus",
    cruris: "crus",
    crura: "crus",
    pulmonis: "pulmo",
    pulmones: "pulmo",
    hepatis: "hepar",
    pancreatis: "pancreas",
    phalangis: "phalanx",
    phalanges: "phalanx",
    meninges: "meninx",
    laryngis: "larynx",
    pharyngis: "pharynx",
    dextra: "dexter",
    dextrum: "dexter",
    dextri: "dexter",
    sinistra: "sinister",
    sinistrum: "sinister",
    sinistri: "sinister",
    feet: "foot",
    teeth: "tooth",
    gray: "grey",
  }),
);

const linkWords = new Set(["of", "the", "and", "et", "der", "des", "und", "vom", "von"]);

const romanNumerals = ["i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"];
const ordinals = [
  "first",
  "second",
  "third",
  "fourth",
  "fifth",
  "sixth",
  "seventh",
  "eighth",
  "ninth",
  "tenth",
  "eleventh",
  "twelfth",
];
const roman = [...romanNumerals].sort((one, other) => other.length - one.length).join("|");
const nerveNumber = `(?<roman>${roman})|(?<arabic>1[0-2]|[1-9])(?:st|nd|rd|th)?|(?<ordinal>${ordinals.join("|")})`;
const beforeNumber = "cn|nc|nn|n|nerve|cranial nerves?|nervus|nervus cranialis";
const afterNumber = "cranial nerves?|nerves?|cranial|nervus|nervus cranialis|hirnnerv|nerv";
const numberedNerve = new RegExp(
  `^(?:(?<before>${beforeNumber}) ?)?(?:${nerveNumber})(?: (?<after>${afterNumber}))?$`,
);
const numberBesideName = new RegExp(`(?:^| )(?:cn|nc) ?(?:${roman}|1[0-2]|[1-9])(?= |$)`, "g");

/** At most so much of a text is looked at. */
const longestText = 200;
const mostWords = 16;

/** Lower case, without accents, dots kept. */
function plain(text: string): string {
  return text
    .slice(0, longestText)
    .normalize("NFC")
    .replace(/[äöüÄÖÜ]/g, (umlaut) => `${umlaut.normalize("NFD").charAt(0)}e`)
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll("æ", "ae")
    .replaceAll("œ", "oe")
    .replaceAll("ß", "ss")
    .replace(/['’]s(?![\p{L}\p{N}])/gu, "")
    .replace(/['’]/g, "");
}

const withoutDots = (text: string) => text.replace(/[^\p{L}\p{N}]+/gu, " ").trim();

/** The number of a cranial nerve that this text names by nothing but its number. */
function nerveNumberOf(spaced: string): number | null {
  const found = numberedNerve.exec(spaced)?.groups;
  if (!found) return null;
  const { before, after } = found;
  if (found.roman) return romanNumerals.indexOf(found.roman) + 1;
  if (before === undefined && after === undefined) return null;
  return found.arabic ? Number(found.arabic) : ordinals.indexOf(found.ordinal ?? "") + 1;
}

/** Spelling pairs of British, American and older Latin usage. */
function foldSpelling(word: string): string {
  return word
    .replace(/([bt])re(s?)$/, "$1er$2")
    .replaceAll("ae", "e")
    .replace(/(^|[cfhmp])oe/g, "$1e")
    .replaceAll("ph", "f")
    .replaceAll("y", "i")
    .replaceAll("j", "i");
}

/** A numeral in brackets after a name, as formal lists write it: "nervus vagus [X]". */
function dropBracketedNumeral(text: string): string {
  const without = text.replace(new RegExp(`[[(]\\s*(?:cn\\s*)?(?:${roman})\\s*[\\])]`, "g"), " ");
  return withoutDots(without) === "" ? text : without;
}

/**
 * The words of a text with abbreviations written out and spelling folded, endings
 * still on them, in the order of the text.
 */
export function foldedWords(text: string): string[] {
  let spoken = dropBracketedNumeral(plain(text));
  const beside = withoutDots(spoken).replace(numberBesideName, " ").trim();
  if (beside !== "" && beside !== withoutDots(spoken) && nerveNumberOf(withoutDots(spoken)) === null)
    spoken = beside;
  const tokens = [...spoken.matchAll(/([\p{L}\p{N}]+)(\.?)/gu)];
  return tokens
    .flatMap(([, token = "", dot = ""]) => {
      const alone = tokens.length === 1 && dot === "";
      const full =
        (alone ? undefined : abbreviations.get(token)) ?? (dot ? dottedAbbreviations.get(token) : undefined);
      return (full ?? token).split(" ");
    })
    .filter((word) => !linkWords.has(word))
    .map((word) => foldSpelling(dictionaryForms.get(word) ?? word))
    .slice(0, mostWords);
}

const endings = [
  "orum",
  "arum",
  "ibus",
  "uses",
  "ons",
  "ua",
  "um",
  "us",
  "es",
  "is",
  "os",
  "on",
  "as",
  "a",
  "e",
  "i",
  "o",
  "u",
  "s",
];
const shortestStem = 3;

/** @returns the part of a folded word that its cases, its plural and its English form share */
export function stemOf(word: string): string {
  let stem = word.replace(/tat(?:is|es|um)$/, "tas").replace(/ion(?:s|is|es|um|i|em)?$/, "io");
  for (const ending of endings) {
    const kept = stem.slice(0, -ending.length);
    if (!stem.endsWith(ending) || kept.length < shortestStem || (ending === "s" && stem.endsWith("ss")))
      continue;
    stem = kept;
    break;
  }
  if (stem.endsWith("i") && stem.length > shortestStem) stem = stem.slice(0, -1);
  return stem;
}

/** Stems of nouns whose adjectives have another one: femur, but femoral. */
const adjectiveStems = new Map(
  Object.entries({
    femur: "femor",
    abdomen: "abdomin",
    thorax: "thorac",
    clavicl: "clavicul",
    gaster: "gastr",
    pancreat: "pancre",
    larinx: "laring",
    farinx: "faring",
    meninx: "mening",
    coccix: "coccig",
    cortex: "cortic",
    cru: "crur",
    cervix: "cervic",
  }),
);

/** @returns what a noun shares with its adjective: "radius" with "radial", "ulna" with "ulnaris" */
export function rootOf(word: string): string {
  const stem = stemOf(word);
  const root = stem.replace(/(?<=^.{3,})(?:eal|al|ar|ac|ic)$/, "");
  const ground = root.length > shortestStem ? root.replace(/i$/, "") : root;
  return adjectiveStems.get(ground) ?? ground;
}

/** A wider key than that of a name: nouns and their adjectives are the same. */
export function rootKey(words: readonly string[]): string {
  return [...new Set(words.map(rootOf))].sort().join(" ");
}

/** The key of a name or of a searched text; empty when it has neither letter nor digit. */
export function searchKey(text: string): string {
  const number = nerveNumberOf(withoutDots(plain(text)));
  if (number !== null) return `cn${number}`;
  return [...new Set(foldedWords(text).map(stemOf))].sort().join(" ");
}

const sideWords = new Set([
  "left",
  "right",
  "sinister",
  "dexter",
  "sin.",
  "dex.",
  "dext.",
  "both",
  "bilateral",
  "links",
  "linke",
  "linker",
  "linkes",
  "rechts",
  "rechte",
  "rechter",
  "rechtes",
]);

/** The text without words of side: a side belongs to what is seen on a specimen, rarely to a name. */
export function withoutSide(text: string): string {
  return text
    .split(/\s+/)
    .filter((word) => !sideWords.has(dictionaryForms.get(word.toLowerCase()) ?? word.toLowerCase()))
    .join(" ");
}
