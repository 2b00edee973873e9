/**
 * Words of a paper in one language, or in two beside each other where its terms have
 * two: the language that rules comes first. Words that are the same stand once.
 */
import type { PaperWords } from "#lib/papers/words.ts";

export type SaysInBoth = (pick: (words: PaperWords) => string) => string;

/** @param between what parts them: a stroke in a heading, a new line above a narrow column */
export function inBoth(words: PaperWords, second: PaperWords | null, between = " / "): SaysInBoth {
  return (pick) => {
    const [first, other] = [pick(words), second === null ? "" : pick(second)];
    return second === null || first === other ? first : `${first}${between}${other}`;
  };
}
