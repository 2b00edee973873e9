/** The strictest limits of the specimens together: who sets each, and who cannot stand with whom. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Numbers } from "#app/_parts/numbers.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatNumber } from "#app/_words/format.ts";
import { limitRows } from "#app/_words/limit-rows.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { type GroupLimits, groupLimits, type LimitConflict } from "#lib/environment/group-limits.ts";
import type { LimitQuantity } from "#lib/environment/schema.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import type { LoanSpecimen } from "#lib/loans/queries/loan-specimens.ts";

/** Who sets the figures that bind first: the inner band, the lower ceiling. */
function settersOf(limits: GroupLimits, quantity: LimitQuantity): string[] {
  const figures = limits.figures.filter((figure) => figure.quantity === quantity);
  const [first] = figures;
  const level = figures.some((figure) => figure.level === "warn") ? "warn" : first?.level;
  return [...new Set(figures.filter((figure) => figure.level === level).flatMap((figure) => figure.setBy))];
}

function conflictWords({ quantity, pairs }: LimitConflict): string {
  const [factor, unit] = quantity === "humidity" ? [100, "%"] : [1, "°C"];
  return pairs
    .map(
      ({ needsAtLeast, atLeast, allowsAtMost, atMost }) =>
        `${needsAtLeast}: ${words.atLeast} ${formatNumber(atLeast * factor)} ${unit}; ${allowsAtMost}: ${words.atMost} ${formatNumber(atMost * factor)} ${unit}.`,
    )
    .join(" ");
}

export function LimitsSection({
  specimens,
  fold,
}: {
  specimens: readonly LoanSpecimen[];
  fold?: string | undefined;
}) {
  if (specimens.length === 0)
    return (
      <Section id="limits" title={words.sections.limits} fold={fold}>
        <EmptyState>{words.noLimits}</EmptyState>
      </Section>
    );
  const group = groupLimits(
    specimens.map((specimen) => ({ id: specimen.accessionNumber, limits: limitsOfSpecimen(specimen) })),
  );
  const grounds = new Map(
    group.figures.flatMap((figure) =>
      figure.ground.map((ground) => [`${ground.id} ${ground.where}`, ground] as const),
    ),
  );
  return (
    <Section
      id="limits"
      title={words.sections.limits}
      fold={fold}
      margin={
        <>
          {group.conflicts.map((conflict) => (
            <MarginNote
              key={`${conflict.quantity} ${conflict.level}`}
              outcome={conflict.level === "alarm" ? "bar" : "attend"}
              title={`${words.apart}: ${words.quantities[conflict.quantity]}.`}
            >
              {conflictWords(conflict)} {words.keptApart}
            </MarginNote>
          ))}
          <details>
            <summary>{words.grounds}</summary>
            <ul>
              {[...grounds].map(([key, { title, where, standing }]) => (
                <li key={key}>
                  {title}
                  {where && `, ${where}`} ({standing})
                </li>
              ))}
            </ul>
          </details>
        </>
      }
    >
      <p>{words.limitsAbout}</p>
      <DataTable
        caption={words.tables.limits}
        captionHidden
        rows={limitRows(group.limits)}
        rowKey={(row) => row.key}
        columns={[
          { key: "quantity", label: words.quantity, cell: (row) => row.quantity },
          {
            key: "target",
            label: words.aim,
            right: true,
            cell: (row) => <span className={styles.nowrap}>{row.target}</span>,
          },
          {
            key: "warn",
            label: words.attendBeyond,
            right: true,
            cell: (row) => <span className={styles.nowrap}>{row.attend}</span>,
          },
          {
            key: "bar",
            label: words.barBeyond,
            right: true,
            cell: (row) => <span className={styles.nowrap}>{row.bar}</span>,
          },
          {
            key: "setBy",
            label: words.setBy,
            cell: (row) => {
              const setters = settersOf(group, row.key);
              if (setters.length === 0) return "–";
              return setters.length === specimens.length && setters.length > 1 ? (
                words.setByAll
              ) : (
                <span className="small">
                  <Numbers numbers={setters} most={3} />
                </span>
              );
            },
          },
        ]}
      />
    </Section>
  );
}
