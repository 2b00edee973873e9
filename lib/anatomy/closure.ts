/**
 * What follows from the stated relations of the vocabulary:
 *
 *   is-a ∘ is-a                      kind
 *   any path with at least one part-of   part      (each structure is part of itself)
 *   in-region, then part-of among regions     region
 *   in-system, then part-of among systems     system
 *
 * The relations form a graph without rings in which a structure may have many
 * parents. Regions are never inherited along part-of: a part of a structure that
 * crosses regions lies in some of them only, so each structure states its own.
 */
import type { StructureAncestor, StructureLink, VocabularyRow } from "#lib/anatomy/schema.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export type StatedRow = Pick<VocabularyRow, "id" | "kind" | "partOf" | "isA" | "regions" | "system">;

/** The relations as rows; a region that names itself as its region says nothing. */
export function linksOf(rows: readonly StatedRow[]): StructureLink[] {
  const links: StructureLink[] = [];
  for (const row of rows) {
    const state = (relation: StructureLink["relation"], parents: readonly string[]) => {
      for (const parentId of new Set(parents))
        if (parentId !== row.id) links.push({ childId: row.id, relation, parentId });
    };
    state("part-of", row.partOf);
    state("is-a", row.isA);
    state("in-region", row.regions);
    state("in-system", row.system === "" ? [] : [row.system]);
  }
  return links;
}

/** @returns the ids of one ring of part-of and is-a, the first again at its end, or null when there is none */
export function findRing(rows: readonly StatedRow[]): string[] | null {
  const byId = new Map(rows.map((row) => [row.id, row]));
  const settled = new Set<string>();
  for (const { id: start } of rows) {
    const way: { id: string; parents: string[] }[] = [];
    const onWay = new Set<string>();
    const enter = (id: string) => {
      const row = byId.get(id);
      way.push({ id, parents: row ? [...row.partOf, ...row.isA] : [] });
      onWay.add(id);
    };
    if (!settled.has(start)) enter(start);
    for (let here = way.at(-1); here; here = way.at(-1)) {
      const parent = here.parents.pop();
      if (parent === undefined) {
        way.pop();
        onWay.delete(here.id);
        settled.add(here.id);
      } else if (onWay.has(parent)) {
        const ids = way.map((step) => step.id);
        return [...ids.slice(ids.indexOf(parent)), parent];
      } else if (!settled.has(parent)) enter(parent);
    }
  }
  return null;
}

type Reached = { part: Set<string>; kind: Set<string> };

/**
 * Everything that follows, each pair and path once.
 * @throws {Refusal} "anatomy.ring" naming the ring, "anatomy.unknown-structure" naming an id that no row has
 */
export function ancestorsOf(rows: readonly StatedRow[]): StructureAncestor[] {
  const ring = findRing(rows);
  if (ring) throw new Refusal("conflict", "anatomy.ring", { ring: ring.join(" → ") });
  const byId = new Map(rows.map((row) => [row.id, row]));
  const known = (id: string): StatedRow => {
    const row = byId.get(id);
    if (!row) throw new Refusal("conflict", "anatomy.unknown-structure", { id });
    return row;
  };

  const reached = new Map<string, Reached>();
  const reach = (id: string): Reached => {
    const before = reached.get(id);
    if (before) return before;
    const { partOf, isA } = known(id);
    const found: Reached = { part: new Set(), kind: new Set() };
    for (const whole of partOf) {
      const above = reach(whole);
      found.part.add(whole);
      for (const further of [...above.part, ...above.kind]) found.part.add(further);
    }
    for (const kind of isA) {
      const above = reach(kind);
      found.kind.add(kind);
      for (const further of above.kind) found.kind.add(further);
      for (const further of above.part) found.part.add(further);
    }
    reached.set(id, found);
    return found;
  };

  const follow = (stated: readonly string[], kind: StatedRow["kind"], self: string): Set<string> => {
    const found = new Set<string>();
    for (const id of stated)
      for (const above of [id, ...reach(id).part])
        if (above !== self && known(above).kind === kind) found.add(above);
    return found;
  };

  const ancestors: StructureAncestor[] = [];
  for (const { id, regions, system } of rows) {
    const add = (via: StructureAncestor["via"], ids: Iterable<string>) => {
      for (const ancestorId of ids) ancestors.push({ ancestorId, descendantId: id, via });
    };
    const { part, kind } = reach(id);
    add("part", [id, ...part]);
    add("kind", kind);
    add("region", follow(regions, "region", id));
    add("system", follow(system === "" ? [] : [system], "system", id));
  }
  return ancestors;
}
