/**
 * Where somebody goes after signing in: a place in this program, and not the door
 * again. Browsers read a backslash as a stroke and drop control characters.
 */
const ownPlace = /^\/(?!\/)[^\\\p{Cc}]*$/u;
const theDoor = /^\/sign-in(?:[/?#]|$)/;

export function wayBack(asked: unknown): string {
  return typeof asked === "string" && ownPlace.test(asked) && !theDoor.test(asked) ? asked : "/";
}
