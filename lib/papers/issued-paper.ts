/**
 * An issued paper as a PDF on either sheet. What is painted is the frozen content and
 * nothing else: a content that does not give its own fingerprint is a fault of the
 * program and is not painted. The same paper on the same sheet gives the same bytes.
 */
import { z } from "zod";
import { measureText } from "#lib/papers/fonts.ts";
import { paperWordsIn } from "#lib/papers/languages.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import { PaperHead } from "#lib/papers/paper-content.ts";
import { kindsOfPaper, type PaperKind, readContent } from "#lib/papers/paper-kinds.ts";
import { paperName } from "#lib/papers/paper-names.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import type { Pictures } from "#lib/papers/thumbnail.ts";
import { fill } from "#lib/papers/words.ts";
import { sha256Hex } from "#lib/platform/hash.ts";

export type IssuedPaper = {
  kind: PaperKind;
  /** Canonical JSON. */
  content: string;
  sha256: string;
  checkAddress: string;
};

/** Of any paper, what stands at its head. */
const AnyHead = z.object(PaperHead.shape);

/** @throws {RangeError} for a fingerprint that is not the content's */
export async function paintIssuedPaper(
  paper: IssuedPaper,
  size: PaperSize,
  { lender, pictures }: { lender: string; pictures: Pictures },
): Promise<Uint8Array> {
  const { kind, content, sha256, checkAddress } = paper;
  if (sha256 !== sha256Hex(content)) throw new RangeError("This is not the fingerprint of the content.");
  const head = readContent(AnyHead, content);
  const words = paperWordsIn(head.language);
  const document = kindsOfPaper[kind].document(content, { sha256, checkAddress }, words, pictures);
  const name = `${paperName(kind, words)} ${head.loan.number}`;
  return paintPages(layOut(document, measureText, size), {
    title: `${name}, ${fill(words.agreement.version, { version: head.version })}`,
    author: lender,
    subject: name,
    keywords: [sha256],
    language: head.language,
    madeAt: head.issuedAt,
  });
}
