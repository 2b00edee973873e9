/**
 * A donor's pseudonym: five characters drawn by the caller's dice from an
 * alphabet without look-alikes, so that it can be read out and written by hand.
 * It tells neither order nor time.
 */

/** No 0 and O, no 1, I and L, no U beside V. */
export const donorCodeAlphabet = "23456789ABCDEFGHJKMNPQRSTVWXYZ";
const length = 5;

/** @param draw gives a whole number from 0 up to, not including, its argument */
export function donorCode(draw: (below: number) => number): string {
  const characters = Array.from({ length }, () => donorCodeAlphabet.charAt(draw(donorCodeAlphabet.length)));
  return `D-${characters.join("")}`;
}
