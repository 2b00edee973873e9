/** The versions of the agreement with their hashes and signatures; the newest can be drawn up anew or signed. */

import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { type Fact, Facts } from "#app/_parts/facts.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { agreementTermsWords } from "#app/_words/en/agreement-terms.ts";
import { agreementWords as words } from "#app/_words/en/loan-acts.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { signingWords } from "#app/_words/en/mandates.ts";
import { papersWords } from "#app/_words/en/papers.ts";
import { countersign, drawUp, sign } from "#app/(signed-in)/loans/[id]/actions.ts";
import { CountersignForm } from "#app/(signed-in)/loans/[id]/agreement/countersign-form.tsx";
import { DrawUpForm } from "#app/(signed-in)/loans/[id]/agreement/draw-up-form.tsx";
import drawnStyles from "#app/(signed-in)/loans/[id]/agreement/drawn-name.module.css";
import { SignForm } from "#app/(signed-in)/loans/[id]/agreement/sign-form.tsx";
import { termsGroups } from "#app/(signed-in)/loans/[id]/agreement/terms-choices.ts";
import { AmendmentOf, OwnTerms } from "#app/(signed-in)/loans/[id]/agreement/terms-marks.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import { type CurrentTerms, findTerms } from "#lib/agreements/frozen-terms.ts";
import { strokeBox } from "#lib/agreements/signing.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { findTermsDraft, type TermsDraft } from "#lib/loans/queries/terms-now.ts";
import type { AgreementSheet, LoanSheet } from "#lib/loans/queries.ts";
import { paperLanguages } from "#lib/papers/languages.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

const parties = ["lender", "borrower"] as const;

function SignatureOf({
  loanId,
  agreement,
  party,
}: {
  loanId: string;
  agreement: AgreementSheet;
  party: string;
}) {
  const signature = agreement.signatures.find((one) => one.party === party);
  if (!signature) return <StateMark outcome="neutral">{words.unsigned}</StateMark>;
  return (
    <>
      {signature.signerName}, {signature.signerRole}, <Moment at={signature.signedAt} long />,{" "}
      {signingWords.methods[signature.method]}
      {signature.strokes !== "" && (
        <svg
          className={drawnStyles.shown}
          viewBox={`0 0 ${strokeBox.width} ${strokeBox.height}`}
          aria-hidden="true"
        >
          <path d={signature.strokes} className={drawnStyles.strokes} />
        </svg>
      )}
      {signature.file && agreement.terms !== null && (
        <>
          {": "}
          <a href={`/loans/${loanId}/signed/${signature.file.id}`}>{signingWords.seeFile}</a>
          <span className={`quiet mono ${styles.hash}`} style={{ display: "block" }}>
            {signingWords.fileHash}: {signature.file.sha256}
          </span>
        </>
      )}
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
  const frozen = agreement.terms === null ? null : findTerms(agreement.terms);
  const terms = frozen?.format === "loan-agreement-3" ? frozen : null;
  return (
    <div className={styles.block}>
      <h3>{words.versionOf(agreement.version)}</h3>
      {!newest && <p className="quiet">{words.superseded}</p>}
      <Facts
        facts={[
          [
            words.drawnUp,
            <span key="drawn">
              <Moment at={agreement.drawnUpAt} long />, {agreement.drawnUpBy}
            </span>,
          ],
          [
            words.hash,
            <span key="hash" className={`mono ${styles.hash}`}>
              {agreement.sha256}
            </span>,
          ],
          ...(terms === null ? [] : [languagesFact(terms)]),
          ...parties.map(
            (party) =>
              [
                words.parties[party],
                <SignatureOf key={party} loanId={loanId} agreement={agreement} party={party} />,
              ] as Fact,
          ),
        ]}
      />
      {agreement.terms !== null && (
        <p>
          <a href={`/loans/${loanId}/agreement/${agreement.version}`}>{words.pdf}</a>,{" "}
          <a href={`/loans/${loanId}/agreement/${agreement.version}?size=letter`}>
            {papersWords.sizes.letter}
          </a>
        </p>
      )}
      {terms !== null && (
        <>
          <OwnTerms terms={terms} />
          <AmendmentOf terms={terms} />
        </>
      )}
    </div>
  );
}

const languageName = (code: string) => agreementTermsWords.languages[code as "en"] ?? code;

function languagesFact({ languages }: CurrentTerms): Fact {
  return [agreementTermsWords.language, agreementTermsWords.languagesOf(languages.map(languageName))];
}

/** The next version, with what may be chosen for it. A language rules once papers speak it. */
function DrawUp({ loanId, draft, versions }: { loanId: string; draft: TermsDraft; versions: number }) {
  const { terms, courier } = draft;
  const ruling = clauseLanguages.filter((code) => (paperLanguages as readonly string[]).includes(code));
  return (
    <div className="no-print">
      <AmendmentOf terms={terms} isPlanned />
      {courier.length > 0 && (
        <p>
          {agreementTermsWords.courierProposed(courier)}{" "}
          <Link href="/centre#practice">{agreementTermsWords.courierFigures}</Link>
        </p>
      )}
      <DrawUpForm
        action={drawUp.bind(null, loanId)}
        button={versions > 0 ? words.drawUpAgain : words.drawUp}
        versions={versions}
        languages={{ ruling, second: clauseLanguages }}
        chosen={terms.languages}
        groups={termsGroups(terms, courier)}
      />
    </div>
  );
}

export async function AgreementSection({
  viewer,
  loan,
  fold,
}: {
  viewer: Viewer;
  loan: LoanSheet;
  fold?: string | undefined;
}) {
  const [newest, ...earlier] = loan.agreements;
  const isOpen = statesInPreparation.includes(loan.state);
  const subject = { institutionId: loan.borrower.id };
  const party = isBorrower(viewer) ? "borrower" : "lender";
  const mayDraw = isOpen && mayDo(viewer, "drawUpAgreement");
  const next = mayDraw ? await findTermsDraft(viewer, loan.id) : null;
  const hasSigned = newest?.signatures.some((signature) => signature.party === party) ?? false;
  const unsigned = parties.filter((one) => !newest?.signatures.some((signature) => signature.party === one));
  const maySign = isOpen && newest && !hasSigned && mayDo(viewer, "signAgreement", subject);
  return (
    <Section
      id="agreement"
      title={loanWords.sections.agreement}
      fold={fold}
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
      {isOpen && newest && unsigned.length > 0 && mayDo(viewer, "countersignAgreement") && (
        <div className={`no-print ${styles.block}`}>
          <CountersignForm
            action={countersign.bind(null, loan.id, newest.id, newest.sha256)}
            open={unsigned}
          />
        </div>
      )}
      {next && <DrawUp loanId={loan.id} draft={next} versions={loan.agreements.length} />}
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
