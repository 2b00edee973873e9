/** A facility report as a PDF on either sheet; the same version gives the same bytes. */
import { type FacilityPaper, facilityPaperDocument } from "#lib/papers/facility-paper/document.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";

/** Over everything that the venue says; the same in every language. */
export const facilityPaperHash = (paper: FacilityPaper): string => sha256Hex(canonicalText(paper));

export function paintFacilityPaper(
  paper: FacilityPaper,
  size: PaperSize,
  { language, author }: { language: PaperLanguage; author: string },
): Promise<Uint8Array> {
  const sha256 = facilityPaperHash(paper);
  const words = paperWordsIn(language);
  const document = facilityPaperDocument(paper, sha256, words);
  return paintPages(layOut(document, measureText, size), {
    title: `${words.facility.name}, ${paper.venue}, ${paper.version}`,
    author,
    subject: words.facility.name,
    keywords: [sha256],
    language,
    madeAt: `${paper.reportedOn}T00:00:00.000Z`,
  });
}
