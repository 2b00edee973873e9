/**
 * Quotations and cost statements as they are kept: canonical text with its hash, and
 * the one way to read it again. Parsing changes nothing; a text of another form is
 * refused, so that what is shown is all that was drawn up.
 */
import { CostingContent } from "#lib/costing/schema.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { Refusal } from "#lib/platform/refusal.ts";

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** @throws {Refusal} "conflict", `costing.other-format`, for a text of another form */
export function readCosting(frozen: string): CostingContent {
  const read = CostingContent.safeParse(parsedJson(frozen));
  if (!read.success || canonicalText(read.data) !== frozen)
    throw new Refusal("conflict", "costing.other-format");
  return read.data;
}

/** What is said, without the number and the days of the paper. */
function said({ version: _version, drawnUpOn: _drawn, ...content }: CostingContent): string {
  return canonicalText(content);
}

/** Whether a frozen paper says the same as this content but for its number and date. */
export function costsTheSame(frozen: string, content: CostingContent): boolean {
  return said(readCosting(frozen)) === said(content);
}
