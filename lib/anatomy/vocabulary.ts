/**
 * Reads the files of the vocabulary and says what is wrong with them. A file is
 * tab-separated with one header line; which file a row stands in says what it is
 * (regions, systems, classes, animals, or structures of the human body). Nothing
 * is mended on the way in: a row is right or it is reported. A structure that the
 * Latin lists do not name has no Latin name.
 *
 * A file "names-de.tsv" gives names in one further language to structures of the
 * other files. The German names are usual German anatomical ones, from memory.
 */
import { ancestorsOf, findRing, linksOf } from "#lib/anatomy/closure.ts";
import {
  type NameKind,
  type NameLanguage,
  nameLanguages,
  type OtherNames,
  type StructureAncestor,
  type StructureKind,
  type StructureLink,
  type StructureName,
  type VocabularyRow,
} from "#lib/anatomy/schema.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";

export const vocabularyColumns = [
  "id",
  "english",
  "latin",
  "part_of",
  "is_a",
  "regions",
  "system",
  "paired",
  "synonyms_english",
  "synonyms_latin",
] as const;

export const nameColumns = ["id", "name", "synonyms"] as const;

/** What stands in the column of the system for a region. */
const systemOfRegions = "body-region";

export type VocabularyFile = { name: string; text: string };

export type VocabularyProblem = { file: string; line: number; sentence: string };

export type Vocabulary = { rows: VocabularyRow[]; problems: VocabularyProblem[] };

const kindsByFile = new Map<string, StructureKind>([
  ["regions", "region"],
  ["systems", "system"],
  ["classes", "class"],
]);

type Placed = { file: string; line: number };
type PlacedRow = VocabularyRow & Placed;
type PlacedNames = OtherNames & Placed & { id: string };

const listIn = (cell: string) =>
  cell
    .split("|")
    .map((part) => part.trim())
    .filter((part) => part !== "");

/** The lines of a file by column; what is not of its columns is reported. */
function readLines<Column extends string>(
  { name, text }: VocabularyFile,
  columns: readonly Column[],
  problems: VocabularyProblem[],
): { line: number; cell: (column: Column) => string }[] {
  const [header = "", ...lines] = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  if (header !== columns.join("\t")) {
    problems.push({ file: name, line: 1, sentence: `The first line must read: ${columns.join(", ")}.` });
    return [];
  }
  return lines.flatMap((content, index) => {
    if (content.trim() === "") return [];
    const line = index + 2;
    const cells = content.split("\t").map((cell) => cell.trim());
    if (cells.length !== columns.length) {
      const sentence = `${cells.length} cells stand where ${columns.length} belong.`;
      problems.push({ file: name, line, sentence });
      return [];
    }
    return [{ line, cell: (column: Column) => cells[columns.indexOf(column)] ?? "" }];
  });
}

const namesFile = /^names-(?<language>[^.]*)\.tsv$/;

/** The names of a file of one further language. */
function readNames(file: VocabularyFile, problems: VocabularyProblem[]): PlacedNames[] {
  const written = namesFile.exec(file.name)?.groups?.language;
  const language = nameLanguages.find((each) => each === written);
  if (language === undefined || language === "en" || language === "la") {
    const sentence = `The vocabulary speaks no further language "${written}".`;
    problems.push({ file: file.name, line: 1, sentence });
    return [];
  }
  return readLines(file, nameColumns, problems).map(({ line, cell }) => ({
    file: file.name,
    line,
    id: cell("id"),
    language,
    preferred: cell("name"),
    synonyms: listIn(cell("synonyms")),
  }));
}

/** Puts the names of further languages on their structures. */
function giveNames(
  names: readonly PlacedNames[],
  byId: ReadonlyMap<string, PlacedRow>,
  problems: VocabularyProblem[],
): void {
  const owners = new Map<string, string>();
  for (const { id, file, line, ...named } of names) {
    const report = (sentence: string) => problems.push({ file, line, sentence });
    const row = byId.get(id);
    if (named.preferred === "") report(`${id} has no name here.`);
    const once = `${named.language}/${named.preferred.toLowerCase()}`;
    const owner = owners.get(once);
    if (owner !== undefined && owner !== id)
      report(`${id} has the same name as ${owner}: "${named.preferred}".`);
    owners.set(once, id);
    if (!row) report(`"${id}" stands in no other file.`);
    else if (row.otherNames.some(({ language }) => language === named.language))
      report(`${id} is named twice in this language.`);
    else row.otherNames = [...row.otherNames, named];
    for (const name of [named.preferred, ...named.synonyms])
      if (name !== "" && searchKey(name) === "") report(`${id} has a name without a letter: "${name}".`);
  }
}

function readFile(file: VocabularyFile, rows: PlacedRow[], problems: VocabularyProblem[]): void {
  const { name } = file;
  const stem = name.replace(/\.tsv$/, "");
  for (const { line, cell } of readLines(file, vocabularyColumns, problems)) {
    const kind = kindsByFile.get(stem) ?? "structure";
    const system = cell("system");
    rows.push({
      id: cell("id"),
      kind,
      animal: stem === "animals",
      english: cell("english"),
      latin: cell("latin"),
      partOf: listIn(cell("part_of")),
      isA: listIn(cell("is_a")),
      regions: listIn(cell("regions")),
      system: kind === "region" && system === systemOfRegions ? "" : system,
      paired: cell("paired") === "yes",
      englishSynonyms: listIn(cell("synonyms_english")),
      latinSynonyms: listIn(cell("synonyms_latin")),
      otherNames: [],
      file: name,
      line,
    });
    if (!["yes", "no"].includes(cell("paired")))
      problems.push({ file: name, line, sentence: `"Paired" is yes or no, not "${cell("paired")}".` });
  }
}

function checkRow(row: PlacedRow, byId: ReadonlyMap<string, VocabularyRow>): string[] {
  const found: string[] = [];
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(row.id))
    found.push(`"${row.id}" is not an id: small letters, digits, hyphens.`);
  if (row.english === "") found.push(`${row.id} has no English name.`);
  if (row.regions.length === 0) found.push(`${row.id} states no region.`);
  if (row.system === "" && row.kind !== "region") found.push(`${row.id} states no system.`);
  const refer = (column: string, ids: readonly string[], kind?: StructureKind) => {
    for (const id of ids) {
      const target = byId.get(id);
      if (!target) found.push(`${row.id} names "${id}" as ${column}, which no row has.`);
      else if (kind && target.kind !== kind)
        found.push(`${row.id} names "${id}" as ${column}, which is a ${target.kind}.`);
    }
  };
  refer("whole", row.partOf);
  refer("kind", row.isA);
  refer("region", row.regions, "region");
  refer("system", row.system === "" ? [] : [row.system], "system");
  for (const name of [row.english, row.latin, ...row.englishSynonyms, ...row.latinSynonyms])
    if (name !== "" && searchKey(name) === "")
      found.push(`${row.id} has a name without a letter: "${name}".`);
  return found;
}

/** Reads and checks all files together; the rows are good only when there are no problems. */
export function readVocabulary(files: readonly VocabularyFile[]): Vocabulary {
  const rows: PlacedRow[] = [];
  const problems: VocabularyProblem[] = [];
  const names: PlacedNames[] = [];
  for (const file of files)
    if (namesFile.test(file.name)) names.push(...readNames(file, problems));
    else readFile(file, rows, problems);

  const byId = new Map<string, PlacedRow>();
  const byName = new Map<string, PlacedRow>();
  for (const row of rows) {
    const { file, line } = row;
    const earlier = byId.get(row.id);
    if (earlier)
      problems.push({
        file,
        line,
        sentence: `${row.id} stands already in ${earlier.file}, line ${earlier.line}.`,
      });
    else byId.set(row.id, row);
    const namesake = byName.get(row.english.toLowerCase());
    if (namesake && namesake.id !== row.id)
      problems.push({
        file,
        line,
        sentence: `${row.id} has the same English name as ${namesake.id}: "${row.english}".`,
      });
    else byName.set(row.english.toLowerCase(), row);
  }
  giveNames(names, byId, problems);
  for (const row of rows)
    for (const sentence of checkRow(row, byId)) problems.push({ file: row.file, line: row.line, sentence });

  const ring = findRing(rows);
  if (ring) {
    const { file = "", line = 0 } = byId.get(ring[0] ?? "") ?? {};
    problems.push({ file, line, sentence: `The relations form a ring: ${ring.join(" → ")}.` });
  }
  return { rows: rows.map(({ file: _file, line: _line, ...row }) => row), problems };
}

/** The names of a structure, preferred ones first, each text once in its language. */
export function namesOf(row: VocabularyRow): StructureName[] {
  const stated: [NameLanguage, NameKind, readonly string[]][] = [
    ["en", "preferred", [row.english]],
    ["la", "preferred", [row.latin]],
    ["en", "synonym", row.englishSynonyms],
    ["la", "synonym", row.latinSynonyms],
    ...row.otherNames.flatMap(
      ({ language, preferred, synonyms }): [NameLanguage, NameKind, readonly string[]][] => [
        [language, "preferred", [preferred]],
        [language, "synonym", synonyms],
      ],
    ),
  ];
  const seen = new Set<string>();
  return stated.flatMap(([language, kind, texts]) =>
    texts.flatMap((text) => {
      const once = `${language}/${text}`;
      if (text === "" || seen.has(once)) return [];
      seen.add(once);
      return [{ structureId: row.id, language, text, kind, searchKey: searchKey(text) }];
    }),
  );
}

export type VocabularyTables = {
  structures: Pick<VocabularyRow, "id" | "english" | "latin" | "kind" | "paired" | "animal">[];
  names: StructureName[];
  links: StructureLink[];
  ancestors: StructureAncestor[];
};

/** Everything that is stored of checked rows. */
export function tablesOf(rows: readonly VocabularyRow[]): VocabularyTables {
  return {
    structures: rows.map(({ id, english, latin, kind, paired, animal }) => ({
      id,
      english,
      latin,
      kind,
      paired,
      animal,
    })),
    names: rows.flatMap(namesOf),
    links: linksOf(rows),
    ancestors: ancestorsOf(rows),
  };
}
