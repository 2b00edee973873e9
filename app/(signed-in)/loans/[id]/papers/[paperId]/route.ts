/**
 * `GET /loans/{id}/papers/{paperId}?size=a4|letter`: one issued paper as a PDF, for who
 * may read the loan's file. For everybody else, and for a paper that nobody issued,
 * there is no such page.
 */

import { paperSizeIn, pdfResponse } from "#app/_server/paper-file.ts";
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { checkAddress } from "#lib/papers/check-address.ts";
import { paintIssuedPaper } from "#lib/papers/issued-paper.ts";
import { getPaper } from "#lib/papers/queries/loan-papers.ts";
import { readConfig } from "#lib/platform/config.ts";
import { Refusal } from "#lib/platform/refusal.ts";

type Context = { params: Promise<{ id: string; paperId: string }> };

export async function GET(request: Request, context: Context): Promise<Response> {
  try {
    const { id, paperId } = await context.params;
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { paper, code, lender, pictures, fileName } = await getPaper(viewer, id, paperId);
    const pdf = await paintIssuedPaper(
      { ...paper, checkAddress: checkAddress(readConfig().url, code) },
      paperSizeIn(request),
      { lender, pictures },
    );
    return pdfResponse(pdf, fileName);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return fileRefusal(request, error, { address: "/loans", label: placeWords.loans });
  }
}
