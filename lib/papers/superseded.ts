/**
 * Which versions of a paper still hold. A newer version takes the place of an earlier
 * one when it says something else, or the same in the same language; the same said in
 * another language stands beside it. Pure: read from the frozen contents alone.
 */
import { canonicalText } from "#lib/platform/hash.ts";

export type FrozenVersion = { version: number; content: string };

/** What a content says besides when it was issued, by whom, as which version and in which language. */
function saidBy(frozen: string): string {
  const {
    version: _version,
    issuedAt: _at,
    issuedBy: _by,
    language: _language,
    ...said
  } = JSON.parse(frozen) as Record<string, unknown>;
  return canonicalText(said);
}

export function languageOf(frozen: string): string {
  const { language } = JSON.parse(frozen) as { language?: unknown };
  return typeof language === "string" ? language : "";
}

/** @param versions of one paper on one subject, in any order */
export function versionsThatHold<Row extends FrozenVersion>(versions: readonly Row[]): Row[] {
  const newestFirst = [...versions].sort((first, second) => second.version - first.version);
  const [newest] = newestFirst;
  if (newest === undefined) return [];
  const said = saidBy(newest.content);
  const differs = newestFirst.findIndex(({ content }) => saidBy(content) !== said);
  const alike = differs === -1 ? newestFirst : newestFirst.slice(0, differs);
  const languages = alike.map(({ content }) => languageOf(content));
  return alike.filter((_row, index) => languages.indexOf(languages[index] ?? "") === index);
}

/** Whether one of the versions that hold says what this content says, in its language. */
export function isSaidAlready(versions: readonly FrozenVersion[], content: string): boolean {
  return versionsThatHold(versions).some(
    (held) => languageOf(held.content) === languageOf(content) && saidBy(held.content) === saidBy(content),
  );
}
