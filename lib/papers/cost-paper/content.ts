/**
 * The content of a quotation or a cost statement on paper: the costing as it was
 * frozen, word for word, with its own fingerprint. Nothing is reckoned again, so that
 * the paper cannot say another sum than the one that is answered in the program.
 */
import { z } from "zod";
import { CostingContent, type CostingKind, costingKinds } from "#lib/costing/schema.ts";
import type { PaperCase } from "#lib/papers/paper-case.ts";
import { PaperHead } from "#lib/papers/paper-content.ts";

export const CostPaperContent = PaperHead.extend({
  format: z.literal("cost-paper-1"),
  kind: z.enum(costingKinds),
  costing: CostingContent,
  costingSha256: z.string(),
}).strict();
export type CostPaperContent = z.infer<typeof CostPaperContent>;

const newestOf = ({ costings }: PaperCase, kind: CostingKind) =>
  costings.find(({ content }) => content.kind === kind);

/** The loan itself, once one of the kind is drawn up. */
export const costSubjects =
  (kind: CostingKind) =>
  (paperCase: PaperCase): string[] =>
    newestOf(paperCase, kind) === undefined ? [] : [""];

export function costPaperContent(paperCase: PaperCase, kind: CostingKind, head: PaperHead): CostPaperContent {
  const newest = newestOf(paperCase, kind);
  if (newest === undefined) throw new RangeError(`This loan has no ${kind}.`);
  return { ...head, format: "cost-paper-1", kind, costing: newest.content, costingSha256: newest.sha256 };
}
