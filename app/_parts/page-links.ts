/**
 * The addresses of the next and the previous page of a list that is read by key.
 * The way back is kept in the address: the keys of the pages before this one.
 */

export type Search = Readonly<Record<string, string | string[] | undefined>>;

/** The first value of a parameter without control characters; an empty field of a form counts as none. */
export function parameterOf(search: Search, name: string): string | undefined {
  const value = search[name];
  const first = (Array.isArray(value) ? value[0] : value)?.replace(/\p{Cc}/gu, "");
  return first === undefined || first.trim() === "" ? undefined : first;
}

/** The address of the page that is asked for, with all that was asked of it. */
export function sameAddress(path: string, search: Search): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(search))
    for (const each of Array.isArray(value) ? value : [value]) if (each) query.append(name, each);
  const text = query.toString();
  return text === "" ? path : `${path}?${text}`;
}

/** Deeper ways back start from the first page again. */
const longestTrail = 40;

const trailOf = (search: Search): string[] => {
  const { before } = search;
  return before === undefined ? [] : Array.isArray(before) ? before : [before];
};

function addressOf(path: string, search: Search, after: string | null, trail: readonly string[]): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(search)) {
    if (name === "after" || name === "before" || value === undefined) continue;
    for (const each of Array.isArray(value) ? value : [value]) if (each !== "") query.append(name, each);
  }
  if (after !== null) query.set("after", after);
  for (const key of trail) query.append("before", key);
  const text = query.toString();
  return text === "" ? path : `${path}?${text}`;
}

/**
 * @param search the parameters of this page: `after` is its key, `before` the keys of the pages before
 * @param next the key of the next page, or null on the last one
 */
export function pageLinks(
  path: string,
  search: Search,
  next: string | null,
): { previous: string | null; next: string | null } {
  const here = parameterOf(search, "after") ?? null;
  const trail = trailOf(search);
  const last = trail.at(-1);
  return {
    previous:
      here === null
        ? null
        : addressOf(path, search, last === undefined || last === "" ? null : last, trail.slice(0, -1)),
    next: next === null ? null : addressOf(path, search, next, [...trail, here ?? ""].slice(-longestTrail)),
  };
}
