/** Insurance that an institution holds beyond one loan: kept here once, offered for each of its loans. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { coverWords } from "#app/_words/en/loan-acts.ts";
import { formatMoney } from "#app/_words/format.ts";
import { InsuranceForm, type InsuranceStart } from "#app/(signed-in)/institutions/[id]/insurance-form.tsx";
import { saveInsurance } from "#app/(signed-in)/institutions/insurance-actions.ts";
import { insuranceWarningOn } from "#lib/people/insurance.ts";
import type { InsuranceSheet } from "#lib/people/queries/facility.ts";
import { addDays } from "#lib/platform/dates.ts";
import { majorText } from "#lib/platform/money.ts";

const nothing: InsuranceStart = {
  insurer: "",
  policyNumber: "",
  amount: "",
  currency: "",
  firstDay: "",
  lastDay: "",
  territories: "",
  coversTransit: false,
};

function startOf(one: InsuranceSheet): InsuranceStart {
  return {
    insurer: one.insurer,
    policyNumber: one.policyNumber,
    amount: majorText(one.minor, one.currency),
    currency: one.currency,
    firstDay: one.validFrom,
    lastDay: addDays(one.validUntil, -1),
    territories: one.territories.join(", "),
    coversTransit: one.coversTransit,
  };
}

function State({ insurance, day }: { insurance: InsuranceSheet; day: string }) {
  if (insurance.validUntil <= day) return <StateMark outcome="bar">{words.insuranceState.ended}</StateMark>;
  if (insurance.validFrom > day)
    return <StateMark outcome="attend">{words.insuranceState["not yet valid"]}</StateMark>;
  const ends = insuranceWarningOn(insurance.validUntil, day) !== null;
  return <StateMark outcome={ends ? "attend" : "clear"}>{words.insuranceState.valid}</StateMark>;
}

export function InsuranceSection({
  institutionId,
  insurances,
  day,
  mayKeep,
}: {
  institutionId: string;
  insurances: readonly InsuranceSheet[];
  day: string;
  mayKeep: boolean;
}) {
  return (
    <Section id="insurance" title={words.insurance} margin={<MarginNote title={words.insuranceAbout} />}>
      <DataTable<InsuranceSheet>
        caption={words.insuranceCaption}
        rows={insurances}
        rowKey={({ id }) => id}
        empty={<EmptyState>{words.noInsurance}</EmptyState>}
        columns={[
          { key: "insurer", label: coverWords.insurer, cell: (one) => one.insurer },
          {
            key: "policy",
            label: coverWords.policy,
            cell: (one) => <span className="mono">{one.policyNumber}</span>,
          },
          { key: "amount", label: coverWords.amount, right: true, cell: (one) => formatMoney(one) },
          { key: "from", label: coverWords.firstDay, cell: (one) => <DateText date={one.validFrom} /> },
          {
            key: "until",
            label: words.lastDay,
            cell: (one) => <DateText date={addDays(one.validUntil, -1)} />,
          },
          {
            key: "transit",
            label: coverWords.transit,
            cell: (one) => (one.coversTransit ? coverWords.yes : coverWords.no),
          },
          { key: "where", label: coverWords.territories, cell: (one) => one.territories.join(", ") },
          { key: "state", label: words.judged, cell: (one) => <State insurance={one} day={day} /> },
        ]}
      />
      {mayKeep &&
        insurances.map((one) => (
          <InsuranceForm
            key={one.id}
            of={one.id}
            action={saveInsurance.bind(null, institutionId, one.id)}
            start={startOf(one)}
            title={`${words.changeInsurance} ${one.policyNumber}`}
          />
        ))}
      {mayKeep && (
        <InsuranceForm
          of="new"
          action={saveInsurance.bind(null, institutionId, null)}
          start={nothing}
          title={words.keepInsurance}
        />
      )}
    </Section>
  );
}
