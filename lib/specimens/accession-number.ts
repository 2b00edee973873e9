/**
 * Accession numbers: whether one follows the centre's pattern, and what is left of
 * one when people write it with other strokes and spaces. The pattern is a setting
 * of the centre.
 */

/**
 * Whether the whole number follows the pattern.
 * @param pattern a regular expression as text, which the centre's settings have checked
 */
export function followsPattern(accessionNumber: string, pattern: string): boolean {
  return new RegExp(`^(?:${pattern})$`, "u").test(accessionNumber);
}

/** Letters and digits only: "AN 2019.0042" and "an-2019/0042" are both "an20190042". */
export function compactNumber(text: string): string {
  return text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, "");
}

/** The accession number of one sheet: the stem of the series and the number, filled up with zeros. */
export function sheetAccessionNumber(stem: string, number: number, digits: number): string {
  return `${stem}${String(number).padStart(digits, "0")}`;
}
