/**
 * What may be done with a specimen that comes from several donors: in every
 * respect the strictest of what they allowed, and whose word made it so. A
 * withdrawn or expired consent allows nothing. A donor without a consent record,
 * and a specimen without a known donor, leave everything unknown; unknown never
 * counts as granted.
 */
import type { DateText } from "#lib/platform/dates.ts";
import { type ConsentState, consentStatusOn } from "#lib/provenance/consent-status.ts";
import {
  type Answer,
  type AudienceLimit,
  type ConsentFacts,
  type Disposition,
  type ProvenanceFacts,
  type Scope,
  scopes,
} from "#lib/provenance/schema.ts";

/** Something one donor's word decides. Null: a donor without a consent record, or nobody known. */
export type DecidedBy<Value> = { value: Value; donorCode: string | null };

export type StrictestConsent = {
  answers: Record<Scope, { answer: Answer; donorCode: string | null }>;
  /** The narrowest audience that is known, and whether a donor's limit is not known. */
  audience: { limit: AudienceLimit; donorCode: string | null; unknown: boolean };
  /** Countries on every list that was stated; null when nobody stated a list. Empty means nowhere. */
  territoriesAllowed: string[] | null;
  territoriesRefused: string[];
  /** The earliest day after which one of the consents no longer holds. */
  validUntil: DecidedBy<DateText> | null;
  reviewDueOn: DecidedBy<DateText> | null;
  /** The earliest day by which remains are owed back, and how. */
  dispositionDue: DecidedBy<{ disposition: Disposition; dueOn: DateText }> | null;
  nonCommercialOnly: DecidedBy<true> | null;
  identifiable: DecidedBy<true> | null;
  /** Donors whose consent does not count on the day, with the reason. */
  notInForce: { donorCode: string; state: ConsentState }[];
};

/** From strictest to mildest: a no, then a question that was never put, then a gap in the papers. */
const answerOrder: readonly Answer[] = ["refused", "not asked", "unknown", "granted"];
const audienceOrder: readonly AudienceLimit[] = ["professionals only", "enrolled students", "anyone"];

export function stricterAnswer(first: Answer, second: Answer): Answer {
  return answerOrder.indexOf(first) <= answerOrder.indexOf(second) ? first : second;
}

/** What one consent answers on a day. */
export function answerOn(consent: ConsentFacts, scope: Scope, day: DateText): Answer {
  return consentStatusOn(consent, day).inForce ? consent.answers[scope] : "refused";
}

/** Countries on all lists that were stated; null when none was. */
export function commonTerritories(lists: readonly (readonly string[])[]): string[] | null {
  const [first, ...others] = lists.filter((list) => list.length > 0);
  if (!first) return null;
  return [...new Set(first)].filter((country) => others.every((list) => list.includes(country))).sort();
}

function earliest<Value>(
  consents: readonly ConsentFacts[],
  pick: (consent: ConsentFacts) => { day: DateText; value: Value } | null,
): DecidedBy<Value> | null {
  let found: { day: DateText; decided: DecidedBy<Value> } | null = null;
  for (const consent of consents) {
    const candidate = pick(consent);
    if (candidate && (found === null || candidate.day < found.day)) {
      found = { day: candidate.day, decided: { value: candidate.value, donorCode: consent.donorCode } };
    }
  }
  return found?.decided ?? null;
}

function anyone(
  consents: readonly ConsentFacts[],
  holds: (consent: ConsentFacts) => boolean,
): DecidedBy<true> | null {
  const consent = consents.find(holds);
  return consent ? { value: true, donorCode: consent.donorCode } : null;
}

const onDay = (day: DateText | null) => (day === null ? null : { day, value: day });

export function strictestConsent(
  facts: Pick<ProvenanceFacts, "consents" | "donorsWithoutConsent">,
  day: DateText,
): StrictestConsent {
  const { consents } = facts;
  const somebodyUnknown = facts.donorsWithoutConsent > 0 || consents.length === 0;

  const answerOf = (scope: Scope) => {
    let strictest: { answer: Answer; donorCode: string | null } = {
      answer: somebodyUnknown ? "unknown" : "granted",
      donorCode: somebodyUnknown ? null : (consents[0]?.donorCode ?? null),
    };
    for (const consent of consents) {
      const answer = answerOn(consent, scope, day);
      if (answer !== strictest.answer && stricterAnswer(answer, strictest.answer) === answer) {
        strictest = { answer, donorCode: consent.donorCode };
      }
    }
    return strictest;
  };

  const limited = consents
    .filter((consent) => consent.audience !== "unknown")
    .sort(
      (first, second) => audienceOrder.indexOf(first.audience) - audienceOrder.indexOf(second.audience),
    )[0];

  return {
    answers: Object.fromEntries(
      scopes.map((scope) => [scope, answerOf(scope)]),
    ) as StrictestConsent["answers"],
    audience: {
      limit: limited?.audience ?? "unknown",
      donorCode: limited?.donorCode ?? null,
      unknown: somebodyUnknown || consents.some((consent) => consent.audience === "unknown"),
    },
    territoriesAllowed: commonTerritories(consents.map((consent) => consent.territoriesAllowed)),
    territoriesRefused: [...new Set(consents.flatMap((consent) => consent.territoriesRefused))].sort(),
    validUntil: earliest(consents, (consent) => onDay(consent.validUntil)),
    reviewDueOn: earliest(consents, (consent) => onDay(consent.reviewDueOn)),
    dispositionDue: earliest(consents, ({ disposition, dispositionDueOn: dueOn }) =>
      dueOn === null ? null : { day: dueOn, value: { disposition, dueOn } },
    ),
    nonCommercialOnly: anyone(consents, (consent) => consent.nonCommercialOnly),
    identifiable: anyone(consents, (consent) => consent.identifiable),
    notInForce: consents.flatMap((consent) => {
      const { state, inForce } = consentStatusOn(consent, day);
      return inForce ? [] : [{ donorCode: consent.donorCode, state }];
    }),
  };
}
