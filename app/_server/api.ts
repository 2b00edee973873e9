/**
 * The one wrapper of the API's operations: same commands, same queries, same
 * refusals as the screens. A change needs an origin of our own, JSON of at most
 * one megabyte, and may carry an Idempotency-Key.
 */
import "server-only";
import { refusalResponse } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { readConfig } from "#lib/platform/config.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const mostBytes = 1_000_000;

/** Amounts of money are whole numbers of minor units and always small enough for JSON. */
function plain(_key: string, value: unknown): unknown {
  return typeof value === "bigint" ? Number(value) : value;
}

export function jsonResponse(value: unknown, status = 200): Response {
  return new Response(JSON.stringify(value, plain), {
    status,
    headers: { "content-type": "application/json" },
  });
}

/** @param work answers with a plain value, which is sent as JSON */
export async function runOperation(
  work: (viewer: Viewer) => Promise<unknown>,
  status = 200,
): Promise<Response> {
  try {
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    return jsonResponse(await work(viewer), status);
  } catch (error) {
    if (error instanceof Refusal) return refusalResponse(error);
    throw error;
  }
}

/** The JSON body of a change. @throws {Refusal} when it is from elsewhere, too large or not JSON */
export async function readBody(request: Request): Promise<unknown> {
  const origin = request.headers.get("origin");
  if (origin !== null && origin !== new URL(readConfig().url).origin)
    throw new Refusal("forbidden", "api.foreign-origin");
  if (Number(request.headers.get("content-length") ?? "0") > mostBytes)
    throw new Refusal("invalid", "api.too-large");
  const text = await request.text();
  if (text.length > mostBytes) throw new Refusal("invalid", "api.too-large");
  try {
    return JSON.parse(text);
  } catch {
    throw new Refusal("invalid", "api.not-json");
  }
}

export function idempotencyKey(request: Request): { idempotencyKey?: string } {
  const key = request.headers.get("idempotency-key");
  return key ? { idempotencyKey: key.slice(0, 200) } : {};
}
