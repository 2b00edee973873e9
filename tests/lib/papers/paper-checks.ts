/** What no paper may do: be clipped, run into itself, or leave a heading without what it heads. */
import type { PaperDocument } from "#lib/papers/blocks.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut, type PaperPage } from "#lib/papers/layout.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import type { Placed } from "#lib/papers/strips.ts";
import { bodyOf, collisions, strays } from "#tests/lib/papers/fixed-width.ts";

type PlacedFigure = Extract<Placed, { kind: "figure" }>;
const isFigure = (item: Placed): item is PlacedFigure => item.kind === "figure";

/** Figures that reach out of their column or off the text area. */
export function clippedFigures(pages: readonly PaperPage[]): string[] {
  const slackPt = 0.01;
  return pages.flatMap(({ number, sheet, items }) =>
    items
      .filter(isFigure)
      .filter(
        ({ xPt, yPt, figure, column }) =>
          xPt < column.leftPt - slackPt ||
          xPt + figure.widthPt > column.rightPt + slackPt ||
          yPt < sheet.topPt - slackPt ||
          yPt + figure.heightPt > sheet.bottomPt + slackPt,
      )
      .map(({ figure }) => `page ${number}: ${figure.alternative}`),
  );
}

/** Figures that stand on each other or on words. */
export function coveredFigures(pages: readonly PaperPage[]): string[] {
  return pages.flatMap(({ items }) =>
    items.filter(isFigure).flatMap((first) =>
      items
        .filter((second) => second !== first && second.kind !== "rule")
        .filter((second) => {
          const [widthPt, topPt, bottomPt] = isFigure(second)
            ? [second.figure.widthPt, second.yPt, second.yPt + second.figure.heightPt]
            : second.kind === "text"
              ? [second.widthPt, second.yPt - second.style.sizePt * 0.7, second.yPt]
              : [0, 0, 0];
          return (
            second.xPt < first.xPt + first.figure.widthPt - 0.1 &&
            first.xPt < second.xPt + widthPt - 0.1 &&
            topPt < first.yPt + first.figure.heightPt - 0.1 &&
            first.yPt < bottomPt - 0.1
          );
        })
        .map((second) => `${first.figure.alternative} | ${second.kind}`),
    ),
  );
}

/** Headings and headers that are the last thing on their page. */
export function orphans(pages: readonly PaperPage[]): string[] {
  return pages.flatMap((page) => {
    const said = bodyOf(page).items.filter((item) => item.kind !== "rule" && item.node !== undefined);
    const lowest = Math.max(...said.map(({ yPt }) => yPt));
    const last = said.filter(({ yPt }) => yPt === lowest);
    const leading = last.every((item) => item.kind === "text" && /^(H[1-6]|TH)$/.test(item.node?.tag ?? ""));
    return leading ? last.map((item) => `page ${page.number}: ${item.kind === "text" ? item.text : ""}`) : [];
  });
}

/** Pages on which nothing stands between head and foot. */
export const emptyPages = (pages: readonly PaperPage[]): number[] =>
  pages.filter((page) => bodyOf(page).items.length === 0).map(({ number }) => number);

/** Everything that is wrong with a document on a sheet, printed with the fonts of the papers. */
export function faultsOf(document: PaperDocument, size: PaperSize): string[] {
  const pages = layOut(document, measureText, size);
  return [
    ...strays(pages),
    ...clippedFigures(pages),
    ...coveredFigures(pages),
    ...pages.flatMap(collisions),
    ...orphans(pages),
    ...emptyPages(pages).map((number) => `page ${number} is empty`),
  ];
}
