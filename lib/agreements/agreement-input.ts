/**
 * What drawing up an agreement is told: the languages and what is set for this loan.
 * Null keeps what the newest version says. Only parameters that the library knows
 * and only values within their range are taken.
 */
import { z } from "zod";
import { clauseLanguages } from "#lib/agreements/clauses/language.ts";
import {
  clauseParameters,
  faultOfParameter,
  isSetParameter,
  type ParameterName,
} from "#lib/agreements/clauses/parameters.ts";
import { Id } from "#lib/platform/identity.ts";

const Parameters = z
  .record(z.string(), z.union([z.string().trim(), z.number()]))
  .check(({ value, issues }) => {
    for (const [name, said] of Object.entries(value)) {
      const parameter = Object.hasOwn(clauseParameters, name)
        ? clauseParameters[name as ParameterName]
        : null;
      const message =
        parameter !== null && isSetParameter(parameter)
          ? faultOfParameter(parameter, said)
          : "clause.no-parameter";
      if (message !== null) issues.push({ code: "custom", input: said, path: [name], message });
    }
  });

export const DrawUpInput = z.object({
  loanId: Id,
  languages: z
    .array(z.enum(clauseLanguages))
    .min(1)
    .max(2)
    .refine((languages) => new Set(languages).size === languages.length, "agreement.one-language-twice")
    .nullable()
    .default(null),
  parameters: Parameters.nullable().default(null),
});
export type DrawUpInput = z.infer<typeof DrawUpInput>;
