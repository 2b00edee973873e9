import fs from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { showsTeeth, toothStructures } from "#lib/specimens/teeth.ts";

const folder = path.resolve(import.meta.dirname, "../../../seed/vocabulary");

/** The rows of the vocabulary that say what a structure is and what it is part of. */
const rows = fs
  .readdirSync(folder)
  .filter((name) => name.endsWith(".tsv"))
  .flatMap((name) => {
    const [header = "", ...lines] = fs.readFileSync(path.join(folder, name), "utf8").trim().split("\n");
    const columns = header.split("\t");
    const at = (column: string) => columns.indexOf(column);
    if (at("part_of") < 0) return [];
    return lines.map((line) => {
      const cells = line.split("\t");
      const list = (column: string) => (cells[at(column)] ?? "").split("|");
      return { id: cells[at("id")] ?? "", above: [...list("part_of"), ...list("is_a")] };
    });
  });

test("every name for teeth is one of the vocabulary", () => {
  const ids = new Set(rows.map(({ id }) => id));
  expect(toothStructures.filter((id) => !ids.has(id))).toEqual([]);
});

test("what the vocabulary calls a tooth, or a part of one, counts as teeth", () => {
  const known: readonly string[] = toothStructures;
  const below = rows.filter(({ above }) => above.some((id) => known.includes(id)));
  expect(below.length).toBeGreaterThan(5);
  expect(below.map(({ id }) => id).filter((id) => !known.includes(id))).toEqual([]);
});

test("teeth that are shown count, teeth that are gone do not, and a jaw alone has none", () => {
  expect(showsTeeth([{ structureId: "molar-teeth", state: "shown" }])).toBe(true);
  expect(showsTeeth([{ structureId: "third-molar-tooth", state: "variant" }])).toBe(true);
  expect(showsTeeth([{ structureId: "molar-teeth", state: "removed" }])).toBe(false);
  expect(showsTeeth([{ structureId: "molar-teeth", state: "absent" }])).toBe(false);
  expect(showsTeeth([{ structureId: "mandible", state: "shown" }])).toBe(false);
  expect(showsTeeth([])).toBe(false);
});
