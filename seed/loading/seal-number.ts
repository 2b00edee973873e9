/** Seals as they come off the roll: a letter for the way, then running numbers. */
export function sealNumber(loanIndex: number, way: "A" | "B", crateIndex: number): string {
  return `${way}${String(40_100 + loanIndex * 20 + crateIndex)}`;
}
