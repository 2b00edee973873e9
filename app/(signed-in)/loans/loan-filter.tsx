/** The fields above the list of loans; a plain form, so the address holds the search. */
import Link from "next/link";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { loanPhases } from "#lib/loans/queries/list-loans.ts";

export function LoanFilterForm({
  search,
  borrowers,
}: {
  search: Search;
  borrowers: readonly { id: string; name: string }[];
}) {
  const filtered = ["q", "phase", "borrower", "overdue"].some((name) => parameterOf(search, name));
  return (
    <form
      action="/loans"
      className={`no-print ${styles.filter}`}
      aria-label={words.find}
      // Another search is another form: what was typed into the one before does not stay in it.
      key={JSON.stringify(search)}
    >
      <FieldGrid>
        <TextField label={words.search} name="q" defaultValue={parameterOf(search, "q")} />
        <SelectField
          label={words.phase}
          name="phase"
          defaultValue={parameterOf(search, "phase") ?? ""}
          empty={words.anyPhase}
          options={loanPhases.map((phase) => [phase, words.phases[phase]] as const)}
        />
        {borrowers.length > 0 && (
          <SelectField
            label={words.borrower}
            name="borrower"
            defaultValue={parameterOf(search, "borrower") ?? ""}
            empty={words.anyBorrower}
            options={borrowers.map(({ id, name }) => [id, name] as const)}
          />
        )}
      </FieldGrid>
      <div className={styles.row}>
        <CheckField
          label={words.onlyOverdue}
          name="overdue"
          value="yes"
          defaultChecked={parameterOf(search, "overdue") !== undefined}
        />
        <FormActions>
          <button type="submit" className="outline">
            {words.find}
          </button>
          {filtered && <Link href="/loans">{words.clear}</Link>}
        </FormActions>
      </div>
    </form>
  );
}
