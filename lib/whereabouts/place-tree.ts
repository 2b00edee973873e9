/**
 * Places as the tree that they are: a larger place before what lies in it,
 * neighbours by their code, and codes with figures in them as people count (bay 2
 * before bay 10). Every place comes once, whatever its row says of the place
 * around it, so that none is lost from sight.
 */

export type TreePlace = { id: string; code: string; name: string; parentId: string | null };

/** A place at its depth, with the names of the larger places it lies in, the largest first. */
export type InTree<Place> = Place & { depth: number; within: string[] };

const counting = new Intl.Collator("en", { numeric: true });
const byCode = (first: TreePlace, second: TreePlace) =>
  counting.compare(first.code, second.code) || (first.code < second.code ? -1 : 1);

export function inTreeOrder<Place extends TreePlace>(places: readonly Place[]): InTree<Place>[] {
  const known = new Set(places.map(({ id }) => id));
  const insideOf = new Map<string | null, Place[]>();
  for (const place of [...places].sort(byCode)) {
    const around = place.parentId !== null && known.has(place.parentId) ? place.parentId : null;
    const inside = insideOf.get(around);
    if (inside) inside.push(place);
    else insideOf.set(around, [place]);
  }
  const ordered = new Map<string, InTree<Place>>();
  const add = (place: Place, within: string[]) => {
    if (ordered.has(place.id)) return;
    ordered.set(place.id, { ...place, depth: within.length, within });
    for (const inner of insideOf.get(place.id) ?? []) add(inner, [...within, place.name]);
  };
  for (const place of insideOf.get(null) ?? []) add(place, []);
  // What lies in itself, however far round, hangs on no outermost place.
  for (const place of [...places].sort(byCode)) add(place, []);
  return [...ordered.values()];
}

/** The ids of a place and of everything inside it. */
export function idsInside(places: readonly Pick<TreePlace, "id" | "parentId">[], id: string): Set<string> {
  const inside = new Set([id]);
  let before = 0;
  while (before < inside.size) {
    before = inside.size;
    for (const place of places)
      if (place.parentId !== null && inside.has(place.parentId)) inside.add(place.id);
  }
  return inside;
}

/** For each place the sum of what stands at it and at everything inside it. */
export function totalsInside(
  places: readonly TreePlace[],
  hereOf: ReadonlyMap<string, number>,
): Map<string, number> {
  const ordered = inTreeOrder(places);
  const totals = new Map(ordered.map(({ id }) => [id, hereOf.get(id) ?? 0]));
  /** The place around each depth, on the way down to the last place that was seen. */
  const way: string[] = [];
  for (const { id, depth } of ordered) {
    way.length = depth;
    for (const around of way) totals.set(around, (totals.get(around) ?? 0) + (hereOf.get(id) ?? 0));
    way.push(id);
  }
  return totals;
}
