/** What the form of an agreement offers: the clauses of the next version, each with what may be set in it. */
import { agreementTermsWords as words } from "#app/_words/en/agreement-terms.ts";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import type { ClauseId } from "#lib/agreements/clauses/library.ts";
import { isSetParameter, type ParameterName, parameterOf } from "#lib/agreements/clauses/parameters.ts";
import { valueWords } from "#lib/agreements/clauses/written-clause.ts";
import type { CourierReason } from "#lib/agreements/courier.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";

const language = clausesIn.en;

export type TermsField = {
  name: string;
  label: string;
  value: string;
  isOwn: boolean;
  hint: string;
  /** Value and word of each option; null where it is typed. */
  options: [string, string][] | null;
  isNumber: boolean;
};
export type TermsGroup = { number: number; heading: string; isStandard: boolean; fields: TermsField[] };

/** A parameter stands under the first clause that holds it. */
export function termsGroups(terms: CurrentTerms, courier: readonly CourierReason[] = []): TermsGroup[] {
  const taken = new Set<string>();
  return terms.clauses.map(({ id, number, isStandard, parameters }) => ({
    number,
    heading: language.clauses[id as ClauseId].heading,
    isStandard,
    fields: parameters.flatMap(({ name, value, standard }): TermsField[] => {
      const known = name as ParameterName;
      const parameter = parameterOf(known);
      if (standard === undefined || !isSetParameter(parameter) || taken.has(name)) return [];
      taken.add(name);
      const range = parameter.kind === "number" ? `; ${words.range(parameter.least, parameter.most)}` : "";
      const source = parameter.basis.title === "" ? parameter.basis.standing : parameter.basis.title;
      return [
        {
          name: `parameters.${name}`,
          label: language.labels[known],
          value: String(value ?? ""),
          isOwn: value !== standard,
          hint: `${words.standard(valueWords(known, standard, language))}${range} (${source})${
            known === "courier" && courier.length > 0 ? `; ${words.courierReasons(courier)}` : ""
          }`,
          options:
            parameter.kind === "choice"
              ? parameter.options.map((option) => [option, valueWords(known, option, language)])
              : null,
          isNumber: parameter.kind === "number",
        },
      ];
    }),
  }));
}

/** What is set otherwise than the standard: clause, parameter, here, standard. */
export function ownTerms(terms: CurrentTerms) {
  return terms.clauses.flatMap(({ number, parameters }) =>
    parameters.flatMap(({ name, value, standard }) =>
      standard === undefined || value === standard
        ? []
        : [
            {
              key: `${number} ${name}`,
              clause: number,
              label: language.labels[name as ParameterName] ?? name,
              here: valueWords(name as ParameterName, value, language),
              standard: valueWords(name as ParameterName, standard, language),
            },
          ],
    ),
  );
}
