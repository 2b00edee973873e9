/**
 * How alike two texts are, from 0 to 1: the share of threes of letters that they
 * have in common, each word with two blanks before it and one behind. It is the
 * last resort for a text that meets no name, and good for suggestions only.
 *
 * @source the coefficient of Dice over trigrams, from memory
 */

function threesOf(text: string): Set<string> {
  const threes = new Set<string>();
  for (const word of text.split(" ")) {
    if (word === "") continue;
    const padded = `  ${word} `;
    for (let at = 0; at + 3 <= padded.length; at += 1) threes.add(padded.slice(at, at + 3));
  }
  return threes;
}

/** @returns 0 for nothing in common, 1 for the same threes; 0 where one text is empty */
export function likenessOf(one: string, other: string): number {
  const [first, second] = [threesOf(one), threesOf(other)];
  if (first.size === 0 || second.size === 0) return 0;
  let common = 0;
  for (const three of first) if (second.has(three)) common += 1;
  return (2 * common) / (first.size + second.size);
}
