/** What each kind of paper is called in the language of the paper. */
import type { PaperKind } from "#lib/papers/paper-kinds.ts";
import type { PaperWords } from "#lib/papers/words.ts";

export function paperName(
  kind: PaperKind,
  { travel, trade, condition, courier, closure }: PaperWords,
): string {
  const names: Readonly<Record<PaperKind, string>> = {
    ...travel.names,
    ...trade.names,
    "condition form": condition.name,
    "travel sheet": courier.name,
    "loan closure": closure.name,
  };
  return names[kind];
}
