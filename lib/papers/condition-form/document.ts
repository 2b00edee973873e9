/**
 * A condition form as a document: the occasion to tick, each specimen with the marks of
 * its last check and a box for each answer, room for new marks, and both signatures at
 * the end. What belongs to one specimen stays on one page as long as a page holds it.
 */
import { occasions } from "#lib/condition/schema.ts";
import type { Block, PaperDocument, SignaturePlace } from "#lib/papers/blocks.ts";
import type { ConditionFormContent, Mark } from "#lib/papers/condition-form/content.ts";
import { formAnswers } from "#lib/papers/condition-words.ts";
import type { Issued } from "#lib/papers/paper-content.ts";
import { tickBox } from "#lib/papers/tick-box.ts";
import { issuedDocument } from "#lib/papers/travel-blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

type FormSpecimen = ConditionFormContent["specimens"][number];

const blank = (label: string) => ({ label, value: null });

function beforeText({ extentMm, extentPercent, severity, activity }: Mark, words: PaperWords): string {
  const said = words.condition;
  return [
    ...(extentMm === null ? [] : [`${words.write.number(extentMm)}\u00A0mm`]),
    ...(extentPercent === null
      ? []
      : [fill(said.percentOfArea, { percent: words.write.number(extentPercent) })]),
    say(said.severities, severity),
    say(said.activities, activity),
  ].join(", ");
}

function marksTable(marks: readonly Mark[], words: PaperWords): Block {
  const said = words.condition;
  return {
    kind: "table",
    columns: [
      { header: said.mark, align: "right", width: "fit" },
      { header: said.found, align: "left", width: { share: 3 } },
      { header: said.before, align: "left", width: { share: 2 } },
      ...formAnswers.map((answer) => ({
        header: said.answers[answer],
        align: "left" as const,
        width: "fit" as const,
      })),
      { header: said.now, align: "left", width: { share: 1 } },
    ],
    rows: marks.map((mark, index) => [
      String(index + 1),
      {
        paragraphs: [
          [{ text: say(said.terms, mark.term), emphasis: "strong" }],
          mark.place,
          ...(mark.note === "" ? [] : [[{ text: mark.note, emphasis: "small" as const }]]),
        ],
      },
      beforeText(mark, words),
      ...formAnswers.map((answer) => ({
        figure: tickBox(fill(said.box, { mark: index + 1, answer: said.answers[answer] })),
      })),
      "",
    ]),
  };
}

/** Lines to write new marks on. */
const linesForNew = 2;

function specimenBlocks(specimen: FormSpecimen, number: number, of: number, words: PaperWords): Block {
  const said = words.condition;
  const { accessionNumber, title, components, check, crate } = specimen;
  const counted = components.map(({ name, count }) => (count === 1 ? name : `${count} × ${name}`));
  const lines = [
    ...(crate === "" ? [] : [fill(said.crate, { crate })]),
    ...(counted.length === 0 ? [] : [fill(words.schedule.components, { components: counted.join("; ") })]),
    check === null
      ? said.noCheck
      : fill(said.lastCheck, {
          occasion: say(said.occasions, check.occasion),
          day: words.write.day(check.checkedOn),
          name: check.checkedBy,
          grade: say(words.schedule.grades, check.grade),
        }),
    ...(check?.marks.length === 0 ? [said.noMarks] : []),
  ];
  const newFields = [said.newWhat, said.newWhere, said.newSize, said.newSeverity].map(blank);
  return {
    kind: "together",
    blocks: [
      {
        kind: "subheading",
        text: `${fill(said.specimen, { accessionNumber, number, of })}${words.write.colon}${title}`,
      },
      { kind: "note", text: lines.join(" ") },
      ...(check === null || check.marks.length === 0 ? [] : [marksTable(check.marks, words)]),
      {
        kind: "fields",
        perRow: 4,
        fields: Array.from({ length: linesForNew }, () => newFields).flat(),
      },
      {
        kind: "fields",
        perRow: 3,
        fields: [said.lookedAt, said.lookedAtOn, said.pictures].map(blank),
      },
    ],
  };
}

function occasionBlocks(words: PaperWords): Block[] {
  const said = words.condition;
  return [
    { kind: "heading", mark: "A", text: said.occasion },
    { kind: "paragraph", text: said.occasionLead, isLead: true },
    {
      kind: "figures",
      cellPt: 66,
      figures: occasions.map((occasion) => ({
        figure: tickBox(said.occasions[occasion], 12),
        caption: said.occasions[occasion],
      })),
    },
    {
      kind: "fields",
      perRow: 3,
      fields: [said.place, said.day, said.light, said.temperature, said.humidity].map(blank),
    },
  ];
}

export function conditionFormDocument(
  issued: Issued<ConditionFormContent>,
  words: PaperWords,
): PaperDocument {
  const { specimens, lender, borrower } = issued.content;
  const said = words.condition;
  const place = (party: string, organisation: string): SignaturePlace => ({
    party,
    organisation,
    signedBy: null,
    lineLabel: said.signature,
    facts: [blank(said.personName), blank(words.signatures.role), blank(said.time)],
  });
  const blocks: Block[] = [
    ...occasionBlocks(words),
    { kind: "heading", mark: "B", text: said.howTo },
    {
      kind: "definitions",
      rows: said.howToRows.map(({ term, text }) => ({ term, paragraphs: [text] })),
    },
    { kind: "heading", mark: "C", text: said.specimens },
    ...specimens.map((specimen, index) => specimenBlocks(specimen, index + 1, specimens.length, words)),
    {
      kind: "together",
      blocks: [
        { kind: "heading", mark: "D", text: said.signatures },
        { kind: "paragraph", text: said.signed },
        {
          kind: "signatures",
          places: [
            place(said.forLender, lender.organisation),
            place(said.forBorrower, borrower.organisation),
          ],
        },
      ],
    },
  ];
  return issuedDocument(issued, { name: said.name, lines: [said.about], blocks }, words);
}
