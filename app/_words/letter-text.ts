/** A letter as it is read and sent: its subject and its plain text, made of its code and facts. */
import { type Parameters, sentence } from "#app/_words/sentences.ts";

export type LetterText = { subject: string; text: string };

/** @param file where the loan's file is read; null where the reader is on it already */
export function letterText(code: string, facts: Parameters, file: string | null): LetterText {
  const about = sentence(facts.title ? "letter.about" : "letter.about-untitled", facts);
  const paragraphs = [
    about,
    sentence(`${code}.text`, facts),
    facts.neededFrom ? sentence("letter.needed", facts) : "",
    file === null ? "" : sentence("letter.file", { address: file }),
    sentence("letter.foot", facts),
  ];
  return {
    // A mail's head is one line.
    subject: sentence(`${code}.subject`, facts).replace(/\s+/g, " "),
    text: `${paragraphs.filter((paragraph) => paragraph !== "").join("\n\n")}\n`,
  };
}
