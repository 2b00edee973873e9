/** Many accession numbers in few words: sheets that follow each other become a range, "SR 03.041–.058". */

type Numbered = { text: string; prefix: string; value: number; digits: string };

function readNumbered(text: string): Numbered {
  const match = /^(.*?)(\d+)$/.exec(text);
  const digits = match?.[2] ?? "";
  return { text, prefix: match?.[1] ?? text, value: digits === "" ? Number.NaN : Number(digits), digits };
}

/** @returns the ranges in the order of the numbers, each once */
export function numberRanges(numbers: readonly string[]): string[] {
  const sorted = [...new Set(numbers)]
    .map(readNumbered)
    .sort((a, b) => a.prefix.localeCompare(b.prefix, "en") || a.value - b.value);
  const runs: Numbered[][] = [];
  for (const one of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last.prefix === one.prefix && one.value === last.value + 1) run.push(one);
    else runs.push([one]);
  }
  return runs.map((run) => {
    const [first, last] = [run[0], run.at(-1)];
    if (!first || !last || first === last) return first?.text ?? "";
    return `${first.text}–${first.prefix.endsWith(".") ? "." : ""}${last.digits}`;
  });
}

/** All of a few, the first of many. */
export function numbersInWords(numbers: readonly string[], most = 6): string {
  const ranges = numberRanges(numbers);
  const rest = ranges.length - most;
  return rest > 0 ? `${ranges.slice(0, most).join(", ")} and ${rest} more` : ranges.join(", ");
}
