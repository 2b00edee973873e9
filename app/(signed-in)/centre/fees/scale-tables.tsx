/** One version of the fee scale, laid out as it counts. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { moneyWords, feeWords as words } from "#app/_words/en/money.ts";
import { formatMoney } from "#app/_words/format.ts";
import { type FeeScale, lineCodes } from "#lib/costing/schema.ts";
import { purposes } from "#lib/suitability/schema.ts";

export const rateNames = Object.keys(words.rateNames) as (keyof FeeScale["rates"])[];

export const scaleSections = [
  { id: "fees", label: words.fees },
  { id: "rates", label: words.rates },
  { id: "cover", label: words.cover },
  { id: "tax", label: words.tax },
  { id: "cancellation", label: words.cancellation },
] as const;

export function ScaleTables({ scale }: { scale: FeeScale }) {
  const money = (minor: number) => formatMoney({ minor, currency: scale.currency });
  const { cover, recall } = scale;
  return (
    <>
      <Section id="fees" title={words.fees}>
        <p>{words.about}</p>
        <p>{words.feesAbout}</p>
        <DataTable
          caption={words.fees}
          captionHidden
          rows={purposes}
          rowKey={(purpose) => purpose}
          columns={[
            { key: "purpose", label: words.purpose, cell: (purpose) => words.purposes[purpose] },
            {
              key: "base",
              label: words.base,
              right: true,
              cell: (purpose) => money(scale.loanFees[purpose].baseMinor),
            },
            {
              key: "included",
              label: words.included,
              right: true,
              cell: (purpose) => scale.loanFees[purpose].included,
            },
            {
              key: "further",
              label: words.further,
              right: true,
              cell: (purpose) => money(scale.loanFees[purpose].furtherMinor),
            },
          ]}
        />
      </Section>
      <Section id="rates" title={words.rates}>
        <DataTable
          caption={words.rates}
          captionHidden
          rows={rateNames}
          rowKey={(name) => name}
          columns={[
            { key: "name", label: moneyWords.line, cell: (name) => words.rateNames[name] },
            { key: "rate", label: words.rate, right: true, cell: (name) => money(scale.rates[name]) },
          ]}
        />
        <Facts
          facts={[
            [words.recallPercent, `${recall.percent} %`],
            [words.recallLeast, money(recall.leastMinor)],
            [words.contingency, `${scale.contingencyPercent} %`],
            [words.validDays, words.days(scale.validDays)],
          ]}
        />
      </Section>
      <Section id="cover" title={words.cover}>
        <p>{words.coverAbout}</p>
        <Facts
          facts={[
            [words.transit, words.rateFor(cover.transitPerMille, words.ways[cover.transitBasis])],
            [
              words.stay,
              cover.stayBasis === "day"
                ? words.rateFor(cover.stayPerMille, words.bases.day)
                : words.stayOnce(cover.stayPerMille),
            ],
          ]}
        />
      </Section>
      <Section id="tax" title={words.tax}>
        <p>{words.taxAbout}</p>
        <DataTable
          caption={words.tax}
          captionHidden
          dense
          rows={lineCodes}
          rowKey={(code) => code}
          columns={[
            { key: "line", label: moneyWords.line, cell: (code) => moneyWords.lines[code] },
            { key: "tax", label: words.taxRate, right: true, cell: (code) => `${scale.taxPercent[code]} %` },
          ]}
        />
      </Section>
      <Section id="cancellation" title={words.cancellation}>
        <DataTable
          caption={moneyWords.cancellationCaption}
          captionHidden
          rows={scale.cancellation}
          rowKey={(step) => String(step.daysBefore)}
          columns={[
            {
              key: "days",
              label: moneyWords.daysLeft,
              cell: (step) => moneyWords.daysOrFewer(step.daysBefore),
            },
            { key: "share", label: moneyWords.share, right: true, cell: (step) => `${step.percent} %` },
          ]}
        />
      </Section>
    </>
  );
}
