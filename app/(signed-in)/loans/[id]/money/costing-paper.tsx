/** One quotation or cost statement as it was frozen: lines, tax, total, and how it differs from what it stands beside. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { moneyWords as words } from "#app/_words/en/money.ts";
import { formatDate, formatMoney } from "#app/_words/format.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { ComparedLine, CostingContent, CostLine } from "#lib/costing/schema.ts";
import type { QuotationState } from "#lib/costing/standing.ts";
import type { CostingSheet } from "#lib/loans/queries/costings.ts";

const marks = {
  open: "attend",
  accepted: "clear",
  refused: "bar",
  expired: "neutral",
  superseded: "neutral",
} as const satisfies Record<QuotationState, string>;

export const nameOf = ({ kind, version }: Pick<CostingSheet, "kind" | "version">) =>
  kind === "quotation" ? words.quotation(version) : words.statement(version);

function lineName({ code, note }: Pick<CostLine, "code" | "note">): string {
  if (code === "other" && note !== "") return note;
  return note === "" ? words.lines[code] : `${words.lines[code]}, ${note}`;
}

/** @param into the currency of the paper: an amount that is stated in it needs no reckoning */
function reckoned({ price, currency }: CostLine, into: string): string {
  switch (price.kind) {
    case "counted": {
      const quantity = words.amountOf(price.quantity, price.unit);
      return `${quantity} × ${formatMoney({ minor: price.rateMinor, currency })}`;
    }
    case "share": {
      const often = price.unit === "once" ? "" : ` × ${words.amountOf(price.times, price.unit)}`;
      const sign = price.per === "cent" ? words.percent : words.perMille;
      return `${formatMoney({ minor: price.ofMinor, currency })} × ${price.share} ${sign}${often}`;
    }
    case "stated":
      return currency === into ? "" : formatMoney({ minor: price.minor, currency });
  }
}

/** How a line in another currency was brought over. */
function exchangeWords(line: CostLine, { currency, exchange }: CostingContent): string | null {
  const rate = exchange.find((one) => one.from === line.currency && one.to === currency);
  return line.currency === currency || !rate
    ? null
    : words.exchanged(rate.rate, rate.from, rate.to, formatDate(rate.on));
}

type SumRow = {
  key: string;
  name: string;
  how: string | null;
  minor: number;
  percent: string;
  isSum: boolean;
};

function rowsOf(content: CostingContent): SumRow[] {
  const money = (minor: number) => formatMoney({ minor, currency: content.currency });
  return [
    ...content.lines.map((line, index) => ({
      key: `line ${index}`,
      name: lineName(line),
      how: [reckoned(line, content.currency), exchangeWords(line, content)].filter(Boolean).join(", "),
      minor: line.netMinor,
      percent: `${line.taxPercent} %`,
      isSum: false,
    })),
    { key: "net", name: words.netSum, how: null, minor: content.netMinor, percent: "", isSum: true },
    ...content.taxes.map(({ percent, netMinor, taxMinor }) => ({
      key: `tax ${percent}`,
      name: words.taxAt(percent, money(netMinor)),
      how: null,
      minor: taxMinor,
      percent: "",
      isSum: false,
    })),
    { key: "total", name: words.total, how: null, minor: content.totalMinor, percent: "", isSum: true },
  ];
}

function Lines({ sheet }: { sheet: CostingSheet }) {
  const { content } = sheet;
  return (
    <DataTable
      caption={words.linesCaption(nameOf(sheet))}
      captionHidden
      dense
      rows={rowsOf(content)}
      rowKey={(row) => row.key}
      columns={[
        { key: "line", label: words.line, cell: (row) => (row.isSum ? <b>{row.name}</b> : row.name) },
        {
          key: "how",
          label: words.reckoned,
          cell: (row) => row.how && <span className="quiet small">{row.how}</span>,
        },
        { key: "rate", label: words.tax, right: true, cell: (row) => row.percent },
        {
          key: "net",
          label: content.currency,
          right: true,
          cell: (row) => {
            const amount = formatMoney({ minor: row.minor, currency: content.currency });
            return row.isSum ? <b>{amount}</b> : amount;
          },
        },
      ]}
    />
  );
}

function Compared({
  lines,
  currency,
  caption,
  labels,
  difference,
}: {
  lines: readonly ComparedLine[];
  currency: string;
  caption: string;
  labels: readonly [before: string, after: string];
  difference: number;
}) {
  const money = (minor: number | null) => (minor === null ? "–" : formatMoney({ minor, currency }));
  const signed = (minor: number) =>
    `${minor > 0 ? "+" : minor < 0 ? "−" : ""}${formatMoney({ minor: Math.abs(minor), currency })}`;
  return (
    <>
      <DataTable
        caption={caption}
        captionHidden
        dense
        rows={lines}
        rowKey={(line) => `${line.code} ${line.note}`}
        columns={[
          { key: "line", label: words.line, cell: lineName },
          { key: "before", label: labels[0], right: true, cell: (line) => money(line.quotedMinor) },
          { key: "after", label: labels[1], right: true, cell: (line) => money(line.actualMinor) },
          {
            key: "difference",
            label: words.difference,
            right: true,
            cell: (line) => signed(line.differenceMinor),
          },
        ]}
      />
      <p>
        {words.totalDifference}: <b>{signed(difference)}</b>
      </p>
    </>
  );
}

/** What changed since the version before. */
function Changes({ sheet, before }: { sheet: CostingSheet; before: CostingSheet }) {
  const changed = (sheet.changes ?? []).filter((line) => line.differenceMinor !== 0);
  return (
    <details>
      <summary>{words.changes}</summary>
      {changed.length === 0 ? (
        <p>{words.noChanges}</p>
      ) : (
        <Compared
          lines={changed}
          currency={sheet.content.currency}
          caption={words.changesCaption}
          labels={[words.before, words.after]}
          difference={sheet.content.totalMinor - before.content.totalMinor}
        />
      )}
    </details>
  );
}

/** @param before the version before it, where there is one in the same currency */
export function CostingPaper({ sheet, before }: { sheet: CostingSheet; before: CostingSheet | undefined }) {
  const { content, answer, state } = sheet;
  return (
    <div className={styles.block}>
      <h3>{nameOf(sheet)}</h3>
      <Facts
        facts={[
          state !== null && [
            words.state,
            <StateMark key="state" outcome={marks[state]}>
              {words.states[state]}
            </StateMark>,
          ],
          [
            words.drawnUp,
            <span key="drawn">
              <Moment at={sheet.drawnUpAt} long />, {sheet.drawnUpBy}
            </span>,
          ],
          content.validUntil !== null && [
            words.validUntil,
            <DateText key="until" date={content.validUntil} />,
          ],
          [
            words.total,
            <b key="total">{formatMoney({ minor: content.totalMinor, currency: content.currency })}</b>,
          ],
          answer && [
            words.answer,
            <span key="answer">
              <Moment at={answer.answeredAt} long />
              {answer.remark !== "" && `: ${answer.remark}`}
            </span>,
          ],
          content.note !== "" && [words.note, content.note],
          [
            words.hash,
            <span key="hash" className={`mono ${styles.hash}`}>
              {sheet.sha256}
            </span>,
          ],
        ]}
      />
      <Lines sheet={sheet} />
      {content.costRecovery && (
        <p>
          <b>{words.costRecovery}</b> {words.costRecoveryText}
        </p>
      )}
      {before && before.content.currency === content.currency && <Changes sheet={sheet} before={before} />}
      {content.against && (
        <>
          <h4>{words.against(content.against.version)}</h4>
          <Compared
            lines={content.against.lines}
            currency={content.currency}
            caption={words.comparedCaption}
            labels={[words.quoted, words.actual]}
            difference={content.against.differenceMinor}
          />
        </>
      )}
    </div>
  );
}
