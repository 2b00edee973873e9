/** What every address of a PDF shares: the sheet that is asked for, and the answer that carries the file. */
import "server-only";
import { type PaperSize, paperSizes } from "#lib/papers/sheet.ts";

/** A4 unless the address asks for another sheet that there is. */
export function paperSizeIn(request: Request): PaperSize {
  const asked = new URL(request.url).searchParams.get("size");
  return paperSizes.find((size) => size === asked) ?? "a4";
}

export function pdfResponse(pdf: Uint8Array, fileName: string): Response {
  return new Response(new Uint8Array(pdf), {
    headers: {
      "content-type": "application/pdf",
      "content-disposition": `inline; filename="${fileName}"`,
      "cache-control": "private, no-store",
    },
  });
}
