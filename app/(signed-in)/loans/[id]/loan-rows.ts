/** The rows of the audit that belong to a loan's file. */
import type { RowOfRecord } from "#lib/desk/queries/happened.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";

/** @param takenBack certificates that are not on record any more */
export function rowsOfLoan(loan: LoanSheet, takenBack: readonly string[]): RowOfRecord[] {
  return [
    ...takenBack.map((key) => ({ table: "cover" as const, key })),
    { table: "loan", key: loan.id },
    ...loan.lines.map((line) => ({ table: "loan_line" as const, key: line.id })),
    ...loan.agreements.map((agreement) => ({ table: "agreement" as const, key: agreement.id })),
    ...(loan.covers ?? []).map((cover) => ({ table: "cover" as const, key: cover.id })),
    { table: "plan_step", key: loan.id, andBelow: true },
    ...loan.time.extensions.map((asked) => ({ table: "extension" as const, key: asked.id })),
    ...loan.time.recalls.map((recall) => ({ table: "recall" as const, key: recall.id })),
    ...loan.stages.map((stage) => ({ table: "stage" as const, key: stage.id })),
    ...loan.crates.map((crate) => ({ table: "crate" as const, key: crate.id, andBelow: true })),
    ...loan.crates.flatMap((crate) =>
      crate.events.map((event) => ({ table: "crate_event" as const, key: event.id })),
    ),
  ];
}
