/**
 * How far a typed text is from a name, counted in slips of the hand: a letter too
 * many, one too few, a wrong one, two changed about. A longer word forgives more
 * slips; a very short one none. The measure is symmetric and never negative.
 *
 * @source the optimal string alignment form of the Damerau–Levenshtein distance, from memory
 */

/**
 * Slips from a word to each beginning of another, the empty one first.
 * @param most gives up, with null, as soon as every beginning is further away than this
 */
function slipsToBeginnings(one: string, other: string, most: number): number[] | null {
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    let nearest = row;
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      let least = Math.min(
        (above[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped =
        row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (swapped) least = Math.min(least, (before[column - 2] ?? 0) + 1);
      current.push(least);
      if (least < nearest) nearest = least;
    }
    if (nearest > most) return null;
    before = above;
    above = current;
  }
  return above;
}

/** Slips between two words. */
export function typingDistance(one: string, other: string): number {
  return slipsToBeginnings(one, other, Number.POSITIVE_INFINITY)?.[other.length] ?? 0;
}

/** Slips that a typed word of this many letters is forgiven. */
export function forgivenSlips(letters: number): number {
  if (letters < 4) return 0;
  if (letters < 7) return 1;
  return letters < 11 ? 2 : 3;
}

/**
 * Slips from a typed word to a whole word or to its beginning, whichever is nearer; a beginning counts half a slip.
 * @param most beyond so many slips the answer is that it is too far, infinity
 */
export function slipsToWord(typed: string, word: string, most = Number.POSITIVE_INFINITY): number {
  const near = word.slice(0, typed.length + Math.min(most, word.length));
  const slips = slipsToBeginnings(typed, near, most);
  if (slips === null) return Number.POSITIVE_INFINITY;
  const whole = near === word ? (slips[word.length] ?? 0) : Number.POSITIVE_INFINITY;
  const begun = word.length > typed.length ? (slips[typed.length] ?? 0) + 0.5 : whole;
  return Math.min(whole, begun);
}

/**
 * Slips from a typed text to a name of as many words, each word to the nearest whole one.
 * @returns null where the name has more or fewer words, or one is too far from all of the name
 */
export function slipsToWholeName(typedWords: readonly string[], nameWords: readonly string[]): number | null {
  if (typedWords.length === 0 || typedWords.length !== nameWords.length) return null;
  let sum = 0;
  for (const typed of typedWords) {
    const nearest = Math.min(...nameWords.map((word) => typingDistance(typed, word)));
    if (!(nearest <= forgivenSlips(typed.length))) return null;
    sum += nearest;
  }
  return sum;
}

/**
 * Slips from a typed text to a name, both as folded words.
 * @returns the sum over the typed words, or null when one of them is too far from every word of the name
 */
export function slipsToName(typedWords: readonly string[], nameWords: readonly string[]): number | null {
  let sum = 0;
  for (const typed of typedWords) {
    const nearest = Math.min(...nameWords.map((word) => slipsToWord(typed, word)));
    if (!(nearest <= forgivenSlips(typed.length))) return null;
    sum += nearest;
  }
  return typedWords.length === 0 ? null : sum;
}
