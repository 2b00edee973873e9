/**
 * The one wrapper of the API's operations: same commands, same queries, same
 * refusals as the screens. A change needs an origin of our own, JSON of at most
 * one megabyte, and may carry an Idempotency-Key. A question states its parameters
 * in the address, each once, and none that is not known.
 */
import "server-only";
import { z } from "zod";
import { refusalResponse } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { readConfig } from "#lib/platform/config.ts";
import { parseQuery } from "#lib/platform/parse.ts";
import { type FieldIssue, Refusal } from "#lib/platform/refusal.ts";

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

/** The same for what is only read: where an input is wrong, nothing was about to be saved. */
export async function runReading(work: (viewer: Viewer) => Promise<unknown>): Promise<Response> {
  return await runOperation(async (viewer) => {
    try {
      return await work(viewer);
    } catch (error) {
      if (!(error instanceof Refusal) || !error.reason.startsWith("input.")) throw error;
      const { kind, reason, parameters, issues } = error;
      throw new Refusal(kind, reason.replace("input.", "query."), parameters, issues);
    }
  });
}

/** A whole number in an address. */
export const queryNumber = z
  .string()
  .regex(/^\d{1,9}$/, "query.whole-number")
  .transform(Number);
/** Yes or no in an address. */
export const queryFlag = z.enum(["true", "false"], "query.flag").transform((text) => text === "true");

/**
 * The parameters of an address, read by a schema of texts: `z.strictObject({ q: z.string() })`.
 * @throws {Refusal} "query.invalid", naming each parameter that is wrong, unknown or stated twice
 */
export function readQuery<Schema extends z.ZodType>(request: Request, schema: Schema): z.output<Schema> {
  const parameters = new URL(request.url).searchParams;
  const names = [...new Set(parameters.keys())];
  const twice: FieldIssue[] = names
    .filter((name) => parameters.getAll(name).length > 1)
    .map((name) => ({ path: name, message: "query.twice" }));
  if (twice.length > 0) throw new Refusal("invalid", "query.invalid", {}, twice);
  return parseQuery(schema, Object.fromEntries(parameters));
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
