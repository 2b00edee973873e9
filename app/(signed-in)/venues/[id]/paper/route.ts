/**
 * `GET /venues/{id}/paper?version=2&language=de&size=a4|letter`: one version of a venue's
 * facility report as a PDF, the newest unless another is asked for, in the institution's
 * own language unless another is, for who may see facility facts of the venue. For
 * everybody else there is no such page.
 */
import { paperSizeIn, pdfResponse } from "#app/_server/paper-file.ts";
import { fileRefusal } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { paintFacilityPaper } from "#lib/papers/facility-paper/file.ts";
import { paperLanguagesFor } from "#lib/papers/languages.ts";
import { getVenueSheet } from "#lib/people/queries/facility.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

type Context = { params: Promise<{ id: string }> };

export async function GET(request: Request, context: Context): Promise<Response> {
  try {
    const { id } = await context.params;
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { venue, institution, languages, reports } = await getVenueSheet(viewer, id);
    const { searchParams } = new URL(request.url);
    const asked = searchParams.get("version");
    const spoken = paperLanguagesFor(languages);
    const language = spoken.find((one) => one === searchParams.get("language")) ?? spoken[0];
    const report = asked === null ? reports[0] : reports.find(({ version }) => String(version) === asked);
    if (!report) throw notFound("facility report");
    const { filedAt: _filed, ...said } = report;
    const pdf = await paintFacilityPaper(
      {
        ...said,
        institution,
        venue: venue.name,
        address: [venue.address, venue.town].filter(Boolean).join(", "),
        countryCode: venue.countryCode,
      },
      paperSizeIn(request),
      { language, author: institution },
    );
    return pdfResponse(pdf, `facility-report-${report.version}.pdf`);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return fileRefusal(request, error, { address: "/institutions", label: placeWords.institutions });
  }
}
