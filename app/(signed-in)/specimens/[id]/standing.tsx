/** Where the specimen is, at the head of its sheet: with whom and until when, or whether it is free. */
import Link from "next/link";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { formatDate } from "#app/_words/format.ts";
import { isAway, type LentLine } from "#lib/desk/lent.ts";

function placeOf({ state, borrower, venue }: LentLine): string {
  if (state === "missing") return words.lent.missing(borrower);
  if (state === "travelling out") return words.lent.travellingOut(borrower);
  if (state === "travelling home") return words.lent.travellingHome(borrower);
  return words.lent.at(venue, borrower);
}

export function Standing({
  lent,
  isFree,
  holder,
  today,
}: {
  lent: readonly LentLine[];
  isFree: boolean;
  holder: string | null;
  today: string;
}) {
  const away = lent.find(isAway);
  if (!away)
    return (
      <>
        <p>
          <StateMark outcome="neutral">{isFree ? words.states.free : words.states.promised}</StateMark>
        </p>
        {holder && (
          <p className="quiet">
            {words.hasNow} {holder}
          </p>
        )}
      </>
    );
  const tone = away.state === "missing" ? "bar" : away.endsOn <= today ? "attend" : "neutral";
  return (
    <>
      <p>
        <StateMark outcome={tone}>{placeOf(away)}</StateMark>
      </p>
      <p className="quiet">
        {words.lent.dueBack(formatDate(away.endsOn))},{" "}
        <Link className="mono" href={`/loans/${away.loanId}`}>
          {away.loanNumber}
        </Link>
      </p>
    </>
  );
}
