/** What of a loan is asked back, as a letter to read and to print: why, what to do by when, and what stays as it is. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { recallLetterWords as words } from "#app/_words/en/recall-letter.ts";
import { formatDate } from "#app/_words/format.ts";
import { readLoan } from "#app/(signed-in)/loans/[id]/read-loan.ts";
import { PrintButton } from "#app/(signed-in)/loans/[id]/recall/print-button.tsx";
import type { RecallRow } from "#lib/loans/queries/loan-time.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { type RecallStep, recallSteps } from "#lib/loans/recall-steps.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { mayDo } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { today } from "#lib/platform/clock.ts";

export const metadata: Metadata = { title: words.title };

const stepWords: Record<RecallStep["what"], string> = {
  "stop use": words.stopUse,
  "agree on the way": words.agree,
  "look and pack": words.look,
  seal: words.seal,
  home: words.home,
};

function ByWhen({ step, day }: { step: RecallStep; day: string }) {
  if (step.by === "before it leaves") return words.beforeItLeaves;
  const text = step.by === "now" ? words.now : formatDate(step.by);
  return step.by !== "now" && step.by < day ? <StateMark outcome="bar">{text}</StateMark> : text;
}

function Recall({ loan, recall, day }: { loan: LoanSheet; recall: RecallRow; day: string }) {
  const lines = loan.lines.filter(({ specimenId }) => recall.specimenIds.includes(specimenId));
  const out = lines.filter(({ state }) => outStates.includes(state));
  const returnBy = formatDate(recall.returnBy);
  return (
    <>
      <h2>{words.specimens(returnBy)}</h2>
      <p>{out.length === 0 ? words.allOnTheWay : words.backBy(out.length, returnBy)}</p>
      <Facts
        facts={[
          [words.askedOn, <Moment key="on" at={recall.recalledAt} />],
          [words.ground, words.grounds[recall.ground]],
        ]}
      />
      <blockquote
        style={{ margin: "0 0 0.7rem", paddingLeft: "0.8rem", borderLeft: "3px solid var(--rule)" }}
      >
        <p>{recall.text}</p>
      </blockquote>
      <DataTable
        caption={words.specimens(returnBy)}
        captionHidden
        rows={lines}
        rowKey={(line) => line.id}
        columns={[
          {
            key: "number",
            label: loanWords.number,
            cell: (line) => (
              <Link className="mono" href={`/specimens/${line.specimenId}`}>
                {line.accessionNumber}
              </Link>
            ),
          },
          { key: "title", label: loanWords.title, onCard: "bare", cell: (line) => line.title },
          { key: "where", label: words.where, cell: (line) => loanWords.lineStates[line.state] },
        ]}
      />
      {out.length > 0 && (
        <DataTable<RecallStep>
          caption={words.whatToDo}
          rows={recallSteps(recall)}
          rowKey={(step) => step.what}
          columns={[
            { key: "what", label: words.step, cell: (step) => stepWords[step.what] },
            { key: "by", label: words.byWhen, cell: (step) => <ByWhen step={step} day={day} /> },
          ]}
        />
      )}
    </>
  );
}

export default async function RecallPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/loans/${id}/recall`);
  const loan = await orNotFound(() => readLoan(viewer, id));
  const { name, address, city, email, phone } = await centreSettings();
  const { recalls } = loan.time;
  const isOut = loan.lines.some(
    ({ specimenId, state }) =>
      outStates.includes(state) && recalls.some(({ specimenIds }) => specimenIds.includes(specimenId)),
  );
  const sends = isOut && mayDo(viewer, "sendHome", { institutionId: loan.borrower.id });
  return (
    <PlainPage>
      <Masthead
        number={loan.number}
        title={words.title}
        latin={`${loan.request.title || loanWords.noTitle}, ${loan.borrower.name}`}
        standing={
          <Link className="no-print" href={`/loans/${id}`}>
            {words.toLoan}
          </Link>
        }
      />
      {recalls.length === 0 ? (
        <EmptyState>{words.none}</EmptyState>
      ) : (
        <>
          <Facts
            facts={[
              [words.from, `${name}, ${address}, ${city}`],
              [words.to, `${loan.borrower.name}, ${loan.venue.name}`],
            ]}
          />
          {recalls.map((recall) => (
            <Recall key={recall.id} loan={loan} recall={recall} day={today()} />
          ))}
          <h2>{words.notCleared}</h2>
          <ul>
            {words.stays.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p>{words.cannot(email, phone)}</p>
          <p className="no-print" style={{ display: "flex", gap: "0.8rem", flexWrap: "wrap" }}>
            {sends && (
              <Link className="act" href={`/loans/${id}#venue`}>
                {words.sendHome}
              </Link>
            )}
            <PrintButton />
          </p>
        </>
      )}
    </PlainPage>
  );
}
