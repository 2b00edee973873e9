/** The answers of a facility report, section by section; what nobody knows is a dash. */
import type { ReactNode } from "react";
import { Facts } from "#app/_parts/facts.tsx";
import { Unknown } from "#app/_parts/figures.tsx";
import { fractionToPercent } from "#app/_parts/typed-number.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import {
  facilityChoiceWords,
  facilityQuestionWords,
  facilitySectionWords,
} from "#app/_words/en/facility-questions.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { formatNumber } from "#app/_words/format.ts";
import { type Answer, answerOf } from "#lib/people/facility-changes.ts";
import {
  type ChoiceWord,
  type FacilitySection,
  facilityQuestions,
  facilitySections,
  type Question,
} from "#lib/people/facility-questions.ts";
import { answeredIn, type FacilityAnswers } from "#lib/people/facility-report.ts";

export function questionWord(section: FacilitySection, name: string): string {
  return (facilityQuestionWords[section] as Record<string, string>)[name] ?? name;
}

export function answerWord(section: FacilitySection, name: string, answer: Answer): string {
  if (answer === null) return facilityWords.notKnown;
  if (typeof answer === "boolean") return answer ? fieldWords.yes : fieldWords.no;
  const question = (facilityQuestions[section] as Record<string, Question>)[name];
  if (typeof answer === "number") {
    if (question?.kind === "share") return formatNumber(fractionToPercent(answer));
    // Years are no quantities.
    return question?.kind === "number" && question.least === 1000 ? String(answer) : formatNumber(answer);
  }
  return question?.kind === "choice" ? facilityChoiceWords[answer as ChoiceWord] : answer;
}

function shownAnswer(section: FacilitySection, name: string, answer: Answer): ReactNode {
  return answer === null ? <Unknown key={name} /> : answerWord(section, name, answer);
}

export function Answers({ answers }: { answers: FacilityAnswers }) {
  return facilitySections.map((section) => {
    const { answered, asked } = answeredIn(answers, section);
    return (
      <section key={section} aria-labelledby={`answers-${section}`}>
        <h3 id={`answers-${section}`}>{facilitySectionWords[section]}</h3>
        <p className="quiet small">{facilityWords.answered(answered, asked)}</p>
        <Facts
          facts={Object.keys(facilityQuestions[section]).map((name) => [
            questionWord(section, name),
            shownAnswer(section, name, answerOf(answers, section, name)),
          ])}
        />
      </section>
    );
  });
}
