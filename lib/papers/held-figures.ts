/**
 * Words as they were agreed, with what belongs together held together at the end of a
 * line: a telephone number, a day, a figure with its unit or its currency. Only spaces
 * change, into ones that do not break; what is printed reads back the same.
 */

const held = "\u00A0";

/** "1 March 2027", "15. März 2027", "1er mars 2027" */
const day = /(?<=^|\P{L})(\d{1,2}(?:\.|er)?) (\p{L}{3,}) (\d{4})(?!\d)/gu;
/** The groups of a telephone number with its country, or of thousands. */
const telephone = /\+\d[\d ]+\d/g;
const unit =
  /(?<=\d) (?=(?:%|‰|°C|µW|[A-Z]{3}(?!\p{L})|(?:lx|mm|cm|kg|ml|K|h)(?!\p{L})))|(?<=\d) (?=\d{3}(?!\d))/gu;

export function heldFigures(text: string): string {
  return text
    .replace(day, `$1${held}$2${held}$3`)
    .replace(telephone, (number) => number.replaceAll(" ", held))
    .replace(unit, held);
}
