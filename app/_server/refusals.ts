/**
 * How a refusal looks from outside: a page that is not there, a state of a form,
 * an answer of the API, or one to a file that was asked for. Anything that is not
 * a refusal is a bug and is left to fall through.
 */
import "server-only";
import { notFound } from "next/navigation";
import type { FormIssue, FormState } from "#app/_parts/form-state.ts";
import { plainPage } from "#app/_server/launch/plain-page.mjs";
import { outsideWords } from "#app/_words/en/outside.mjs";
import { sentence, sentenceForIssue } from "#app/_words/sentences.ts";
import { Refusal, type RefusalKind } from "#lib/platform/refusal.ts";

function refusalWords(refusal: Refusal): { message: string; issues: FormIssue[] } {
  return {
    message: sentence(refusal.reason, refusal.parameters),
    issues: refusal.issues.map((issue) => ({ path: issue.path, message: sentenceForIssue(issue.message) })),
  };
}

export function formStateOf(refusal: Refusal): FormState {
  return { state: "refused", kind: refusal.kind, ...refusalWords(refusal) };
}

/** Runs what a page reads: what is not there and what is not theirs is the same page. */
export async function orNotFound<Result>(read: () => Promise<Result>): Promise<Result> {
  try {
    return await read();
  } catch (error) {
    if (
      error instanceof Refusal &&
      (error.kind === "not-found" || error.kind === "forbidden" || error.kind === "invalid")
    )
      notFound();
    throw error;
  }
}

/** Runs what a search asks for; a search that cannot be answered says why, on its own page. */
export async function orRefused<Result>(
  read: () => Promise<Result>,
): Promise<{ found: Result; refused: null } | { found: null; refused: readonly string[] }> {
  try {
    return { found: await read(), refused: null };
  } catch (error) {
    if (!(error instanceof Refusal) || error.kind !== "invalid") throw error;
    const { message, issues } = refusalWords(error);
    return { found: null, refused: issues.length > 0 ? issues.map((issue) => issue.message) : [message] };
  }
}

const statusOf: Record<RefusalKind, number> = {
  invalid: 422,
  unauthenticated: 401,
  forbidden: 404,
  "not-found": 404,
  conflict: 409,
};

/** The API's answer to a refusal; a forbidden thing does not exist. */
export function refusalResponse(refusal: Refusal): Response {
  const shown = refusal.kind === "forbidden" ? new Refusal("not-found", "record.not-found") : refusal;
  const body = { error: { code: shown.reason, ...refusalWords(shown) } };
  return Response.json(body, { status: statusOf[refusal.kind] });
}

/** What a request would rather have; a browser that opens an address names pages first. */
function asksFor(request: Request): "page" | "json" | "anything" {
  const accepted = request.headers.get("accept") ?? "";
  if (accepted.includes("text/html")) return "page";
  return accepted.includes("application/json") ? "json" : "anything";
}

/**
 * The answer to a file that cannot be had, such as a picture or an agreement: the page
 * that is not there, whole in itself, because no page of the frame is drawn where a file
 * is asked for. Who asks for JSON gets it. Who has to sign in is led to the door and back,
 * or told so where nobody can be led.
 * @param back where the reader came from
 */
export function fileRefusal(
  request: Request,
  refusal: Refusal,
  back: { address: string; label: string },
): Response {
  const asked = asksFor(request);
  if (refusal.kind === "unauthenticated" && asked === "page") {
    const { pathname, search } = new URL(request.url);
    const location = `/sign-in?to=${encodeURIComponent(pathname + search)}`;
    return new Response(null, { status: 303, headers: { location, "cache-control": "private, no-store" } });
  }
  if (asked === "json" || refusal.kind === "unauthenticated" || refusal.kind === "conflict")
    return refusalResponse(refusal);
  const { notFoundTitle, notFoundText, start } = outsideWords;
  const links = [back, { address: "/", label: start }];
  return new Response(plainPage({ title: notFoundTitle, text: notFoundText, links }), {
    status: 404,
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "private, no-store" },
  });
}
