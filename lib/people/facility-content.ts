/**
 * The content of a facility report on paper, as data: whose it is, what counts
 * until when, every section with its questions in order, the way in and licences.
 * Words and layout are made where it is painted. Sections that nobody answered are
 * kept: an empty line is an answer too.
 */
import { type Answer, answerOf } from "#lib/people/facility-changes.ts";
import {
  type FacilitySection,
  facilityQuestions,
  facilitySections,
  type Question,
} from "#lib/people/facility-questions.ts";
import { answeredIn, type FacilityAnswers, type ReportedLicence } from "#lib/people/facility-report.ts";
import type { Passage, VenueFacts } from "#lib/people/schema.ts";
import type { DateText } from "#lib/platform/dates.ts";

export type FacilityLine = {
  question: string;
  /** How the answer is written: a share as a percentage, a number with its unit. */
  shape: Question["kind"];
  unit: string;
  answer: Answer;
};

export type FacilityContent = {
  venue: string;
  institution: string;
  address: string;
  countryCode: string;
  version: number;
  reportedOn: DateText;
  validUntil: DateText;
  reportedBy: string;
  /** Whether it counts on the day on which it is printed. */
  counts: boolean;
  sections: { section: FacilitySection; answered: number; asked: number; lines: FacilityLine[] }[];
  passages: Passage[];
  licences: ReportedLicence[];
};

export function facilityContent(
  venue: Pick<VenueFacts, "name" | "address" | "countryCode">,
  institution: string,
  report: {
    version: number;
    answers: FacilityAnswers;
    reportedOn: DateText;
    validUntil: DateText;
    reportedBy: string;
  },
  today: DateText,
): FacilityContent {
  const { answers, version, reportedOn, validUntil, reportedBy } = report;
  return {
    venue: venue.name,
    institution,
    address: venue.address,
    countryCode: venue.countryCode,
    version,
    reportedOn,
    validUntil,
    reportedBy,
    counts: today < validUntil,
    sections: facilitySections.map((section) => ({
      section,
      ...answeredIn(answers, section),
      lines: (Object.entries(facilityQuestions[section]) as [string, Question][]).map(
        ([question, asked]) => ({
          question,
          shape: asked.kind,
          unit: asked.kind === "number" ? asked.unit : asked.kind === "share" ? "%" : "",
          answer: answerOf(answers, section, question),
        }),
      ),
    })),
    passages: answers.passages,
    licences: answers.licences,
  };
}
