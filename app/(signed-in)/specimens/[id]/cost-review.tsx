/** Whether a replacement cost for cover is due for review: it rests for twelve months. */
import { DateText } from "#app/_parts/figures.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { servesUntil } from "#lib/condition/grade.ts";
import { today } from "#lib/platform/clock.ts";

export function CostReview({ statedOn }: { statedOn: string }) {
  const until = servesUntil(statedOn, "approval");
  return (
    <span style={{ display: "block" }}>
      {until < today() ? (
        <StateMark outcome="attend">{words.costOld}</StateMark>
      ) : (
        <span className="quiet small">
          {words.costRests} <DateText date={until} />
        </span>
      )}
    </span>
  );
}
