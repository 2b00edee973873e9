/** What stands between a series and a whole one: sheets that there are none of, and sheets that are due home. */
import Link from "next/link";
import type { NextThing } from "#app/_parts/record-page.tsx";
import { catalogueWords, seriesWords as words } from "#app/_words/en/catalogue.ts";
import { formatDate } from "#app/_words/format.ts";
import { isAway, type LentLine, standingOfLent } from "#lib/desk/lent.ts";
import type { SeriesSheet } from "#lib/specimens/queries/series.ts";

const rank = { bar: 0, attend: 1, clear: 2 } as const;

/** The lines that are away, by loan. */
function awayByLoan(lent: readonly LentLine[]): LentLine[][] {
  const loans = new Map<string, LentLine[]>();
  for (const line of lent.filter(isAway))
    loans.set(`${line.loanId} ${line.state}`, [...(loans.get(`${line.loanId} ${line.state}`) ?? []), line]);
  return [...loans.values()];
}

function OpenLoan({ line }: { line: LentLine }) {
  return (
    <Link className="act plain" href={`/loans/${line.loanId}`}>
      {catalogueWords.lent.openLoan(line.loanNumber)}
    </Link>
  );
}

export function seriesNext({
  series,
  lent,
  runs,
  today,
}: {
  series: SeriesSheet;
  lent: readonly LentLine[];
  /** Numbers written as runs. */
  runs: (numbers: readonly number[]) => string;
  today: string;
}): NextThing[] {
  const numberOf = new Map(series.sheets.map((sheet) => [sheet.specimenId, sheet.number]));
  const things: NextThing[] = awayByLoan(lent).flatMap((lines) => {
    const [line] = lines;
    const said = line && standingOfLent(line, today);
    if (!line || !said) return [];
    const numbers = lines.flatMap(({ specimenId }) => numberOf.get(specimenId) ?? []);
    const text = `${words.sheetsAre(numbers.length, runs(numbers))}. ${catalogueWords.lent.standings[
      said.standing
    ]({
      borrower: line.borrower,
      where: `${line.borrower}, ${line.venue}`,
      dueBack: formatDate(line.endsOn),
      days: "",
      late: catalogueWords.lent.late(said.daysLate),
    })}`;
    return [
      {
        key: `${line.loanId} ${line.state}`,
        outcome: said.outcome,
        text,
        action: <OpenLoan line={line} key="open" />,
      },
    ];
  });
  const without = series.sheets.filter((sheet) => sheet.specimenId === null).map((sheet) => sheet.number);
  if (without.length > 0)
    things.push({ key: "missing", outcome: "clear", text: words.noSheetFor(without.length, runs(without)) });
  return things.sort((one, other) => rank[one.outcome] - rank[other.outcome]);
}
