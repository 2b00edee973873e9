/** Where a letter stands, as a word and a shape. */
import { type MarkTone, StateMark } from "#app/_parts/state-mark.tsx";
import { letterPages as words } from "#app/_words/en/letters.ts";
import type { LetterState } from "#lib/platform/mail.ts";

const tones: Record<LetterState, MarkTone> = {
  sent: "clear",
  waiting: "neutral",
  kept: "neutral",
  fault: "attend",
};

export function LetterStateMark({ state }: { state: LetterState }) {
  return <StateMark outcome={tones[state]}>{words.states[state]}</StateMark>;
}
