/**
 * `GET /api/v1/loans/{id}/suitability`: what the rules find for each specimen, as far as the viewer may read it.
 * With `?language=de` each finding says its fact and its way out as sentences of that language.
 */
import { z } from "zod";
import { readQuery, runReading } from "#app/_server/api.ts";
import { findingSentence, wayOutSentence } from "#app/_words/finding-sentence.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { paperLanguages } from "#lib/papers/languages.ts";

type Context = { params: Promise<{ id: string }> };

const Query = z.strictObject({ language: z.enum(paperLanguages).optional() });

export async function GET(request: Request, context: Context): Promise<Response> {
  return await runReading(async (viewer) => {
    const { language } = readQuery(request, Query);
    const { id, number, state, matrix, findings, officesNeeded } = await getLoan(
      viewer,
      (await context.params).id,
    );
    const told =
      language === undefined
        ? findings
        : findings.map((finding) => ({
            ...finding,
            sentence: findingSentence(finding, language),
            wayOutSentence: wayOutSentence(finding, language),
          }));
    return { id, number, state, matrix, findings: told, officesNeeded };
  });
}
