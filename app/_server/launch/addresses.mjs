// @ts-check
/**
 * Loaded into the server before anything else. Some addresses cannot be decoded:
 * a percent sign that begins no letter, or half of one. The framework would answer
 * them with a fault. Their percent signs are taken for nothing but themselves
 * instead, so that such a name is looked for and not found, like any other.
 */
import { subscribe } from "node:diagnostics_channel";

/** @param {string} part */
function canBeDecoded(part) {
  try {
    decodeURIComponent(part);
    return true;
  } catch {
    return false;
  }
}

/** @param {string} address path and query, as a browser asks for them */
export function readableAddress(address) {
  const [, path = "", query = ""] = /^([^?]*)(.*)$/s.exec(address) ?? [];
  const parts = path.split("/").map((part) => (canBeDecoded(part) ? part : part.replaceAll("%", "%25")));
  return parts.join("/") + query;
}

subscribe("http.server.request.start", (message) => {
  const { request } = /** @type {{ request: import("node:http").IncomingMessage }} */ (message);
  if (request.url !== undefined) request.url = readableAddress(request.url);
});
