/**
 * What no painted paper may do, judged by places in the file: reach over a margin or
 * into the foot, stand on something else, be struck through by a line, leave a heading
 * alone, be wider than its cell, or keep from a reader what it is.
 */
import { type PaperSize, type Sheet, sheets } from "#lib/papers/sheet.ts";
import type {
  OutlineItem,
  PaintedFigure,
  PaintedPage,
  PaintedPaper,
  PaintedRun,
} from "#tests/lib/papers/painted-paper.ts";

/** Rounding of widths that are written in thousandths of the type's height. */
const SLACK_PT = 0.6;
/** Half of what the columns of a table keep between them. */
const LEAST_GAP_PT = 4.5;
/** The rule below a header stands nearer to it, that below a row to write in not. */
const BLANK_ROW_PT = 12;
/** Letters without their tails. */
const BODY_OF_LETTER = 0.7;

const isHeading = ({ place }: PaintedRun) => /^H[1-6]$/.test(place?.roles.at(-1) ?? "");
const isHeader = ({ place }: PaintedRun) => place?.roles.includes("TH") ?? false;

const isRunning = ({ baselinePt }: PaintedRun, sheet: Sheet) =>
  baselinePt <= sheet.headRulePt || baselinePt >= sheet.footRulePt;
const bodyOf = ({ runs }: PaintedPage, sheet: Sheet) => runs.filter((run) => !isRunning(run, sheet));

function beyondMargins(page: PaintedPage, sheet: Sheet): string[] {
  const { leftPt, rightPt, topPt, bottomPt } = sheet;
  const across = (left: number, right: number) => left < leftPt - SLACK_PT || right > rightPt + SLACK_PT;
  return [
    ...page.runs.filter((run) => across(run.leftPt, run.rightPt)).map(({ text }) => `margin: ${text}`),
    ...bodyOf(page, sheet)
      .filter(
        ({ baselinePt, sizePt }) =>
          baselinePt - sizePt < topPt - SLACK_PT - sizePt * 0.4 || baselinePt > bottomPt,
      )
      .map(({ text }) => `outside of head and foot: ${text}`),
    ...page.runs
      .filter((run) => isRunning(run, sheet))
      .filter(
        ({ baselinePt }) =>
          Math.abs(baselinePt - sheet.headBaselinePt) > SLACK_PT &&
          Math.abs(baselinePt - sheet.footBaselinePt) > SLACK_PT,
      )
      .map(({ text }) => `in the head or foot: ${text}`),
    ...page.figures
      .filter(
        ({ box }) =>
          across(box.leftPt, box.rightPt) ||
          box.topPt < topPt - SLACK_PT ||
          box.bottomPt > bottomPt + SLACK_PT,
      )
      .map(({ alternative }) => `figure outside: ${alternative}`),
    ...page.lines
      .filter(
        (line) =>
          across(line.leftPt, line.rightPt) ||
          (line.bottomPt > bottomPt + 2 && Math.abs(line.topPt - sheet.footRulePt) > 1) ||
          (line.topPt < topPt - 2 && Math.abs(line.topPt - sheet.headRulePt) > 1),
      )
      .map(({ topPt: y }) => `line outside at ${y.toFixed(1)}`),
  ];
}

const meet = (first: { leftPt: number; rightPt: number }, second: { leftPt: number; rightPt: number }) =>
  first.leftPt < second.rightPt - SLACK_PT && second.leftPt < first.rightPt - SLACK_PT;

function collisions({ runs, figures, lines }: PaintedPage): string[] {
  const downwards = [...runs].sort((first, second) => first.baselinePt - second.baselinePt);
  const ofRuns = downwards.flatMap((first, index) => {
    const faults: string[] = [];
    for (const second of downwards.slice(index + 1)) {
      const least = Math.min(first.sizePt, second.sizePt) * 0.9;
      if (second.baselinePt - first.baselinePt >= Math.max(first.sizePt, second.sizePt)) break;
      if (second.baselinePt - first.baselinePt < least && meet(first, second))
        faults.push(`on each other: ${first.text} | ${second.text}`);
    }
    return faults;
  });
  const covers = ({ box }: PaintedFigure, run: PaintedRun) =>
    meet(box, run) &&
    run.baselinePt - run.sizePt * BODY_OF_LETTER < box.bottomPt - SLACK_PT &&
    run.baselinePt > box.topPt + SLACK_PT;
  const ofFigures = figures.flatMap((figure, index) => [
    ...runs.filter((run) => covers(figure, run)).map(({ text }) => `figure on words: ${text}`),
    ...figures
      .slice(index + 1)
      .filter(
        ({ box }) =>
          meet(box, figure.box) &&
          box.topPt < figure.box.bottomPt - SLACK_PT &&
          figure.box.topPt < box.bottomPt - SLACK_PT,
      )
      .map(({ alternative }) => `figure on figure: ${figure.alternative} | ${alternative}`),
  ]);
  const ofLines = lines.flatMap((line) =>
    runs
      .filter(
        (run) =>
          meet(line, run) &&
          line.bottomPt > run.baselinePt - run.sizePt * BODY_OF_LETTER + SLACK_PT &&
          line.topPt < run.baselinePt - SLACK_PT,
      )
      .map(({ text }) => `struck through: ${text}`),
  );
  return [...ofRuns, ...ofFigures, ...ofLines];
}

/** A heading or a header with nothing of its own below it on the page; rows that are still to be written are lines. */
function orphans(page: PaintedPage, sheet: Sheet): string[] {
  const said = bodyOf(page, sheet).filter(({ place }) => place !== null);
  const figures = Math.max(0, ...page.figures.map(({ box }) => box.bottomPt));
  const linesToWriteOn = page.lines
    .filter(({ topPt }) => topPt < sheet.footRulePt - 1)
    .map(({ topPt }) => topPt - BLANK_ROW_PT);
  const lowest = Math.max(figures, ...linesToWriteOn, ...said.map(({ baselinePt }) => baselinePt));
  const last = said.filter(({ baselinePt }) => baselinePt === lowest);
  const lastRead = said.at(-1);
  const alone = last.length > 0 && last.every((run) => isHeading(run) || isHeader(run)) ? last : [];
  return [
    ...alone,
    ...(lastRead !== undefined && isHeading(lastRead) && figures < lastRead.baselinePt ? [lastRead] : []),
  ].map(({ text }) => `alone at the foot: ${text}`);
}

/** What stands in a cell beside what stands in the next column, over all rows of the table on the page. */
function widerThanCell({ runs, figures }: PaintedPage): string[] {
  type Extent = { leftPt: number; rightPt: number; widest: string };
  const tables = new Map<number, Map<number, Extent>>();
  const put = (cell: { table: number; cell: number }, leftPt: number, rightPt: number, said: string) => {
    const columns = tables.get(cell.table) ?? new Map<number, Extent>();
    tables.set(cell.table, columns);
    const known = columns.get(cell.cell);
    columns.set(cell.cell, {
      leftPt: Math.min(known?.leftPt ?? leftPt, leftPt),
      rightPt: Math.max(known?.rightPt ?? rightPt, rightPt),
      widest: known === undefined || rightPt > known.rightPt ? said : known.widest,
    });
  };
  for (const { place, leftPt, rightPt, text } of runs)
    if (place?.cell) put(place.cell, leftPt, rightPt, text);
  for (const { place, box, alternative } of figures)
    if (place.cell) put(place.cell, box.leftPt, box.rightPt, alternative);
  return [...tables.values()].flatMap((columns) => {
    const inOrder = [...columns].sort(([first], [second]) => first - second).map(([, extent]) => extent);
    return inOrder.flatMap((extent, index) => {
      const next = inOrder[index + 1];
      return next !== undefined && extent.rightPt > next.leftPt - LEAST_GAP_PT
        ? [`wider than its cell: ${extent.widest}`]
        : [];
    });
  });
}

const untagged = ({ runs }: PaintedPage) =>
  runs.filter(({ isMarked }) => !isMarked).map(({ text }) => `outside of any mark: ${text}`);

/** Everything that is wrong with the places on a paper's pages. */
export function faultsOfPages({ pages }: PaintedPaper, size: PaperSize): string[] {
  const sheet = sheets[size];
  return pages.flatMap((page) => {
    const isEmpty = bodyOf(page, sheet).length === 0 && page.figures.length === 0;
    return [
      ...(page.widthPt === sheet.widthPt && page.heightPt === sheet.heightPt ? [] : ["another sheet"]),
      ...beyondMargins(page, sheet),
      ...collisions(page),
      ...orphans(page, sheet),
      ...widerThanCell(page),
      ...untagged(page),
      ...(isEmpty ? ["empty"] : []),
    ].map((fault) => `page ${page.number}: ${fault}`);
  });
}

const letters = (text: string) => text.normalize("NFKC").replace(/\s/g, "");
const flat = (items: readonly OutlineItem[]): OutlineItem[] =>
  items.flatMap((item) => [item, ...flat(item.items)]);

export type Said = { title: string; language: string; pageOf: string };

/** Everything that is wrong with what a file says of itself, of its parts and of its pages. */
export function faultsOfFile(paper: PaintedPaper, size: PaperSize, said: Said): string[] {
  const sheet = sheets[size];
  const { pages, outline } = paper;
  const facts = [
    ...(paper.title.includes(said.title) ? [] : [`title: ${paper.title}`]),
    ...(paper.language === said.language ? [] : [`language: ${paper.language}`]),
    ...(paper.isTagged ? [] : ["not tagged"]),
    ...(paper.showsTitle ? [] : ["the window shows the file's name"]),
    ...paper.fontsNotEmbedded.map((name) => `not embedded: ${name}`),
  ];
  const numbers = pages.flatMap((page) => {
    const foot = letters(
      page.runs
        .filter(({ baselinePt }) => baselinePt >= sheet.footRulePt)
        .map(({ text }) => text)
        .join(""),
    );
    const pageOf = said.pageOf.replace("{page}", `${page.number}`).replace("{pages}", `${pages.length}`);
    return foot.endsWith(letters(pageOf)) ? [] : [`page ${page.number} says ${foot}`];
  });
  const headings = pages.flatMap(({ number, runs }) =>
    runs.flatMap((run) =>
      isHeading(run) && run.place?.roles.at(-1) !== "H1" ? [{ number, text: run.text }] : [],
    ),
  );
  const entries = flat(outline);
  const inOutline = letters(entries.map(({ title }) => title).join(""));
  const onPages = letters(headings.map(({ text }) => text).join(""));
  const lost = entries.filter(
    ({ title, page }) =>
      !headings.some(({ number, text }) => number === page && letters(title).startsWith(letters(text))),
  );
  const titles = pages.flatMap(({ runs }) => runs.filter(({ place }) => place?.roles.at(-1) === "H1"));
  return [
    ...facts,
    ...numbers,
    ...(inOutline === onPages ? [] : ["the outline is not the list of headings"]),
    ...lost.map(({ title, page }) => `the outline leads to page ${page} for ${title}`),
    ...(titles.length > 0 ? [] : ["no title in the tree"]),
    ...pages
      .flatMap(({ figures }) => figures)
      .filter(({ alternative }) => alternative === "")
      .map(() => "a figure without words"),
  ];
}
