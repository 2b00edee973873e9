/** One form as it stands: who gave it, what it allows, and its limits. */
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Unknown } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { formatDate } from "#app/_words/format.ts";
import { ConsentStateMark, ScopesTable } from "#app/(signed-in)/donors/consent-marks.tsx";
import type { ConsentRecord } from "#lib/provenance/queries.ts";

/** What a form is called among others. */
export function formName({ signedOn }: ConsentRecord): string {
  return signedOn === null ? words.formUndated : words.formOf(formatDate(signedOn));
}

export function ConsentSheet({ consent }: { consent: ConsentRecord }) {
  const name = formName(consent);
  return (
    <>
      <Facts
        facts={[
          !consent.superseded && [words.state, <ConsentStateMark key="state" status={consent.status} />],
          [words.basis, words.bases[consent.basis]],
          [words.signedOn, <DateText key="signed" date={consent.signedOn} />],
          [words.formVersion, consent.formVersion || <Unknown key="version" />],
          [words.witnessCount, consent.witnessCount ?? <Unknown key="witnesses" />],
          [words.evidencePlace, consent.evidencePlace],
          [
            words.verified,
            consent.verifiedOn === null ? (
              words.notVerified
            ) : (
              <span key="verified">
                <DateText date={consent.verifiedOn} />
                {consent.verifiedBy && `, ${words.verifiedBy} ${consent.verifiedBy}`}
              </span>
            ),
          ],
          [words.recordedAt, <Moment key="recorded" at={consent.recordedAt.toISOString()} long />],
        ]}
      />
      <ScopesTable answers={consent.answers} caption={`${words.scopesCaption}: ${name}`} />
      <h3>{words.limits}</h3>
      <Facts
        facts={[
          [words.audience, words.audiences[consent.audience]],
          [
            words.territoriesAllowed,
            consent.territoriesAllowed.length > 0 ? consent.territoriesAllowed.join(", ") : words.noList,
          ],
          consent.territoriesRefused.length > 0 && [
            words.territoriesRefused,
            consent.territoriesRefused.join(", "),
          ],
          [
            words.validUntil,
            consent.validUntil === null ? words.noEnd : <DateText key="until" date={consent.validUntil} />,
          ],
          consent.reviewDueOn !== null && [
            words.review,
            <DateText key="review" date={consent.reviewDueOn} />,
          ],
          [words.commerce, consent.nonCommercialOnly ? words.yes : words.no],
          [words.identifiable, consent.identifiable ? words.yes : words.no],
          [
            words.disposition,
            <span key="disposition">
              {words.dispositions[consent.disposition]}
              {consent.dispositionDueOn !== null && (
                <>
                  , {words.dispositionDue} <DateText date={consent.dispositionDueOn} />
                </>
              )}
            </span>,
          ],
          consent.superseded &&
            consent.withdrawalReceivedOn !== null && [
              words.withdrawalReceived,
              <DateText key="received" date={consent.withdrawalReceivedOn} />,
            ],
          consent.superseded &&
            consent.withdrawalEffectiveOn !== null && [
              words.withdrawalEffective,
              <DateText key="effective" date={consent.withdrawalEffectiveOn} />,
            ],
        ]}
      />
    </>
  );
}
