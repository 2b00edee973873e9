/** A facility report as a PDF on either sheet; the same version gives the same bytes. */
import {
  type FacilityLabels,
  type FacilityPaper,
  facilityPaperDocument,
} from "#lib/papers/facility-paper/document.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";

/** Over everything that the paper says. */
export const facilityPaperHash = (paper: FacilityPaper): string => sha256Hex(canonicalText(paper));

export function paintFacilityPaper(
  paper: FacilityPaper,
  size: PaperSize,
  { labels, language, author }: { labels: FacilityLabels; language: PaperLanguage; author: string },
): Promise<Uint8Array> {
  const sha256 = facilityPaperHash(paper);
  const document = facilityPaperDocument(paper, sha256, labels, paperWordsIn(language));
  return paintPages(layOut(document, measureText, size), {
    title: `${labels.name}, ${paper.venue}, ${paper.version}`,
    author,
    subject: labels.name,
    keywords: [sha256],
    language,
    madeAt: `${paper.reportedOn}T00:00:00.000Z`,
  });
}
