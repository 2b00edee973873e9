/**
 * The papers of a loan of 300 specimens with the longest German names, painted and read
 * again: what is wrong with their places, and which of their letters and numbers are not
 * in the file as often as the paper says them.
 */
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import { paintIssuedPaper } from "#lib/papers/issued-paper.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";
import { kindsOfPaper, type PaperKind } from "#lib/papers/paper-kinds.ts";
import { paperName } from "#lib/papers/paper-names.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { documentIn, frozen } from "#tests/lib/papers/issued-papers.ts";
import { faultsOfFile, faultsOfPages } from "#tests/lib/papers/painted-faults.ts";
import { lettersOf, readPainted, timesIn } from "#tests/lib/papers/painted-paper.ts";
import { someCase, someHandovers } from "#tests/lib/papers/paper-cases.ts";

const everySpecimen = 300;

const inOneCrate = someCase({ specimens: everySpecimen, crates: 1, long: true });
const plain = someCase({ specimens: everySpecimen, crates: 50, long: true });
const inManyCrates = { ...plain, handovers: someHandovers(plain) };

/** How often a paper says the number of each of its specimens. */
const timesSaid: Readonly<Record<PaperKind, number>> = {
  "packing list": 1,
  "crate label": 0,
  "dispatch note": 0,
  "outgoing receipt": 1,
  "incoming receipt": 1,
  quotation: 0,
  "cost statement": 0,
  "pro-forma invoice": 1,
  "carnet list": 1,
  "condition form": 1,
  "travel sheet": 1,
  "loan closure": 1,
};

/** The words of a document without those that only say in words what a figure shows. */
function withoutAlternatives(blocks: readonly Block[]): Block[] {
  return blocks.map((block) => {
    switch (block.kind) {
      case "together":
        return { ...block, blocks: withoutAlternatives(block.blocks) };
      case "figures":
        return {
          ...block,
          figures: block.figures.map((one) => ({ ...one, figure: { ...one.figure, alternative: "" } })),
        };
      case "beside":
        return { ...block, figure: { ...block.figure, alternative: "" } };
      default:
        return block;
    }
  });
}

/** Which letters one text has more often than the other, with the difference. */
function lettersLost(said: string, printed: string): string[] {
  const counts = new Map<string, number>();
  const readable = (text: string) => text.normalize("NFKC").replace(/\s/g, "");
  for (const letter of readable(said)) counts.set(letter, (counts.get(letter) ?? 0) + 1);
  for (const letter of readable(printed)) counts.set(letter, (counts.get(letter) ?? 0) - 1);
  return [...counts].filter(([, count]) => count > 0).map(([letter, count]) => `${count} × ${letter}`);
}

type Expected = {
  document: PaperDocument;
  /** Each stands in the paper so many times; null: as often as the document says it, and at least once. */
  numbers: readonly string[];
  times: number | null;
  title: string;
  language: string;
};

/** What is wrong with a painted paper, and what of it is not in the file. */
export async function judgePainted(bytes: Uint8Array, size: PaperSize, expected: Expected) {
  const { document, numbers, times, title, language } = expected;
  const painted = await readPainted(bytes);
  const letters = lettersOf(painted);
  const { pageOf } = document.foot;
  const said = textOfBlocks(withoutAlternatives(document.blocks));
  const saidLetters = said.replace(/\s/g, "");
  return {
    pages: painted.pages.length,
    letters,
    faults: [...faultsOfPages(painted, size), ...faultsOfFile(painted, size, { title, language, pageOf })],
    lost: [
      ...lettersLost(said, letters),
      ...numbers.flatMap((number) => {
        const found = timesIn(letters, number);
        const expected = times ?? Math.max(1, timesIn(saidLetters, number));
        return found === expected ? [] : [`${number} ${found} times and not ${expected}`];
      }),
    ],
  };
}

export async function longestPaper(kind: PaperKind, language: PaperLanguage, size: PaperSize) {
  const paperCase = kindsOfPaper[kind].about === "crate" ? inOneCrate : inManyCrates;
  const bytes = await paintIssuedPaper(frozen(kind, paperCase, 0, language), size, {
    lender: "Lending Centre",
    pictures: new Map(),
  });
  return await judgePainted(bytes, size, {
    document: documentIn(language, kind, paperCase),
    numbers: paperCase.specimens.map(({ accessionNumber }) => accessionNumber),
    times: timesSaid[kind],
    title: paperName(kind, paperWordsIn(language)),
    language,
  });
}
