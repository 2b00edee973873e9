/** What a schema says of a wrong field by itself, in words for a person. What is not known here stays as it is. */
import { formatExact } from "#app/_words/format.ts";

/** A bound as people read it; what is no number stays as the schema wrote it. */
const bound = (text = "") => (Number.isFinite(Number(text)) ? formatExact(Number(text)) : text);

const patterns: readonly (readonly [RegExp, (...found: string[]) => string])[] = [
  [/^Too small: expected string to have >=1 characters$/, () => "Fill this in."],
  [
    /^Too small: expected string to have >=(\d+) characters$/,
    (least) => `Write at least ${bound(least)} characters.`,
  ],
  [
    /^Too big: expected string to have <=(\d+) characters$/,
    (most) => `Write at most ${bound(most)} characters.`,
  ],
  [/^Too small: expected array to have >=1 items$/, () => "Name at least one."],
  [/^Too big: expected array to have <=(\d+) items$/, (most) => `Name at most ${bound(most)}.`],
  [/^Too small: expected (?:number|int) to be >=(\S+)$/, (least) => `At least ${bound(least)}.`],
  [/^Too small: expected (?:number|int) to be >(\S+)$/, (least) => `More than ${bound(least)}.`],
  [/^Too big: expected (?:number|int) to be <=(\S+)$/, (most) => `At most ${bound(most)}.`],
  [/^Too big: expected (?:number|int) to be <(\S+)$/, (most) => `Less than ${bound(most)}.`],
  [/^Invalid input: expected int, received number/, () => "Write a whole number."],
  [/^Invalid input: expected (?:number|int), received/, () => "Write a number."],
  [/^Invalid input: expected boolean, received/, () => "Choose yes or no."],
  [/^Invalid option: expected one of/, () => "Choose one of the list."],
  [/^Invalid input: expected [\w "|]+, received (?:undefined|null)$/, () => "Fill this in."],
  [/^Invalid input: expected string, received/, () => "Write text."],
  [/^Invalid input: expected array, received/, () => "Give a list."],
  [/^Invalid input: expected (?:object|record|map), received/, () => "Fill in the fields of this."],
  [/^Invalid input/, () => "This cannot be read. Fill it in anew."],
  [/^Invalid string/, () => "This is not written in the form that is needed here."],
  [/^Invalid key|^Unrecognized key/, () => "There is no such field."],
  [/^Invalid email address$/, () => "Write an e-mail address, for example loans@example.org."],
  [/^Invalid ISO date$/, () => "Give a day."],
  [/^Invalid ISO datetime$/, () => "Give a day."],
  [/^Invalid (?:UUID|uuid)/, () => "Choose one of the list."],
];

export function plainIssue(message: string): string {
  for (const [pattern, words] of patterns) {
    const found = pattern.exec(message);
    if (found) return words(...found.slice(1));
  }
  return message;
}
