/**
 * The loan agreement as a PDF. A paper never shows a fingerprint that is not that
 * of the terms it prints, nor a signature under another version: such a call is a
 * fault of the program and nothing is painted. The same agreement with the same
 * signatures and pictures gives the same bytes.
 */
import { type AgreementTerms, rulingLanguage } from "#lib/agreements/frozen-terms.ts";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import type { SchedulePictures } from "#lib/papers/schedule-pictures.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import type { PaperSignature } from "#lib/papers/signature-place.ts";
import { withCheck } from "#lib/papers/travel-blocks.ts";
import { fill } from "#lib/papers/words.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";

export type AgreementPaper = {
  terms: AgreementTerms;
  version: number;
  /** SHA-256 of the canonical terms */
  sha256: string;
  /** ISO 8601; stands in the file as its day of making */
  drawnUpAt: string;
  signatures: readonly PaperSignature[];
  /** Beside the schedule; they are not hashed, and without one a specimen is drawn. */
  pictures?: SchedulePictures;
  /** Where anyone who holds it can check it; without one no code is printed. */
  checkAddress?: string;
  size?: PaperSize;
};

/** @throws {RangeError} for a version, a fingerprint or a signature that is not of these terms */
export async function paintAgreement(paper: AgreementPaper): Promise<Uint8Array> {
  const { terms, version, sha256, drawnUpAt, signatures } = paper;
  if (version !== terms.loan.version) throw new RangeError("This is not the version of the terms.");
  if (sha256 !== sha256Hex(canonicalText(terms)))
    throw new RangeError("This is not the fingerprint of the terms.");
  if (signatures.some((signature) => signature.sha256 !== sha256))
    throw new RangeError("A signature belongs to other terms.");
  if (new Set(signatures.map(({ party }) => party)).size !== signatures.length)
    throw new RangeError("A party signs once.");

  const ruling = rulingLanguage(terms);
  // a paper without words of its own in the language that rules is set in English around its clauses
  const language = paperLanguages.find((known) => known === ruling) ?? "en";
  const words = paperWordsIn(language);
  const other = terms.format === "loan-agreement-2" ? undefined : terms.languages[1];
  const second = paperLanguages.find((known) => known === other);
  const { number, title } = terms.loan;
  const plain = agreementDocument(
    { terms, sha256, signatures, ...(paper.pictures === undefined ? {} : { pictures: paper.pictures }) },
    words,
    second === undefined ? null : paperWordsIn(second),
  );
  const { checkAddress, size } = paper;
  const document = checkAddress === undefined ? plain : withCheck(plain, { sha256, checkAddress }, words);
  const pages = layOut(document, measureText, size);
  return paintPages(pages, {
    title: fill(words.agreement.metadata.title, { number, version }),
    author: terms.lender.name,
    subject: fill(words.agreement.metadata.subject, { title }),
    keywords: [sha256],
    language,
    madeAt: drawnUpAt,
  });
}
