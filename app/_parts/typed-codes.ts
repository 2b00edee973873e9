/** Short codes typed as one line, such as countries or languages: with commas, semicolons or spaces between. */

/** @returns the codes in the order typed, each once */
export function readCodes(text: string): string[] {
  return [...new Set(text.split(/[\s,;]+/).filter((code) => code !== ""))];
}

export function writeCodes(codes: readonly string[]): string {
  return codes.join(", ");
}
