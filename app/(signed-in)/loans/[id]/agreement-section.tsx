/** The versions of the agreement with their hashes and signatures; the newest can be drawn up anew or signed. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { type Fact, Facts } from "#app/_parts/facts.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { agreementWords as words } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { formatMoment } from "#app/_words/format.ts";
import { drawUp, sign } from "#app/(signed-in)/loans/[id]/actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { SignForm } from "#app/(signed-in)/loans/[id]/sign-form.tsx";
import type { AgreementSheet, LoanSheet } from "#lib/loans/queries.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

const beforeRelease: readonly LoanState[] = ["accepted", "agreed", "preparing"];
const parties = ["lender", "borrower"] as const;

function SignatureOf({ agreement, party }: { agreement: AgreementSheet; party: string }) {
  const signature = agreement.signatures.find((one) => one.party === party);
  if (!signature) return <StateMark outcome="neutral">{words.unsigned}</StateMark>;
  return (
    <>
      {signature.signerName}, {signature.signerRole}, {formatMoment(signature.signedAt)}
    </>
  );
}

function Version({
  loanId,
  agreement,
  newest,
}: {
  loanId: string;
  agreement: AgreementSheet;
  newest: boolean;
}) {
  return (
    <div className={styles.block}>
      <h3>{words.versionOf(agreement.version)}</h3>
      {!newest && <p className="quiet">{words.superseded}</p>}
      <Facts
        facts={[
          [words.drawnUp, `${formatMoment(agreement.drawnUpAt)}, ${agreement.drawnUpBy}`],
          [
            words.hash,
            <span key="hash" className={`mono ${styles.hash}`}>
              {agreement.sha256}
            </span>,
          ],
          ...parties.map(
            (party) =>
              [words.parties[party], <SignatureOf key={party} agreement={agreement} party={party} />] as Fact,
          ),
        ]}
      />
      {agreement.terms !== null && (
        <p>
          <a href={`/loans/${loanId}/agreement/${agreement.version}`}>{words.pdf}</a>
        </p>
      )}
    </div>
  );
}

export function AgreementSection({ viewer, loan }: { viewer: Viewer; loan: LoanSheet }) {
  const [newest, ...earlier] = loan.agreements;
  const isOpen = beforeRelease.includes(loan.state);
  const subject = { institutionId: loan.borrower.id };
  const party = isBorrower(viewer) ? "borrower" : "lender";
  const mayDraw = isOpen && mayDo(viewer, "drawUpAgreement");
  const hasSigned = newest?.signatures.some((signature) => signature.party === party) ?? false;
  const maySign = isOpen && newest && !hasSigned && mayDo(viewer, "signAgreement", subject);
  return (
    <Section
      id="agreement"
      title={loanWords.sections.agreement}
      margin={mayDraw && newest && <MarginNote title={words.drawUpAgain}>{words.drawUpCaution}</MarginNote>}
    >
      {!newest && <EmptyState>{isOpen ? words.none : words.notYet}</EmptyState>}
      {newest && <Version loanId={loan.id} agreement={newest} newest />}
      {maySign && (
        <div className={`no-print ${styles.block}`}>
          <SignForm
            action={sign.bind(null, loan.id, newest.id, newest.sha256)}
            agreement={{ version: newest.version, sha256: newest.sha256 }}
            party={words.parties[party]}
            who={viewer.name}
          />
        </div>
      )}
      {mayDraw && (
        <div className="no-print">
          <ActForm
            action={drawUp.bind(null, loan.id)}
            label={newest ? words.drawUpAgain : words.drawUp}
            button={newest ? words.drawUpAgain : words.drawUp}
            look={newest ? "outline" : undefined}
          />
        </div>
      )}
      {earlier.length > 0 && (
        <details>
          <summary>{words.earlier(earlier.length)}</summary>
          {earlier.map((agreement) => (
            <Version key={agreement.id} loanId={loan.id} agreement={agreement} newest={false} />
          ))}
        </details>
      )}
    </Section>
  );
}
