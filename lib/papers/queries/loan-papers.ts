/**
 * Reads of issued papers: those of a loan, in the viewer's sight, with what can be
 * issued now; one of them with its content; and what anyone learns who holds a paper.
 */
import { findTerms } from "#lib/agreements/frozen-terms.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { agreementOfCode, codeLetters } from "#lib/papers/check-address.ts";
import type { IssuedPaper } from "#lib/papers/issued-paper.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { numberedCrates, type PaperCase, partsOfSubject } from "#lib/papers/paper-case.ts";
import { isPaperKind, kindsOfPaper, type PaperKind, paperKinds } from "#lib/papers/paper-kinds.ts";
import { paperCaseOf } from "#lib/papers/queries/paper-case.ts";
import { languagesForLoan } from "#lib/papers/queries/paper-languages.ts";
import { paperPicturesOf } from "#lib/papers/queries/paper-pictures.ts";
import { groupBy } from "#lib/papers/row-groups.ts";
import { languageOf, versionsThatHold } from "#lib/papers/superseded.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import type { Direction } from "#lib/shipments/schema.ts";

/** What a subject is called: the way of its stage, the code of its crate. */
export type SubjectName = { direction: Direction | null; crate: string | null };

export type PaperRow = SubjectName & {
  id: string;
  kind: PaperKind;
  subject: string;
  version: number;
  language: string;
  /** Whether no newer version takes its place; the same in another language does not. */
  isNewest: boolean;
  issuedAt: string;
  issuedBy: string;
  sha256: string;
};

export type IssuableKind = { kind: PaperKind; subjects: (SubjectName & { subject: string })[] };

function subjectName(paperCase: PaperCase, subject: string): SubjectName {
  const { stageId, crateId } = partsOfSubject(subject);
  return {
    direction: paperCase.stages.find(({ id }) => id === stageId)?.direction ?? null,
    crate: paperCase.crates.find(({ id }) => id === crateId)?.code ?? null,
  };
}

const mayRead = (viewer: Viewer, kind: PaperKind, institutionId: string) => {
  const { sight } = kindsOfPaper[kind];
  return sight === null || maySee(viewer, sight, { institutionId });
};

/** Kinds in the order of the table; of each subject the newest first; the borrower's languages first. */
export async function papersOfLoan(
  viewer: Viewer,
  loanId: string,
): Promise<{ papers: PaperRow[]; issuable: IssuableKind[]; languages: PaperLanguage[] }> {
  const institutionId = await requireLoanFile(viewer, loanId);
  const paperCase = await paperCaseOf(database(), loanId);
  const rows = await database().issuedPaper.findMany({
    where: { loanId },
    orderBy: [{ subject: "asc" }, { version: "desc" }],
    select: {
      id: true,
      kind: true,
      subject: true,
      version: true,
      issuedAt: true,
      issuedBy: true,
      sha256: true,
      content: true,
    },
  });
  const holding = new Set(
    groupBy(rows, ({ kind, subject }) => `${kind}/${subject}`).flatMap(({ rows: versions }) =>
      versionsThatHold(versions).map(({ id }) => id),
    ),
  );
  const crateOrder = new Map(numberedCrates(paperCase).map(({ code, number }) => [code, number]));
  const placeOf = ({ kind, crate, direction }: PaperRow) =>
    paperKinds.indexOf(kind) * 1e6 +
    (direction === "home" ? 1e5 : 0) +
    (crate === null ? 0 : (crateOrder.get(crate) ?? 0));
  const papers = rows
    .flatMap(({ kind, issuedAt, content, ...row }): PaperRow[] =>
      isPaperKind(kind) && mayRead(viewer, kind, institutionId)
        ? [
            {
              ...row,
              ...subjectName(paperCase, row.subject),
              kind,
              language: languageOf(content),
              isNewest: holding.has(row.id),
              issuedAt: issuedAt.toISOString(),
            },
          ]
        : [],
    )
    .sort((first, second) => placeOf(first) - placeOf(second) || second.version - first.version);
  const mayIssue = mayDo(viewer, "issuePaper", { institutionId });
  const issuable = paperKinds
    .filter((kind) => mayIssue && kindsOfPaper[kind].issuedBy.some((role) => viewer.roles.includes(role)))
    .map((kind) => ({
      kind,
      subjects: kindsOfPaper[kind]
        .subjects(paperCase)
        .map((subject) => ({ subject, ...subjectName(paperCase, subject) })),
    }))
    .filter(({ subjects }) => subjects.length > 0);
  return { papers, issuable, languages: await languagesForLoan(database(), loanId) };
}

export type PaperToPrint = {
  paper: Omit<IssuedPaper, "checkAddress">;
  code: string;
  lender: string;
  pictures: Awaited<ReturnType<typeof paperPicturesOf>>;
  fileName: string;
};

/** @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function getPaper(viewer: Viewer, loanId: string, paperId: string): Promise<PaperToPrint> {
  const institutionId = await requireLoanFile(viewer, loanId);
  if (!Id.safeParse(paperId).success) throw notFound("paper");
  const row = await database().issuedPaper.findFirst({
    where: { id: paperId, loanId },
    include: { loan: { select: { number: true } } },
  });
  if (!row || !isPaperKind(row.kind) || !mayRead(viewer, row.kind, institutionId)) throw notFound("paper");
  const { kind, content, sha256, code, version, loan } = row;
  const name = `${loan.number} ${kind} ${version}`;
  return {
    paper: { kind, content, sha256 },
    code,
    lender: (await centreSettings()).name,
    pictures: await paperPicturesOf(database(), kindsOfPaper[kind].pictureIds(content)),
    fileName: `${name.replace(/[^\w-]+/g, "-")}.pdf`,
  };
}

/** A version as it is named to whoever holds a paper. */
export type NamedVersion = { version: number; languages: string[] };

/** All that anyone learns who holds a paper. */
export type CheckedPaper = NamedVersion & {
  kind: PaperKind | "agreement";
  loanNumber: string;
  issuedAt: string;
  sha256: string;
  /** Whether it holds: no version that says something else has taken its place. */
  holds: boolean;
  /** The other versions that hold: the same in other languages, or what has taken its place. */
  others: NamedVersion[];
  /** Of an agreement, whether both sides have signed this version; null for a paper that nobody signs here. */
  isSigned: boolean | null;
};

const languagesAgreed = (frozen: string): string[] => {
  const terms = findTerms(frozen);
  if (terms === null) return [];
  return terms.format === "loan-agreement-2" ? [terms.language] : terms.languages;
};

const isSignedByBoth = ({ signatures }: { signatures: readonly { party: string }[] }) =>
  new Set(signatures.map(({ party }) => party)).size === 2;

/** What both have signed holds until both have signed another version; a draft only as long as it is the newest. */
async function checkedAgreement(agreementId: string): Promise<CheckedPaper | null> {
  const withSignatures = { signatures: { select: { party: true } } } as const;
  const row = await database().agreement.findUnique({
    where: { id: agreementId },
    include: { loan: { select: { number: true } }, ...withSignatures },
  });
  if (!row) return null;
  const later = await database().agreement.findMany({
    where: { loanId: row.loanId, version: { gt: row.version } },
    orderBy: { version: "desc" },
    select: { version: true, terms: true, ...withSignatures },
  });
  const isSigned = isSignedByBoth(row);
  const instead = isSigned ? later.find(isSignedByBoth) : later[0];
  return {
    kind: "agreement",
    loanNumber: row.loan.number,
    version: row.version,
    issuedAt: row.drawnUpAt.toISOString(),
    sha256: row.sha256,
    languages: languagesAgreed(row.terms),
    holds: instead === undefined,
    others: instead ? [{ version: instead.version, languages: languagesAgreed(instead.terms) }] : [],
    isSigned,
  };
}

/** Null for a code that no paper bears. @param secret what the codes of agreements are made with */
export async function checkPaper(token: string, secret: string): Promise<CheckedPaper | null> {
  const agreementId = agreementOfCode(token, secret);
  if (agreementId !== null) return await checkedAgreement(agreementId);
  if (!new RegExp(`^[a-z2-7]{${codeLetters}}$`).test(token)) return null;
  const row = await database().issuedPaper.findUnique({
    where: { code: token },
    include: { loan: { select: { number: true } } },
  });
  if (!row || !isPaperKind(row.kind)) return null;
  const { id, loanId, kind, subject, version, issuedAt, sha256, content, loan } = row;
  const versions = await database().issuedPaper.findMany({
    where: { loanId, kind, subject },
    select: { id: true, version: true, content: true },
  });
  const holding = versionsThatHold(versions);
  return {
    kind,
    loanNumber: loan.number,
    version,
    issuedAt: issuedAt.toISOString(),
    sha256,
    languages: [languageOf(content)].filter(Boolean),
    holds: holding.some((held) => held.id === id),
    others: holding
      .filter((held) => held.id !== id)
      .map((held) => ({ version: held.version, languages: [languageOf(held.content)].filter(Boolean) })),
    isSigned: null,
  };
}
