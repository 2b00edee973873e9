/**
 * Signing the agreement. Whoever signs on screen has a mandate that reaches the
 * replacement cost of what goes out; who signs for the lender never signs for the
 * borrower. A file that was signed elsewhere is kept with its hash and stands as
 * the signature. The rules run anew, and a bar stops it.
 */

import { readTerms, rulingLanguage } from "#lib/agreements/frozen-terms.ts";
import { CountersignInput, SignInput, signedMediaType } from "#lib/agreements/signing.ts";
import { liveLines, refuseBars, requireState } from "#lib/loans/at-hand.ts";
import { keepRun, refuseAndKeep, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { command, type Work } from "#lib/people/command.ts";
import { requireMandate } from "#lib/people/commands/mandates.ts";
import type { AtStake } from "#lib/people/mandates.ts";
import type { Act } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { bytesSha256 } from "#lib/platform/hash.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { atStakeOf } from "#lib/suitability/rules/cover.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

type Party = "lender" | "borrower";
type ToSign = {
  agreementId: Id;
  loanId: Id;
  version: number;
  sha256: string;
  language: string;
  atStake: AtStake;
};

/** Everything that holds for any signature, whoever gives it and however. */
async function readyToSign(
  work: Work,
  act: Act,
  input: { agreementId: Id; sha256: string },
  party: Party,
): Promise<ToSign> {
  const { transaction } = work;
  const found = await transaction.agreement.findUnique({
    where: { id: input.agreementId },
    include: { signatures: true },
  });
  if (!found) throw notFound("agreement");
  const loan = await takeLoan(work, found.loanId, act);
  requireState(loan, statesInPreparation);
  if (found.sha256 !== input.sha256) throw new Refusal("conflict", "agreement.other-terms");
  // nobody signs what can no longer be printed
  const terms = readTerms(found.terms);
  const newer = await transaction.agreement.findFirst({
    where: { loanId: loan.id, version: { gt: found.version } },
    orderBy: { version: "desc" },
  });
  if (newer) throw new Refusal("conflict", "agreement.superseded", { version: newer.version });
  if (found.signatures.some((signature) => signature.party === party))
    throw new Refusal("conflict", "agreement.already-signed", { party });
  const onScreen = found.signatures.filter(({ method }) => method !== "countersigned");
  if (act === "signAgreement" && onScreen.some(({ accountId }) => accountId === work.viewer.accountId))
    throw new Refusal("conflict", "agreement.same-signer");
  const { request, subjects } = await loanCaseOf(transaction, loan.id, work.today);
  const findings = judgeSuitability(request, subjects);
  const judged = { stopped: "signature", findings, inputs: { request, subjects } } as const;
  await refuseAndKeep(work, act, loan.id, judged, () =>
    refuseBars(liveLines(loan), findings, "agreement.barred"),
  );
  await keepRun(work, loan.id, "signature", findings, { request, subjects });
  return {
    agreementId: found.id,
    loanId: loan.id,
    version: found.version,
    sha256: found.sha256,
    language: rulingLanguage(terms),
    atStake: atStakeOf(subjects),
  };
}

/** Both have signed, or the other side has it to sign. */
async function tellOfSignature(work: Work, { agreementId, loanId, version }: ToSign): Promise<void> {
  const signatures = await work.transaction.signature.count({ where: { agreementId } });
  await writeLetters(work, loanId, signatures === 2 ? "signed" : "agreement-to-sign", { version });
}

export const signAgreement = command(
  "signAgreement",
  SignInput,
  async (work, input): Promise<{ party: Party }> => {
    const { transaction, viewer } = work;
    const party = isBorrower(viewer) ? "borrower" : "lender";
    const ready = await readyToSign(work, "signAgreement", input, party);
    const mandate = await requireMandate(work, "sign agreements", ready.atStake);
    await transaction.signature.create({
      data: {
        id: newId(),
        agreementId: ready.agreementId,
        party,
        signerName: viewer.name,
        signerRole: input.signerRole,
        accountId: viewer.accountId,
        signedAt: work.now,
        sha256: ready.sha256,
        method: input.strokes === "" ? "typed" : "drawn",
        strokes: input.strokes,
        language: ready.language,
        mandateId: mandate.id,
      },
    });
    await tellOfSignature(work, ready);
    return { party };
  },
);

export const countersignAgreement = command(
  "countersignAgreement",
  CountersignInput,
  async (work, input): Promise<{ fileId: Id }> => {
    const { transaction, viewer } = work;
    const ready = await readyToSign(work, "countersignAgreement", input, input.party);
    const content = new Uint8Array(input.content);
    const fileId = newId();
    await transaction.storedFile.create({
      data: {
        id: fileId,
        sha256: bytesSha256(content),
        mediaType: signedMediaType(content) ?? "application/pdf",
        byteCount: content.byteLength,
        content,
      },
    });
    await transaction.signature.create({
      data: {
        id: newId(),
        agreementId: ready.agreementId,
        party: input.party,
        signerName: input.signerName,
        signerRole: input.signerRole,
        accountId: viewer.accountId,
        signedAt: work.now,
        sha256: ready.sha256,
        method: "countersigned",
        fileId,
        language: ready.language,
        electronic: false,
      },
    });
    await tellOfSignature(work, ready);
    return { fileId };
  },
);
