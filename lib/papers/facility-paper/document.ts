/**
 * One version of a venue's facility report as a document: every question with its
 * answer, what is not known said as such, the way in and the licences. A version is
 * never changed, so its content and fingerprint follow from it alone; what questions
 * are called is given, because they are the words of the form.
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

type Words = Readonly<Record<string, string>>;

/** What the form calls its questions and answers. Words with {names} are filled by `fill`. */
export type FacilityLabels = {
  name: string;
  overline: string;
  reported: string;
  confidential: string;
  sections: Words;
  questions: Readonly<Record<string, Words>>;
  choices: Words;
  yes: string;
  no: string;
  notKnown: string;
  answered: string;
  wayIn: string;
  passage: readonly [where: string, kind: string, width: string, height: string, depth: string, load: string];
  passageKinds: Words;
  thenWidth: string;
  licences: string;
  licence: readonly [kind: string, number: string, authority: string, person: string, until: string];
  licenceKinds: Words;
  none: string;
  hash: string;
};

const dash = "–";

function answerText(
  question: Question | undefined,
  answer: Answer,
  labels: FacilityLabels,
  words: PaperWords,
): string {
  if (answer === null) return labels.notKnown;
  if (typeof answer === "boolean") return answer ? labels.yes : labels.no;
  if (typeof answer === "number") {
    if (question?.kind === "share") return words.write.number(Math.round(answer * 10_000) / 100);
    // years are no quantities
    return question?.kind === "number" && question.least === 1000
      ? String(answer)
      : words.write.number(answer);
  }
  return question?.kind === "choice" ? say(labels.choices, answer) : answer;
}

function sectionBlocks(answers: FacilityAnswers, labels: FacilityLabels, words: PaperWords): Block[] {
  return facilitySections.flatMap((section, index): Block[] => {
    const questions = Object.entries(facilityQuestions[section] as Readonly<Record<string, Question>>);
    const given = questions.map(([name]) => answerOf(answers, section, name));
    return [
      { kind: "heading", mark: String(index + 1), text: say(labels.sections, section) },
      {
        kind: "note",
        text: fill(labels.answered, {
          answered: given.filter((answer) => answer !== null).length,
          asked: given.length,
        }),
      },
      {
        kind: "definitions",
        rows: questions.map(([name, question], place) => ({
          term: say(labels.questions[section] ?? {}, name),
          paragraphs: [answerText(question, given[place] ?? null, labels, words)],
        })),
      },
    ];
  });
}

function passagesBlock({ passages }: FacilityAnswers, labels: FacilityLabels, words: PaperWords): Block {
  const number = (value: number | null) => (value === null ? dash : words.write.number(value));
  if (passages.length === 0) return { kind: "paragraph", text: labels.none };
  const [where, kind, width, height, depth, load] = labels.passage;
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
      say(labels.passageKinds, passage.kind),
      passage.secondWidthMm === null
        ? number(passage.widthMm)
        : fill(labels.thenWidth, {
            first: number(passage.widthMm),
            second: number(passage.secondWidthMm),
          }),
      number(passage.heightMm),
      number(passage.depthMm),
      number(passage.loadKg),
    ]),
  };
}

function licencesBlock({ licences }: FacilityAnswers, labels: FacilityLabels, words: PaperWords): Block {
  if (licences.length === 0) return { kind: "paragraph", text: labels.none };
  return {
    kind: "table",
    columns: labels.licence.map((header) => ({ header, align: "left", width: { share: 1 } })),
    rows: licences.map(({ kind, number, authority, responsiblePerson, validUntil }) => [
      say(labels.licenceKinds, kind),
      [{ text: number, emphasis: "code" }],
      authority,
      responsiblePerson === "" ? dash : responsiblePerson,
      validUntil === null ? dash : words.write.day(validUntil),
    ]),
  };
}

export function facilityPaperDocument(
  paper: FacilityPaper,
  sha256: string,
  labels: FacilityLabels,
  words: PaperWords,
): PaperDocument {
  const { answers, version } = paper;
  const next = facilitySections.length;
  return {
    head: {
      left: `${labels.name}, ${paper.venue}`,
      right: fill(words.agreement.version, { version }),
    },
    foot: {
      left: [{ text: `${labels.hash} ` }, { text: sha256, emphasis: "code" }],
      pageOf: words.agreement.pageOf,
    },
    blocks: [
      {
        kind: "title",
        overline: fill(labels.overline, { institution: paper.institution }),
        title: `${labels.name}: ${paper.venue}`,
        lines: [
          [paper.address, words.write.country(paper.countryCode)].filter(Boolean).join(", "),
          fill(labels.reported, {
            version,
            day: words.write.day(paper.reportedOn),
            name: paper.reportedBy,
            until: words.write.day(paper.validUntil),
          }),
          labels.confidential,
        ],
      },
      ...sectionBlocks(answers, labels, words),
      { kind: "heading", mark: String(next + 1), text: labels.wayIn },
      passagesBlock(answers, labels, words),
      { kind: "heading", mark: String(next + 2), text: labels.licences },
      licencesBlock(answers, labels, words),
    ],
  };
}
