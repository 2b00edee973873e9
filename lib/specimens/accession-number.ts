/**
 * Accession numbers: whether one follows the centre's pattern, how numbers sort
 * the way a person reads them, and what is left of one when people write it with
 * other strokes and spaces. The pattern is a setting of the centre.
 */

/**
 * Whether the whole number follows the pattern.
 * @param pattern a regular expression as text, which the centre's settings have checked
 */
export function followsPattern(accessionNumber: string, pattern: string): boolean {
  return new RegExp(`^(?:${pattern})$`, "u").test(accessionNumber);
}

/** Sorts "A 2" before "A 10": runs of digits are filled up to one length. */
export function accessionSortKey(accessionNumber: string): string {
  return accessionNumber
    .toLowerCase()
    .replace(/\s+/g, " ")
    .replace(/\d+/g, (digits) => digits.replace(/^0+(?=\d)/, "").padStart(12, "0"));
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
