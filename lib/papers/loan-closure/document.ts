/**
 * The closure of a loan as a document: the parties, the days, every specimen with its
 * way back and its two checks, what this settles and what it does not, and the
 * lender's signature.
 */
import { checkInVerdicts } from "#lib/loans/inputs.ts";
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import type { LoanClosureContent } from "#lib/papers/loan-closure/content.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { endLines, issuedDocument } from "#lib/papers/travel-blocks.ts";
import { capital, fill, type PaperWords, say } from "#lib/papers/words.ts";

type ClosedSpecimen = LoanClosureContent["specimens"][number];

function checkedText(when: string, checked: ClosedSpecimen["out"], words: PaperWords): string {
  const said = words.closure;
  return checked === null
    ? fill(said.notChecked, { when })
    : fill(said.checked, {
        when,
        day: words.write.day(checked.checkedOn),
        grade: say(words.schedule.grades, checked.grade),
      });
}

function specimensTable({ specimens }: LoanClosureContent, words: PaperWords): Block {
  const said = words.closure;
  return {
    kind: "table",
    columns: [
      { header: said.number, align: "right", width: "fit" },
      { header: said.accessionNumber, align: "left", width: "fit" },
      { header: said.specimen, align: "left", width: { share: 3 } },
      { header: said.backOn, align: "left", width: "fit" },
      { header: said.checks, align: "left", width: { share: 3 } },
      { header: said.verdict, align: "left", width: { share: 2 } },
    ],
    rows: specimens.map((one, index) => [
      [{ text: String(index + 1), emphasis: "quiet" }],
      [{ text: one.accessionNumber, emphasis: "code" }],
      one.title,
      one.backOn === null ? said.notKnown : words.write.day(one.backOn),
      { paragraphs: [checkedText(said.out, one.out, words), checkedText(said.home, one.home, words)] },
      {
        paragraphs: [
          one.verdict === null ? said.notKnown : say(said.verdicts, one.verdict),
          ...(one.remark === "" ? [] : [[{ text: one.remark, emphasis: "small" as const }]]),
        ],
      },
    ]),
  };
}

/** How many came to what, in the order of gravity. */
function countedTexts({ specimens }: LoanClosureContent, words: PaperWords): string[] {
  const said = words.closure;
  return checkInVerdicts.flatMap((verdict) => {
    const count = specimens.filter((one) => one.verdict === verdict).length;
    return count === 0 ? [] : [fill(said.counted, { verdict: capital(said.verdicts[verdict]), count })];
  });
}

export function loanClosureDocument(issued: Issued<LoanClosureContent>, words: PaperWords): PaperDocument {
  const { content } = issued;
  const { lender, borrower, specimens, startsOn, returnBy, closedOn } = content;
  const said = words.closure;
  const { day } = words.write;
  const blocks: Block[] = [
    { kind: "heading", mark: "A", text: said.parties },
    {
      kind: "columns",
      columns: [
        { heading: said.lender, lines: endLines(lender, words) },
        { heading: said.borrower, lines: endLines(borrower, words) },
      ],
    },
    { kind: "heading", mark: "B", text: said.loan },
    {
      kind: "definitions",
      rows: [
        { term: said.days, paragraphs: [fill(said.daysText, { from: day(startsOn), to: day(returnBy) })] },
        { term: said.closedOn, paragraphs: [day(closedOn)] },
        {
          term: said.returned,
          paragraphs: [fill(said.returnedText, { count: specimens.length }), ...countedTexts(content, words)],
        },
      ],
    },
    { kind: "heading", mark: "C", text: said.specimens },
    specimensTable(content, words),
    { kind: "heading", mark: "D", text: said.settles },
    {
      kind: "definitions",
      rows: said.settlesRows.map(({ term, text }) => ({ term, paragraphs: [text] })),
    },
    {
      kind: "together",
      blocks: [
        { kind: "heading", mark: "E", text: said.signatures },
        {
          kind: "signatures",
          places: [
            {
              party: said.party,
              organisation: lender.organisation,
              signedBy: null,
              lineLabel: said.signature,
              facts: [
                { label: said.personName, value: null },
                { label: words.signatures.role, value: null },
                { label: said.time, value: null },
              ],
            },
          ],
        },
      ],
    },
  ];
  return issuedDocument(issued, { name: said.name, lines: [said.about], blocks }, words);
}
