import { describe, expect, test } from "vitest";
import {
  nameColumns,
  namesOf,
  readVocabulary,
  tablesOf,
  vocabularyColumns,
} from "#lib/anatomy/vocabulary.ts";

const header = vocabularyColumns.join("\t");
const file = (name: string, ...lines: string[]) => ({ name, text: [header, ...lines, ""].join("\n") });
const line = (...cells: string[]) => cells.join("\t");

const regions = file(
  "regions.tsv",
  line("body", "body", "corpus", "", "", "body", "body-region", "no", "", ""),
  line("hand", "hand", "manus", "body", "", "body", "body-region", "yes", "", ""),
);
const systems = file(
  "systems.tsv",
  line(
    "nervous-system",
    "nervous system",
    "systema nervosum",
    "",
    "",
    "body",
    "nervous-system",
    "no",
    "",
    "",
  ),
);
const structures = file(
  "limbs.tsv",
  line(
    "median-nerve",
    "median nerve",
    "nervus medianus",
    "",
    "",
    "hand",
    "nervous-system",
    "yes",
    "median n.|Median nerve",
    "",
  ),
);
const good = [regions, systems, structures];

const sentences = (...files: { name: string; text: string }[]) =>
  readVocabulary(files).problems.map((problem) => `${problem.file} ${problem.line}: ${problem.sentence}`);
const withLine = (...cells: string[]) => sentences(regions, systems, file("limbs.tsv", line(...cells)));

describe("good files", () => {
  test("become rows of the kind of their file", () => {
    const { rows, problems } = readVocabulary(good);
    expect(problems).toEqual([]);
    expect(rows.map(({ id, kind, animal }) => [id, kind, animal])).toEqual([
      ["body", "region", false],
      ["hand", "region", false],
      ["nervous-system", "system", false],
      ["median-nerve", "structure", false],
    ]);
  });

  test("a region has no system, an animal's structure is marked", () => {
    const animals = file(
      "animals.tsv",
      line("hoof", "hoof", "ungula", "", "", "hand", "nervous-system", "yes", "", ""),
    );
    const { rows } = readVocabulary([...good, animals]);
    expect(rows[0]?.system).toBe("");
    expect(rows.at(-1)).toMatchObject({ id: "hoof", animal: true, kind: "structure" });
  });

  test("Windows line ends, blank lines and a byte order mark do no harm", () => {
    const text = `\uFEFF${structures.text.replaceAll("\n", "\r\n")}\r\n\r\n`;
    expect(readVocabulary([regions, systems, { name: "limbs.tsv", text }]).problems).toEqual([]);
  });

  test("names come with their keys, preferred ones first, none twice", () => {
    const { rows } = readVocabulary(good);
    const names = rows.filter(({ id }) => id === "median-nerve").flatMap(namesOf);
    expect(names.map(({ language, text, kind, searchKey }) => [language, text, kind, searchKey])).toEqual([
      ["en", "median nerve", "preferred", "median nerv"],
      ["la", "nervus medianus", "preferred", "median nerv"],
      ["en", "median n.", "synonym", "median nerv"],
      ["en", "Median nerve", "synonym", "median nerv"],
    ]);
  });

  test("the tables hold everything that is stored", () => {
    const tables = tablesOf(readVocabulary(good).rows);
    expect(tables.structures).toHaveLength(4);
    expect(tables.links).toContainEqual({ childId: "median-nerve", relation: "in-region", parentId: "hand" });
    expect(tables.ancestors).toContainEqual({
      ancestorId: "body",
      descendantId: "median-nerve",
      via: "region",
    });
  });
});

describe("names in a further language", () => {
  const german = (...lines: string[]) => ({
    name: "names-de.tsv",
    text: [nameColumns.join("\t"), ...lines, ""].join("\n"),
  });

  test("stand in a file of their own and come behind the others", () => {
    const { rows, problems } = readVocabulary([german(line("hand", "Hand", "Hände|Pfote")), ...good]);
    expect(problems).toEqual([]);
    expect(tablesOf(rows).names.filter(({ language }) => language === "de")).toEqual([
      { structureId: "hand", language: "de", text: "Hand", kind: "preferred", searchKey: "hand" },
      { structureId: "hand", language: "de", text: "Hände", kind: "synonym", searchKey: "hend" },
      { structureId: "hand", language: "de", text: "Pfote", kind: "synonym", searchKey: "pfot" },
    ]);
  });

  test.each([
    [["toe", "Zeh", ""], '"toe" stands in no other file.'],
    [["hand", "", "Hände"], "hand has no name here."],
    [["hand", "…", ""], 'hand has a name without a letter: "…".'],
    [["hand", "Hand"], "2 cells stand where 3 belong."],
  ])("%j is reported", (cells, sentence) =>
    expect(sentences(...good, german(line(...cells)))).toEqual([`names-de.tsv 2: ${sentence}`]),
  );

  test("one structure twice, and one name for two structures, are reported", () => {
    const twice = [line("hand", "Hand", ""), line("hand", "Greifhand", ""), line("body", "hand", "")];
    expect(sentences(...good, german(...twice))).toEqual([
      "names-de.tsv 3: hand is named twice in this language.",
      'names-de.tsv 4: body has the same name as hand: "hand".',
    ]);
  });

  test.each(["names-xx.tsv", "names-en.tsv", "names-.tsv"])("%s is no language", (name) =>
    expect(sentences(...good, { name, text: "id\tname\tsynonyms" })[0]).toMatch(/no further language/),
  );
});

describe("what is reported, with file and line", () => {
  test("a wrong header", () =>
    expect(sentences({ name: "limbs.tsv", text: "id\tname\n" })[0]).toMatch(
      /^limbs\.tsv 1: The first line must read: id, english/,
    ));

  test("a line with too few cells", () =>
    expect(withLine("ulna", "ulna")).toEqual(["limbs.tsv 2: 2 cells stand where 10 belong."]));

  test("unknown ids in every column", () =>
    expect(withLine("x", "x", "x", "p", "k", "r", "s", "no", "", "")).toEqual([
      'limbs.tsv 2: x names "p" as whole, which no row has.',
      'limbs.tsv 2: x names "k" as kind, which no row has.',
      'limbs.tsv 2: x names "r" as region, which no row has.',
      'limbs.tsv 2: x names "s" as system, which no row has.',
    ]));

  test("a region that is a structure, a system that is a region", () =>
    expect(withLine("x", "x", "x", "", "", "nervous-system", "hand", "no", "", "")).toEqual([
      'limbs.tsv 2: x names "nervous-system" as region, which is a system.',
      'limbs.tsv 2: x names "hand" as system, which is a region.',
    ]));

  test("no region, no system, no English name, no answer to paired", () =>
    expect(withLine("x", "", "", "", "", "", "", "maybe", "", "")).toEqual([
      'limbs.tsv 2: "Paired" is yes or no, not "maybe".',
      "limbs.tsv 2: x has no English name.",
      "limbs.tsv 2: x states no region.",
      "limbs.tsv 2: x states no system.",
    ]));

  test("an id twice, a name twice", () => {
    const again = file(
      "trunk.tsv",
      line("median-nerve", "other", "", "", "", "hand", "nervous-system", "no", "", ""),
      line("nerve-of-hand", "Median nerve", "", "", "", "hand", "nervous-system", "no", "", ""),
    );
    expect(sentences(...good, again)).toEqual([
      "trunk.tsv 2: median-nerve stands already in limbs.tsv, line 2.",
      'trunk.tsv 3: nerve-of-hand has the same English name as median-nerve: "Median nerve".',
    ]);
  });

  test("a crooked id and a name without a letter", () =>
    expect(withLine("Ulna 1", "ulna", "…", "", "", "hand", "nervous-system", "no", "", "")).toEqual([
      'limbs.tsv 2: "Ulna 1" is not an id: small letters, digits, hyphens.',
      'limbs.tsv 2: Ulna 1 has a name without a letter: "…".',
    ]));

  test("a ring", () =>
    expect(
      sentences(
        regions,
        systems,
        file(
          "limbs.tsv",
          line("a", "a", "a", "b", "", "hand", "nervous-system", "no", "", ""),
          line("b", "b", "b", "a", "", "hand", "nervous-system", "no", "", ""),
        ),
      ),
    ).toEqual(["limbs.tsv 2: The relations form a ring: a → b → a."]));
});
