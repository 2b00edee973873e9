/** The way from an earlier loan to a slip like it. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { TextField } from "#app/_parts/fields.tsx";
import { askAgainWords as words } from "#app/_words/en/borrow.ts";
import { askLikeLastTime } from "#app/(signed-in)/slip/actions.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export function AskAgain({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const isTheirs = mayDo(viewer, "askAgain", { institutionId: loan.borrower.id });
  if (!isTheirs || loan.submittedAt === null) return null;
  return (
    <details className="no-print">
      <summary>{words.title}</summary>
      <ActForm
        action={askLikeLastTime.bind(null, loan.id)}
        label={words.title}
        button={words.button}
        look="outline"
      >
        <p>{words.about}</p>
        <TextField label={words.startsOn} hint={words.startsOnHint} name="startsOn" type="date" />
      </ActForm>
    </details>
  );
}
