/**
 * One field to go anywhere: a number opens its record, a frequent act its page, an
 * institution its sheet; everything else is looked for in the catalogue.
 */
import { redirect } from "next/navigation";
import { requireViewer } from "#app/_server/viewer.ts";
import { actWords } from "#app/_words/en/go.ts";
import { findLoanByNumber } from "#lib/loans/queries/find-loan.ts";
import { maySee } from "#lib/people/permission.ts";
import { listInstitutions } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { listSeries } from "#lib/specimens/queries/series.ts";
import { findByNumber } from "#lib/specimens/queries.ts";

async function addressOf(viewer: Viewer, text: string): Promise<string> {
  const plain = text.toLowerCase();
  const act = actWords.find(([words]) => words.some((word) => word === plain));
  if (act) return act[1];
  const loan = await findLoanByNumber(viewer, text);
  if (loan) return `/loans/${loan.id}`;
  const [specimen, ...others] = await findByNumber(viewer, text);
  if (specimen && others.length === 0) return `/specimens/${specimen.id}`;
  const series = (await listSeries(viewer)).find((row) => row.code.toLowerCase() === plain);
  if (series) return `/series/${series.id}`;
  if (maySee(viewer, "institutions") && plain.length >= 3) {
    const institution = (await listInstitutions(viewer)).find((row) =>
      row.name.toLowerCase().includes(plain),
    );
    if (institution) return `/institutions/${institution.id}`;
  }
  return `/specimens?q=${encodeURIComponent(text)}`;
}

export async function GET(request: Request): Promise<never> {
  const text = (new URL(request.url).searchParams.get("q") ?? "").trim().slice(0, 200);
  const viewer = await requireViewer(`/go?q=${encodeURIComponent(text)}`);
  redirect(text === "" ? "/specimens" : await addressOf(viewer, text));
}
