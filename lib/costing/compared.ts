/**
 * Two papers side by side, line by line: a quotation and the one before it, or what
 * was quoted and what it came to. Lines belong together by their code and what is
 * noted to them; of several that are alike the sum is compared. The differences add
 * up to the difference of the nets.
 */
import type { ComparedLine, CostLine } from "#lib/costing/schema.ts";

type Line = Pick<CostLine, "code" | "note" | "netMinor">;

const keyOf = ({ code, note }: Line) => JSON.stringify([code, note]);

function byKey(lines: readonly Line[]): Map<string, Line> {
  const sums = new Map<string, Line>();
  for (const line of lines) {
    const before = sums.get(keyOf(line));
    sums.set(keyOf(line), before ? { ...before, netMinor: before.netMinor + line.netMinor } : line);
  }
  return sums;
}

/** @param quoted the earlier amounts @param actual the later ones; a line that one side lacks has null there */
export function comparedLines(quoted: readonly Line[], actual: readonly Line[]): ComparedLine[] {
  const [before, after] = [byKey(quoted), byKey(actual)];
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((key) => {
    const [first, second] = [before.get(key), after.get(key)];
    const named = second ?? first;
    if (!named) return [];
    return [
      {
        code: named.code,
        note: named.note,
        quotedMinor: first?.netMinor ?? null,
        actualMinor: second?.netMinor ?? null,
        differenceMinor: (second?.netMinor ?? 0) - (first?.netMinor ?? 0),
      },
    ];
  });
}
