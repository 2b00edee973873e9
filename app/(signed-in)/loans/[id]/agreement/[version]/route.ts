/**
 * `GET /loans/{id}/agreement/{version}?size=a4|letter`: one version of the agreement as
 * a PDF, for who may read its terms. For everybody else, and for a version that nobody drew
 * up, there is no such page.
 */

import { paperSizeIn, pdfResponse } from "#app/_server/paper-file.ts";
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { readTerms } from "#lib/agreements/frozen-terms.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import { agreementCode, checkAddress } from "#lib/papers/check-address.ts";
import { schedulePicturesOf } from "#lib/papers/queries/schedule-pictures.ts";
import { readConfig } from "#lib/platform/config.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

type Context = { params: Promise<{ id: string; version: string }> };

export async function GET(request: Request, context: Context): Promise<Response> {
  try {
    const { id, version } = await context.params;
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const loan = await getLoan(viewer, id);
    const agreement = loan.agreements.find((one) => String(one.version) === version);
    if (!agreement || agreement.terms === null) throw notFound("agreement");
    const { sha256, drawnUpAt } = agreement;
    const terms = readTerms(agreement.terms);
    const signatures = agreement.signatures.map(({ party, file, electronic, ...signature }) => ({
      ...signature,
      party: party as "lender" | "borrower",
      sha256,
      fileSha256: file?.sha256 ?? null,
      isElectronic: electronic,
    }));
    const numbers = terms.schedule.map(({ accessionNumber }) => accessionNumber);
    const { url, secret } = readConfig();
    const pdf = await paintAgreement({
      terms,
      version: agreement.version,
      sha256,
      drawnUpAt,
      signatures,
      pictures: await schedulePicturesOf(viewer, id, numbers),
      checkAddress: checkAddress(url, agreementCode(agreement.id, secret)),
      size: paperSizeIn(request),
    });
    const name = `${loan.number.replace(/[^\w-]+/g, "-")}-agreement-${agreement.version}.pdf`;
    return pdfResponse(pdf, name);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return fileRefusal(request, error, { address: "/loans", label: placeWords.loans });
  }
}
