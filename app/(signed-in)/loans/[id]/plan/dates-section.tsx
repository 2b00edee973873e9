/** The days of the loan: kept free, on loan, on the road; one strip for each specimen, alike ones together. */
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Period } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { numbersInWords } from "#app/_words/number-range.ts";
import { type DateStrip, DateStrips } from "#app/(signed-in)/loans/[id]/plan/date-strips.tsx";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { StageSheet } from "#lib/shipments/queries.ts";

/** More specimens than this are drawn together where their strips are alike. */
const drawnAlone = 12;

type Line = LoanSheet["lines"][number];

function toneOf(line: Line, loan: LoanSheet): DateStrip["tone"] {
  if (line.state === "withdrawn" || line.state === "declined") return "given back";
  if (loan.matrix[line.specimenId]?.free === "bar") return "not free";
  return line.state === "noted" ? "not held" : "booked";
}

const remarks: Record<DateStrip["tone"], string | null> = {
  booked: null,
  "not held": words.notHeld,
  "not free": words.notBookable,
  "given back": words.givenBack,
};

const daysOf = (stage: StageSheet) => ({ startsOn: stage.departsOn, endsOn: addDays(stage.arrivesOn, 1) });

function stripsOf(loan: LoanSheet): DateStrip[] {
  const { startsOn, endsOn } = loan.request;
  const groups = new Map<string, { lines: Line[]; tone: DateStrip["tone"] }>();
  for (const line of loan.lines) {
    const tone = toneOf(line, loan);
    const key = loan.lines.length > drawnAlone ? tone : line.id;
    const group = groups.get(key) ?? { lines: [], tone };
    group.lines.push(line);
    groups.set(key, group);
  }
  return [...groups].map(([key, { lines, tone }]) => ({
    key,
    label: numbersInWords(
      lines.map((line) => line.accessionNumber),
      3,
    ),
    ...(remarks[tone] === null ? {} : { remark: remarks[tone] }),
    tone,
    busy: loan.busy,
    loan: { startsOn, endsOn },
    ways: tone === "booked" ? loan.stages.map(daysOf) : [],
  }));
}

export function DatesSection({
  loan,
  today,
  fold,
}: {
  loan: LoanSheet;
  today: string;
  fold?: string | undefined;
}) {
  const { request, busy, stages } = loan;
  const wayOf = (direction: StageSheet["direction"]) => {
    const stage = stages.find((one) => one.direction === direction);
    return stage ? <Period {...daysOf(stage)} /> : words.notPlanned;
  };
  return (
    <Section
      id="dates"
      title={words.sections.dates}
      fold={fold}
      margin={
        <MarginNote
          title={`${words.daysBefore(loan.daysBefore)}, ${words.daysAfter(loan.daysAfter)}`}
          source={words.buffersSource}
        >
          {words.buffers}
        </MarginNote>
      }
    >
      <Facts
        facts={[
          [words.loanDays, <Period key="loan" startsOn={request.startsOn} endsOn={request.endsOn} />],
          [words.returnBy, <DateText key="return" date={request.endsOn} />],
          [loan.state === "enquiry" ? words.wouldBeBusy : words.busy, <Period key="busy" {...busy} />],
          [words.wayOutDays, wayOf("out")],
          [words.wayHomeDays, wayOf("home")],
        ]}
      />
      <DateStrips strips={stripsOf(loan)} today={today} />
    </Section>
  );
}
