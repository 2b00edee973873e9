/**
 * What differs between two frozen versions of the terms, as paths and values that
 * papers put into words. Things that have a number or a code of their own are
 * compared under it, so that an added specimen is one difference and not a shift of
 * all rows. Texts of clauses are left out: they follow from their version and their
 * parameters. Invariants: terms that say the same differ in nothing, and turning the
 * two round turns each difference round.
 */
import type { AgreementTerms } from "#lib/agreements/frozen-terms.ts";
import type { TermsDifference } from "#lib/agreements/terms-annexes.ts";
import { canonicalText } from "#lib/platform/hash.ts";

type Json = TermsDifference["before"];
type Leaves = Map<string, { path: string[]; value: Json }>;

const asJson = (value: unknown): Json => value as Json;

/** Terms as leaves under paths; what stands in a list stands under its own key. */
function leavesOf(terms: AgreementTerms): Leaves {
  const leaves: Leaves = new Map();
  const put = (path: string[], value: unknown) => {
    leaves.set(JSON.stringify(path), { path, value: asJson(value) });
  };
  const putFields = (path: string[], fields: Readonly<Record<string, unknown>>) => {
    for (const [field, value] of Object.entries(fields)) put([...path, field], value);
  };
  const isCurrent = terms.format === "loan-agreement-3";
  put(["languages"], isCurrent ? terms.languages : [terms.language]);
  put(["title"], terms.loan.title);
  for (const part of ["lender", "borrower", "purpose", "term", "venue"] as const)
    putFields([part], terms[part]);
  put(["opensOn"], isCurrent ? terms.opensOn : null);
  put(["cover", "needed"], terms.cover.needed);
  put(["cover", "stated"], terms.cover.stated);
  for (const { accessionNumber, ...row } of terms.schedule) {
    put(["specimen", accessionNumber], row.title);
    putFields(["specimen", accessionNumber], row);
  }
  putFields(["limits"], terms.groupLimits.limits);
  for (const certificate of terms.cover.certificates)
    put(["certificate", certificate.policyNumber, certificate.startsAt], certificate.amount);
  for (const crate of terms.crates) put(["crate", crate.code], crate.contents);
  for (const { direction, departsOn, carrier, arrivesOn } of terms.stages)
    put(["stage", direction, departsOn], [carrier, arrivesOn]);
  for (const { office, decidedOn, conditions } of terms.conditions)
    put(["condition", office, decidedOn], conditions);
  if (isCurrent) {
    for (const clause of terms.clauses) {
      put(["clause", clause.id], clause.version);
      for (const { name, value, standard } of clause.parameters)
        if (standard !== undefined) put(["parameter", name], value);
    }
    put(["costing"], terms.annexes.costing?.total ?? null);
  } else for (const clause of terms.clauses) put(["clause", clause.id], 0);
  return leaves;
}

/** A thing that is wholly new or wholly gone is said once, under its own key. */
function isWithin(path: readonly string[], whole: ReadonlySet<string>): boolean {
  return path.length === 3 && whole.has(JSON.stringify(path.slice(0, 2)));
}

export function termsDifference(before: AgreementTerms, after: AgreementTerms): TermsDifference[] {
  const [old, young] = [leavesOf(before), leavesOf(after)];
  const keys = [...new Set([...old.keys(), ...young.keys()])];
  const whole = new Set(keys.filter((key) => old.has(key) !== young.has(key)));
  return keys.flatMap((key) => {
    const [from, to] = [old.get(key), young.get(key)];
    const path = from?.path ?? to?.path ?? [];
    const [was, is] = [from?.value ?? null, to?.value ?? null];
    if (isWithin(path, whole) || canonicalText(was) === canonicalText(is)) return [];
    return [{ path, before: was, after: is }];
  });
}
