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
    throw new Refusal("invalid", "api.foreign-origin");
  const content = await readAtMost(mostBytes, request);
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(content));
  } catch {
    throw new Refusal("invalid", "api.not-json");
  }
}

/** The bytes of a body; what is longer is refused as soon as that shows, whatever length it states. */
async function readAtMost(most: number, request: Request): Promise<Uint8Array> {
  const stated = Number(request.headers.get("content-length") ?? "0");
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  while (reader && !(stated > most)) {
    const { done, value } = await reader.read();
    if (done) return Buffer.concat(chunks);
    bytes += value.byteLength;
    if (bytes > most) break;
    chunks.push(value);
  }
  await reader?.cancel();
  if (!reader) return new Uint8Array();
  throw new Refusal("invalid", "api.too-large");
}

export function idempotencyKey(request: Request): { idempotencyKey?: string } {
  const key = request.headers.get("idempotency-key");
  return key ? { idempotencyKey: key.slice(0, 200) } : {};
}
