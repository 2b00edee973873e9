/**
 * Reads the files of the vocabulary and says what is wrong with them. A file is
 * tab-separated with one header line; which file a row stands in says what it is
 * (regions, systems, classes, animals, or structures of the human body). Nothing
 * is mended on the way in: a row is right or it is reported. A structure that the
 * Latin lists do not name has no Latin name.
 */
import { ancestorsOf, findRing, linksOf } from "#lib/anatomy/closure.ts";
import type {
  NameKind,
  NameLanguage,
  StructureAncestor,
  StructureKind,
  StructureLink,
  StructureName,
  VocabularyRow,
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

type PlacedRow = VocabularyRow & { file: string; line: number };

function readFile({ name, text }: VocabularyFile, rows: PlacedRow[], problems: VocabularyProblem[]): void {
  const stem = name.replace(/\.tsv$/, "");
  const [header = "", ...lines] = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  if (header !== vocabularyColumns.join("\t")) {
    problems.push({
      file: name,
      line: 1,
      sentence: `The first line must read: ${vocabularyColumns.join(", ")}.`,
    });
    return;
  }
  for (const [index, content] of lines.entries()) {
    if (content.trim() === "") continue;
    const line = index + 2;
    const cells = content.split("\t").map((cell) => cell.trim());
    if (cells.length !== vocabularyColumns.length) {
      const sentence = `${cells.length} cells stand where ${vocabularyColumns.length} belong.`;
      problems.push({ file: name, line, sentence });
      continue;
    }
    const cell = (column: (typeof vocabularyColumns)[number]) =>
      cells[vocabularyColumns.indexOf(column)] ?? "";
    const list = (column: (typeof vocabularyColumns)[number]) =>
      cell(column)
        .split("|")
        .map((part) => part.trim())
        .filter((part) => part !== "");
    const kind = kindsByFile.get(stem) ?? "structure";
    const system = cell("system");
    rows.push({
      id: cell("id"),
      kind,
      animal: stem === "animals",
      english: cell("english"),
      latin: cell("latin"),
      partOf: list("part_of"),
      isA: list("is_a"),
      regions: list("regions"),
      system: kind === "region" && system === systemOfRegions ? "" : system,
      paired: cell("paired") === "yes",
      englishSynonyms: list("synonyms_english"),
      latinSynonyms: list("synonyms_latin"),
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
  for (const file of files) readFile(file, rows, problems);

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
