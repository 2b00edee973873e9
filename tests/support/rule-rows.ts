/** Rows of a rule's table: what is said of specimen and request, and what the rule of that number answers. */

import type { Licence, VenueFacts } from "#lib/people/schema.ts";
import type { ConsentFacts, PermitInput, TitleInput } from "#lib/provenance/schema.ts";
import { type LegalFacts, nothingKnownInLaw } from "#lib/specimens/schema.ts";
import { ruleEntry } from "#lib/suitability/rules/book.ts";
import type { LentSpecimen, RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

export type Said = {
  legal?: Partial<LegalFacts>;
  specimen?: Partial<LentSpecimen>;
  venue?: Partial<VenueFacts>;
  request?: Partial<Omit<RequestFacts, "venue">>;
  /** Of each donor what is otherwise; none for a specimen whose donor is not known. */
  consents?: Partial<ConsentFacts>[];
  permits?: Partial<PermitInput>[];
  title?: TitleInput | null;
  tariffCountries?: string[];
};
/** The answer: an outcome, or absent where the rule does not speak. */
export type RuleRow = [what: string, rule: string, said: Said, answer: Outcome | "absent", fact?: string];

export const inPublic = { purpose: "exhibition", audience: "general public" } as const;
export const forMoney = { ...inPublic, paidAdmission: true } as const;
export const animal = { human: false, scientificName: "Equus caballus", ageBand: null } as const;

export const aLicenceFact = (kind: Licence["kind"], said: Partial<Licence> = {}): Licence => ({
  kind,
  authority: "Inspectorate",
  number: "L 77",
  validFrom: "2026-01-01",
  validUntil: "2028-01-01",
  ...said,
});

export function caseOf({ legal, specimen, consents, permits, title, tariffCountries }: Said): SpecimenCase {
  const plain = aSpecimenCase();
  const isAnimal = specimen?.human === false;
  return aSpecimenCase({
    specimen: { ...specimen, legal: { ...nothingKnownInLaw, ...legal } },
    provenance: {
      consents: isAnimal ? [] : (consents ?? [{}]).map((one) => aConsentFact(one)),
      donorsWithoutConsent: 0,
      permits: (permits ?? []).map((one) => ({
        kind: "import",
        number: "P 1",
        authority: "Authority",
        territories: ["GB", "IE", "US", "FR", "DE", "NO", "SE"],
        validFrom: "2026-01-01",
        validUntil: "2028-01-01",
        ...one,
      })),
      title: title === undefined ? plain.provenance.title : title,
    },
    ...(tariffCountries === undefined ? {} : { tariffCountries }),
  });
}

export const requestOf = ({ venue, request }: Said, countryCode = "NO"): RequestFacts =>
  aRequestFact({ ...request, venue: aVenueFact({ countryCode, ...venue }) });

/** The strictest answer that a rule gives, and its facts. */
export function answerOf(findings: readonly Finding[], rule: string) {
  const own = findings.filter((finding) => finding.rule === rule);
  for (const { outcome, fact } of own)
    if (!ruleEntry(rule).outcomes.includes(outcome))
      throw new RangeError(`The book does not give ${rule} the outcome ${outcome} (${fact}).`);
  const outcome = (["bar", "attend", "clear"] as const).find((one) =>
    own.some((finding) => finding.outcome === one),
  );
  return { answer: outcome ?? "absent", facts: own.map(({ fact }) => fact) };
}
