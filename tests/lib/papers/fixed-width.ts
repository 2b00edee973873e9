/** Papers read as text: letters of one width, lines put together again, and every place checked against its column. */
import { type Text, toSpans } from "#lib/papers/blocks.ts";
import type { PaperPage } from "#lib/papers/layout.ts";
import type { Measure } from "#lib/papers/sheet.ts";
import type { Placed } from "#lib/papers/strips.ts";
import { printedText } from "#lib/papers/wrap.ts";

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });

/** Every letter is half as wide as the type is high. */
export const fixedWidth: Measure = (text, _face, sizePt) =>
  [...segmenter.segment(text)].length * sizePt * 0.5;

export type PlacedText = Extract<Placed, { kind: "text" }>;
export const textsOf = (items: readonly Placed[]): PlacedText[] =>
  items.filter((item): item is PlacedText => item.kind === "text");

/** The lines of a page from top to bottom, each from left to right. */
export function linesOf({ items }: Pick<PaperPage, "items">): string[] {
  const byBaseline = new Map<number, PlacedText[]>();
  for (const item of textsOf(items)) {
    const baseline = Math.round(item.yPt * 10);
    byBaseline.set(baseline, [...(byBaseline.get(baseline) ?? []), item]);
  }
  return [...byBaseline]
    .sort(([first], [second]) => first - second)
    .map(([, texts]) =>
      [...texts]
        .sort((first, second) => first.xPt - second.xPt)
        .map(({ text }) => text.trim())
        .join(" "),
    );
}

/** What stands between head and foot. */
export function bodyOf({ number, sheet, items }: PaperPage): PaperPage {
  return {
    number,
    sheet,
    items: items.filter(({ yPt }) => yPt > sheet.headRulePt + 1 && yPt < sheet.footRulePt - 1),
  };
}

const columnKey = ({ column }: PlacedText) => `${column.leftPt.toFixed(2)}-${column.rightPt.toFixed(2)}`;

/** The letters of each column, in order, without the spaces that lines may break at. */
export function lettersByColumn(pages: readonly PaperPage[]): string[] {
  const columns = new Map<string, string>();
  for (const page of pages)
    for (const item of textsOf(bodyOf(page).items))
      columns.set(columnKey(item), (columns.get(columnKey(item)) ?? "") + withoutSpaces(item.text));
  return [...columns.values()];
}

export const withoutSpaces = (text: string) => text.replace(/\s/g, "");

/** The words that have to be printed. */
export function wordsOf(text: Text): string[] {
  return toSpans(text)
    .map((span) => printedText(span.text))
    .join("")
    .split(/[\s\u0085]+/)
    .filter((word) => word !== "");
}

/** Texts that reach out of their column or off the text area, unless they are one letter. */
export function strays(pages: readonly PaperPage[]): string[] {
  const slackPt = 0.01;
  return pages.flatMap((page) =>
    textsOf(page.items)
      .filter(({ xPt, widthPt, column, text, yPt, style }) => {
        const { sheet } = page;
        const isOneLetter = [...segmenter.segment(text.trim())].length <= 1;
        const isInside =
          xPt >= column.leftPt - slackPt &&
          xPt + widthPt <= column.rightPt + slackPt &&
          column.leftPt >= sheet.leftPt - slackPt &&
          column.rightPt <= sheet.rightPt + slackPt &&
          yPt - style.sizePt > 0 &&
          yPt < sheet.heightPt - 30;
        return !isInside && !isOneLetter;
      })
      .map(({ text }) => `page ${page.number}: ${text}`),
  );
}

/** Pairs of texts on a page that stand on each other. */
export function collisions(page: PaperPage): string[] {
  const texts = textsOf(page.items);
  return texts.flatMap((first, index) =>
    texts
      .slice(index + 1)
      .filter(
        (second) =>
          first.xPt < second.xPt + second.widthPt - 0.01 &&
          second.xPt < first.xPt + first.widthPt - 0.01 &&
          Math.abs(first.yPt - second.yPt) < Math.min(first.style.sizePt, second.style.sizePt) * 0.9,
      )
      .map((second) => `${first.text} | ${second.text}`),
  );
}
