/**
 * Issuing papers of a loan: the content is written from the records of this moment,
 * frozen as canonical text with its hash, and given a code that nobody can guess. A
 * version never changes; what has changed since is a new version. A paper that would
 * say what its newest version in this language says is not issued again.
 */
import { randomBytes } from "node:crypto";
import { z } from "zod";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { codeLetters, codeOf } from "#lib/papers/check-address.ts";
import { paperLanguages } from "#lib/papers/languages.ts";
import { kindsOfPaper, paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperCaseOf } from "#lib/papers/queries/paper-case.ts";
import { languagesForLoan } from "#lib/papers/queries/paper-languages.ts";
import { isSaidAlready } from "#lib/papers/superseded.ts";
import { command } from "#lib/people/command.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export const IssuePaperInput = z.object({
  loanId: Id,
  kind: z.enum(paperKinds),
  /** A stage, a crate on a stage; several are issued in one act. */
  subjects: z.array(z.string().max(80)).min(1).max(400),
  /** Left out, it is the borrower's first one that papers speak, or English. */
  language: z.enum(paperLanguages).optional(),
});
export type IssuePaperInput = z.infer<typeof IssuePaperInput>;

export type IssuedNow = { id: Id; subject: string; version: number }[];

export const issuePaper = command("issuePaper", IssuePaperInput, async (work, input): Promise<IssuedNow> => {
  const { transaction, viewer, now } = work;
  const { kind } = input;
  const loan = await takeLoan(work, input.loanId, "issuePaper");
  const entry = kindsOfPaper[kind];
  if (!entry.issuedBy.some((role) => viewer.roles.includes(role)))
    throw new Refusal("forbidden", "permission.act", { act: "issuePaper" });
  const paperCase = await paperCaseOf(transaction, loan.id);
  const possible = new Set(entry.subjects(paperCase));
  const subjects = [...new Set(input.subjects)];
  if (subjects.some((subject) => !possible.has(subject))) throw new Refusal("conflict", "paper.not-now");
  const earlier = await transaction.issuedPaper.findMany({
    where: { loanId: loan.id, kind, subject: { in: subjects } },
    orderBy: { version: "asc" },
    select: { subject: true, version: true, content: true },
  });
  const language = input.language ?? (await languagesForLoan(transaction, loan.id))[0];
  const rows = subjects.flatMap((subject) => {
    const before = earlier.filter((row) => row.subject === subject);
    const version = (before.at(-1)?.version ?? 0) + 1;
    const content = canonicalText(
      entry.content(paperCase, subject, {
        language,
        version,
        issuedAt: now.toISOString(),
        issuedBy: viewer.name,
        loan: { number: paperCase.loan.number, title: paperCase.loan.title },
      }),
    );
    if (isSaidAlready(before, content)) return [];
    return [
      {
        id: newId(),
        loanId: loan.id,
        kind,
        subject,
        version,
        content,
        sha256: sha256Hex(content),
        code: codeOf(randomBytes(codeLetters)),
        issuedBy: viewer.name,
        issuedAt: now,
      },
    ];
  });
  if (rows.length === 0) throw new Refusal("conflict", "paper.unchanged");
  await transaction.issuedPaper.createMany({ data: rows });
  return rows.map(({ id, subject, version }) => ({ id, subject, version }));
});
