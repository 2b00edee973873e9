/** The sections and questions of a facility report and the words of its choices on screen: those of the paper. */
import { englishFacility } from "#lib/papers/english-facility.ts";

export const {
  sections: facilitySectionWords,
  questions: facilityQuestionWords,
  choices: facilityChoiceWords,
} = englishFacility;
