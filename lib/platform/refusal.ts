/**
 * A refusal is an expected no: the person asked for something that the rules,
 * the data or the permissions do not allow. It is thrown, so the transaction
 * around it rolls back, and it carries a code and parameters, never a sentence:
 * sentences are made at the edge, in the reader's language.
 *
 * "Does not exist" and "not yours" are the same refusal, so that nobody learns
 * from an answer what they may not know.
 */
export const refusalKinds = ["invalid", "unauthenticated", "forbidden", "not-found", "conflict"] as const;
export type RefusalKind = (typeof refusalKinds)[number];

/** What is wrong with one field: where it stands and a sentence or a catalogue code. */
export type FieldIssue = { path: string; message: string };

export type RefusalParameters = Record<string, string | number | boolean | null>;

export class Refusal extends Error {
  readonly kind: RefusalKind;
  /** A stable code of the form `room.what-is-wrong`, the key of the sentence in the catalogue. */
  readonly reason: string;
  readonly parameters: RefusalParameters;
  readonly issues: readonly FieldIssue[];

  constructor(
    kind: RefusalKind,
    reason: string,
    parameters: RefusalParameters = {},
    issues: readonly FieldIssue[] = [],
  ) {
    super(`${kind}: ${reason}`);
    this.name = "Refusal";
    this.kind = kind;
    this.reason = reason;
    this.parameters = parameters;
    this.issues = issues;
  }
}

/** The one answer for what is not there and for what is not yours. */
export function notFound(what: string): Refusal {
  return new Refusal("not-found", "record.not-found", { what });
}
