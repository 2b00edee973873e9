/** Papers issued from a case without a database. */
import type { PaperDocument } from "#lib/papers/blocks.ts";
import { paintIssuedPaper } from "#lib/papers/issued-paper.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";
import type { PaperCase } from "#lib/papers/paper-case.ts";
import { kindsOfPaper, type PaperKind } from "#lib/papers/paper-kinds.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import type { Pictures } from "#lib/papers/thumbnail.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { someHead } from "#tests/lib/papers/paper-cases.ts";

export const address = "https://lending.example.org/paper/abcdefghijklmnopqrstuvwxyz";

export function frozen(kind: PaperKind, paperCase: PaperCase, at = 0, language: PaperLanguage = "en") {
  const subject = kindsOfPaper[kind].subjects(paperCase)[at] ?? "";
  const content = canonicalText(
    kindsOfPaper[kind].content(
      paperCase,
      subject,
      someHead({ language, loan: { number: paperCase.loan.number, title: paperCase.loan.title } }),
    ),
  );
  return { kind, content, sha256: sha256Hex(content), checkAddress: address };
}

export function documentOf(
  kind: PaperKind,
  paperCase: PaperCase,
  at = 0,
  pictures: Pictures = new Map(),
): PaperDocument {
  const { content, ...issued } = frozen(kind, paperCase, at);
  return kindsOfPaper[kind].document(content, issued, paperWordsIn("en"), pictures);
}

export function paint(kind: PaperKind, paperCase: PaperCase, size: PaperSize = "a4"): Promise<Uint8Array> {
  return paintIssuedPaper(frozen(kind, paperCase), size, { lender: "Lending Centre", pictures: new Map() });
}

/** The same paper in a language, as a document and as a file. */
export function documentIn(language: PaperLanguage, kind: PaperKind, paperCase: PaperCase): PaperDocument {
  const { content, ...issued } = frozen(kind, paperCase, 0, language);
  return kindsOfPaper[kind].document(content, issued, paperWordsIn(language), new Map());
}

export function paintIn(language: PaperLanguage, kind: PaperKind, paperCase: PaperCase): Promise<Uint8Array> {
  const pictures: Pictures = new Map();
  return paintIssuedPaper(frozen(kind, paperCase, 0, language), "a4", { lender: "Lending Centre", pictures });
}
