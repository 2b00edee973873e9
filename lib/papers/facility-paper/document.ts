/**
 * One version of a venue's facility report as a document: every question with its
 * answer, what is not known said as such, the way in and the licences. A version is
 * never changed, so its content and fingerprint follow from it alone, whatever the
 * language; what the venue answered in words of its own stays as it was typed.
 */
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";
import { type Answer, answerOf } from "#lib/people/facility-changes.ts";
import { facilityQuestions, facilitySections, type Question } from "#lib/people/facility-questions.ts";
import type { FacilityAnswers } from "#lib/people/facility-report.ts";
import type { DateText } from "#lib/platform/dates.ts";

export type FacilityPaper = {
  institution: string;
  venue: string;
  address: string;
  countryCode: string;
  version: number;
  reportedOn: DateText;
  validUntil: DateText;
  reportedBy: string;
  answers: FacilityAnswers;
};

function answerText(question: Question | undefined, answer: Answer, words: PaperWords): string {
  const { facility, annexes } = words;
  if (answer === null) return facility.notKnown;
  if (typeof answer === "boolean") return answer ? annexes.yes : annexes.no;
  if (typeof answer === "number") {
    if (question?.kind === "share") return words.write.number(Math.round(answer * 10_000) / 100);
    // years are no quantities
    return question?.kind === "number" && question.least === 1000
      ? String(answer)
      : words.write.number(answer);
  }
  return question?.kind === "choice" ? say(facility.choices, answer) : answer;
}

function sectionBlocks(answers: FacilityAnswers, words: PaperWords): Block[] {
  const { facility } = words;
  return facilitySections.flatMap((section, index): Block[] => {
    const questions = Object.entries(facilityQuestions[section] as Readonly<Record<string, Question>>);
    const given = questions.map(([name]) => answerOf(answers, section, name));
    return [
      { kind: "heading", mark: String(index + 1), text: say(facility.sections, section) },
      {
        kind: "note",
        text: fill(facility.answered, {
          answered: given.filter((answer) => answer !== null).length,
          asked: given.length,
        }),
      },
      {
        kind: "definitions",
        rows: questions.map(([name, question], place) => ({
          term: say(facility.questions[section], name),
          paragraphs: [answerText(question, given[place] ?? null, words)],
        })),
      },
    ];
  });
}

function passagesBlock({ passages }: FacilityAnswers, words: PaperWords): Block {
  const { facility } = words;
  const number = (value: number | null) =>
    value === null ? words.annexes.nothing : words.write.number(value);
  if (passages.length === 0) return { kind: "paragraph", text: facility.none };
  const { where, kind, width, height, depth, load } = facility.passage;
  return {
    kind: "table",
    columns: [
      { header: where, align: "left", width: { share: 1 } },
      { header: kind, align: "left", width: "fit" },
      ...[width, height, depth, load].map((header) => ({
        header,
        align: "right" as const,
        width: "fit" as const,
      })),
    ],
    rows: passages.map((passage) => [
      passage.name,
      say(facility.passageKinds, passage.kind),
      passage.secondWidthMm === null
        ? number(passage.widthMm)
        : fill(facility.thenWidth, {
            first: number(passage.widthMm),
            second: number(passage.secondWidthMm),
          }),
      number(passage.heightMm),
      number(passage.depthMm),
      number(passage.loadKg),
    ]),
  };
}

function licencesBlock({ licences }: FacilityAnswers, words: PaperWords): Block {
  const { facility, annexes } = words;
  if (licences.length === 0) return { kind: "paragraph", text: facility.none };
  const { kind, number, authority, person, until } = facility.licence;
  return {
    kind: "table",
    columns: [kind, number, authority, person, until].map((header) => ({
      header,
      align: "left",
      width: { share: 1 },
    })),
    rows: licences.map((licence) => [
      say(annexes.evidence.kinds, licence.kind),
      [{ text: licence.number, emphasis: "code" }],
      licence.authority,
      licence.responsiblePerson === "" ? annexes.nothing : licence.responsiblePerson,
      licence.validUntil === null ? annexes.nothing : words.write.day(licence.validUntil),
    ]),
  };
}

export function facilityPaperDocument(
  paper: FacilityPaper,
  sha256: string,
  words: PaperWords,
): PaperDocument {
  const { answers, version } = paper;
  const { facility } = words;
  const next = facilitySections.length;
  return {
    decimalMark: words.write.decimalMark,
    head: {
      left: `${facility.name}, ${paper.venue}`,
      right: fill(words.agreement.version, { version }),
    },
    foot: {
      left: [{ text: `${facility.hash} ` }, { text: sha256, emphasis: "code" }],
      pageOf: words.agreement.pageOf,
    },
    blocks: [
      {
        kind: "title",
        overline: paper.institution,
        title: `${facility.name}${words.write.colon}${paper.venue}`,
        lines: [
          [paper.address, words.write.country(paper.countryCode)].filter(Boolean).join(", "),
          fill(facility.reported, {
            version,
            day: words.write.day(paper.reportedOn),
            name: paper.reportedBy,
            until: words.write.day(paper.validUntil),
          }),
          facility.confidential,
        ],
      },
      ...sectionBlocks(answers, words),
      { kind: "heading", mark: String(next + 1), text: facility.wayIn },
      passagesBlock(answers, words),
      { kind: "heading", mark: String(next + 2), text: facility.licences },
      licencesBlock(answers, words),
    ],
  };
}
