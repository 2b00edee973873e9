/**
 * Figures of one column set so that their decimals stand under each other: each is
 * told what to keep open behind it. Works on the text as it is read, unit included,
 * so that what is rounded for reading is not rounded again.
 */
export type AlignedFigure = { text: string; open: string };

/** Sign and digits with thin or narrow spaces between thousands, then the fraction, then the rest. */
const figurePattern = /^([−-]?[\d \u2009\u202f]*\d)(\.\d+)?/u;

/** @returns for each figure its text and the characters to keep open; null where there is no figure */
export function alignOnDecimal(figures: readonly (string | null)[]): (AlignedFigure | null)[] {
  const fractions = figures.map((figure) => figurePattern.exec(figure ?? "")?.[2] ?? "");
  const longest = Math.max(0, ...fractions.map((fraction) => fraction.length));
  return figures.map((figure, index) => {
    if (figure === null || figure === "") return null;
    const fraction = fractions[index] ?? "";
    const missing = longest - fraction.length;
    const open =
      missing === 0 ? "" : `${fraction === "" ? "." : ""}${"0".repeat(missing - (fraction === "" ? 1 : 0))}`;
    return { text: figure, open };
  });
}
