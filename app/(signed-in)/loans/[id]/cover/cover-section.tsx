/** Cover from nail to nail: what is needed, which certificates there are, which hours nobody covers. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { coverWords as words } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { formatMoney } from "#app/_words/format.ts";
import { sentence } from "#app/_words/sentences.ts";
import { saveCover, takeCoverBack } from "#app/(signed-in)/loans/[id]/actions.ts";
import { CoverForm } from "#app/(signed-in)/loans/[id]/cover/cover-form.tsx";
import { CoverLine } from "#app/(signed-in)/loans/[id]/cover/cover-line.tsx";
import { InsuranceOffers } from "#app/(signed-in)/loans/[id]/cover/insurance-offers.tsx";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import type { CoverSheet, LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { InsuranceSheet } from "#lib/people/queries/facility.ts";
import type { Viewer } from "#lib/people/viewer.ts";

function neededWords(needed: NonNullable<LoanSheet["coverNeeded"]>): string {
  const { minor, currency, unknown } = needed;
  const sum = currency === null ? words.severalCurrencies : formatMoney({ minor, currency });
  return unknown > 0 ? `${sum}; ${words.unknownCosts(unknown)}` : sum;
}

/** A certificate that was recorded wrongly: what follows stands before the button, and it works without a script. */
function TakeBackForm({ loan, cover }: { loan: LoanSheet; cover: CoverSheet }) {
  const [newest] = loan.agreements;
  const label = words.takeBackOf(cover.policyNumber);
  const follows = [
    ...words.takeBackFollows,
    ...(newest?.terms?.includes(JSON.stringify(cover.policyNumber))
      ? [words.takeBackSigned(newest.version)]
      : []),
  ];
  return (
    <details className="no-print">
      <summary>{words.takeBackWhich(cover.policyNumber)}</summary>
      <ActForm
        action={takeCoverBack.bind(null, loan.id, cover.id)}
        label={label}
        button={label}
        look="outline"
      >
        {follows.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </ActForm>
    </details>
  );
}

export function CoverSection({
  viewer,
  loan,
  insurances,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  insurances: readonly InsuranceSheet[];
  fold?: string | undefined;
}) {
  const { covers, coverNeeded, request } = loan;
  if (covers === null)
    return (
      <Section id="cover" title={loanWords.sections.cover} fold={fold}>
        <p className="quiet">{words.hidden}</p>
      </Section>
    );
  const gate = loan.gates.find((one) => one.gate === "cover");
  const isEnded = ["closed", "declined", "withdrawn"].includes(loan.state);
  const mayTakeBack =
    mayDo(viewer, "takeBackCover", { institutionId: loan.borrower.id }) &&
    statesBeforeRelease.includes(loan.state);
  const mayRecord = mayDo(viewer, "recordCover", { institutionId: loan.borrower.id }) && !isEnded;
  return (
    <Section
      id="cover"
      title={loanWords.sections.cover}
      fold={fold}
      margin={gate?.facts.map((fact) => (
        <MarginNote
          key={`${fact.code} ${JSON.stringify(fact.parameters)}`}
          outcome={gate.holds ? "clear" : "bar"}
          title={sentence(fact.code, fact.parameters)}
          source={words.gapSource}
        />
      ))}
    >
      <Facts
        facts={[
          coverNeeded !== null && [words.needed, neededWords(coverNeeded)],
          [words.stated, request.cover === null ? words.notStated : formatMoney(request.cover)],
        ]}
      />
      <CoverLine loan={loan} />
      <DataTable<CoverSheet>
        caption={words.certificates}
        rows={covers}
        rowKey={(cover) => cover.id}
        empty={<EmptyState>{words.none}</EmptyState>}
        columns={[
          { key: "insurer", label: words.insurer, cell: (cover) => cover.insurer },
          {
            key: "policy",
            label: words.policy,
            cell: (cover) => <span className="mono">{cover.policyNumber}</span>,
          },
          { key: "amount", label: words.amount, right: true, cell: (cover) => formatMoney(cover) },
          { key: "from", label: words.from, cell: (cover) => <Moment at={cover.startsAt} /> },
          { key: "until", label: words.until, cell: (cover) => <Moment at={cover.endsAt} /> },
          {
            key: "transit",
            label: words.transit,
            cell: (cover) => (cover.coversTransit ? words.yes : words.no),
          },
          {
            key: "stay",
            label: words.stay,
            cell: (cover) => (cover.coversStay ? words.yes : words.no),
          },
          { key: "where", label: words.territories, cell: (cover) => cover.territories.join(", ") },
        ]}
      />
      {mayTakeBack && covers.map((cover) => <TakeBackForm key={cover.id} loan={loan} cover={cover} />)}
      {mayRecord && <InsuranceOffers loan={loan} insurances={insurances} />}
      {mayRecord && (
        <CoverForm
          action={saveCover.bind(null, loan.id)}
          currency={coverNeeded?.currency ?? request.cover?.currency ?? ""}
        />
      )}
    </Section>
  );
}
