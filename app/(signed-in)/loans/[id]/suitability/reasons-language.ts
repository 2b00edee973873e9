/**
 * The language in which the reasons of suitability are told: the one that is asked
 * for, else the first that the borrower and the program share where the reader is
 * of its house, else English.
 */
import { type PaperLanguage, paperLanguages, paperLanguagesOf } from "#lib/papers/languages.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export function reasonsLanguage(
  asked: string | undefined,
  { institutionId }: Pick<Viewer, "institutionId">,
  borrower: { id: string; languages: readonly string[] },
): PaperLanguage {
  const chosen = paperLanguages.find((language) => language === asked);
  const [own] = institutionId === borrower.id ? paperLanguagesOf(borrower.languages.slice(0, 1)) : [];
  return chosen ?? own ?? "en";
}
