// @ts-check
/**
 * What stands between the network and the framework, for pages alone. A form that
 * the framework would answer with a bare fault is answered here with a sentence:
 * one from another site, one too large, one that does not say its length. Its own
 * bare answers, and its pages that are empty without scripts, get their words on
 * the way out. And each answer gets the policy by which a browser runs no script
 * but ours: the framework marks its scripts with the word made for this one answer.
 *
 * The API answers for itself, and what is asked for by the program's own scripts is
 * left as it is: they read it and show it in the frame.
 */
import { randomBytes } from "node:crypto";
import { gunzipSync } from "node:zlib";
import { outsideWords as words } from "../../_words/en/outside.mjs";
import { noticeHtml, plainPage } from "./plain-page.mjs";

/** @typedef {import("node:http").IncomingMessage} Request */
/** @typedef {import("node:http").ServerResponse} Response */
/** @typedef {import("./plain-page.mjs").Notice} Notice */

/** The largest form that is taken; a picture may have 15 MB, and there is something around it. */
export const mostFormBytes = 16 * 1024 * 1024;

/** @param {string} title @param {string} text @returns {Notice} */
const notice = (title, text) => ({ title, text, links: [{ address: "/", label: words.start }] });

const notices = {
  notFound: {
    ...notice(words.notFoundTitle, words.notFoundText),
    links: [
      { address: "/", label: words.start },
      { address: "/specimens", label: words.specimens },
      { address: "/loans", label: words.loans },
    ],
  },
  error: notice(words.errorTitle, words.errorText),
  foreign: notice(words.foreignTitle, words.foreignText),
  tooLarge: notice(words.tooLargeTitle, words.tooLargeText),
  noLength: notice(words.noLengthTitle, words.noLengthText),
  unreadable: notice(words.unreadableTitle, words.unreadableText),
  stale: notice(words.staleTitle, words.staleText),
};

/** @param {Request} request */
const isOfPages = ({ url = "" }) => !/^\/(api|_next)\//.test(url);

/** Asked for by the program's own scripts, which read it. @param {Request} request */
const isScripted = ({ headers }) => headers["next-action"] !== undefined || headers.rsc !== undefined;

/** The host that a browser believes to speak to. @param {Request} request */
function hostOf({ headers }) {
  const forwarded = headers["x-forwarded-host"];
  const [first] = (Array.isArray(forwarded) ? forwarded.join(",") : (forwarded ?? "")).split(",");
  return first?.trim() || headers.host;
}

/** @param {Request} request */
function isForeign(request) {
  const { origin } = request.headers;
  return origin !== undefined && !(URL.canParse(origin) && new URL(origin).host === hostOf(request));
}

/**
 * Why a request to a page goes no further.
 * @param {Request} request
 * @returns {{ status: number, notice: Notice } | null}
 */
export function refusedAtDoor(request) {
  const { headers, method } = request;
  if (method !== "POST" || !isOfPages(request)) return null;
  if (isForeign(request)) return { status: 403, notice: notices.foreign };
  const length = headers["content-length"];
  if (length === undefined && headers["transfer-encoding"] !== undefined)
    return { status: 411, notice: notices.noLength };
  if (Number(length ?? 0) > mostFormBytes) return { status: 413, notice: notices.tooLarge };
  const type = headers["content-type"] ?? "";
  if (/^multipart\//i.test(type) && !/;\s*boundary=[^;\s]/i.test(type))
    return { status: 400, notice: notices.unreadable };
  return null;
}

/**
 * Scripts come from here alone, or bear the word of this answer. Drawings are inline
 * SVG with styles of their own, so inline styles are allowed.
 * @param {string} nonce
 */
export function contentSecurityPolicy(nonce) {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}'`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

/** @param {Response} response @param {string} text @param {string} type */
function setHeadersFor(response, text, type) {
  response.setHeader("content-type", `${type}; charset=utf-8`);
  response.setHeader("cache-control", "private, no-store");
  response.setHeader("content-length", Buffer.byteLength(text));
}

/** @param {number} status @returns {Notice | null} */
function noticeOf(status) {
  if (status === 404) return notices.notFound;
  // So a form is answered whose action the program does not have, or not any more.
  if (status === 400 || status === 409) return notices.stale;
  return status >= 500 ? notices.error : null;
}

/**
 * The words for an answer of the framework that has none; nothing where it speaks for itself.
 * @param {number} status @param {boolean} isHtml @param {string} body
 */
export function wordsInstead(status, isHtml, body) {
  const ofStatus = noticeOf(status);
  if (!ofStatus) return null;
  if (!isHtml) return plainPage(ofStatus);
  const isEmpty = !/<main[\s>]/.test(body) && body.includes("</body>");
  return isEmpty ? body.replace("</body>", `<noscript>${noticeHtml(ofStatus)}</noscript></body>`) : null;
}

/** @param {Buffer} sent @param {unknown} encoding @returns {string | null} null for what cannot be read here */
function textOf(sent, encoding) {
  if (encoding === undefined) return sent.toString("utf8");
  return encoding === "gzip" && sent.length > 0 ? gunzipSync(sent).toString("utf8") : null;
}

/**
 * Holds an answer back when it turns out to be a refusal or a fault, until all of it is
 * there, and sends words instead where it has none. Any other answer flows as it comes.
 * @param {Response} response
 */
function holdBareAnswers(response) {
  const original = {
    writeHead: response.writeHead.bind(response),
    write: response.write.bind(response),
    end: response.end.bind(response),
    flushHeaders: response.flushHeaders.bind(response),
  };
  /** @type {Buffer[]} */
  const kept = [];
  /** @type {boolean | undefined} */
  let held;
  const isHeld = () => {
    held ??=
      response.statusCode >= 400 &&
      /^text\/(html|plain)/.test(String(response.getHeader("content-type") ?? "text/plain"));
    return held;
  };
  const keep = (/** @type {unknown} */ chunk, /** @type {unknown} */ encoding) => {
    if (typeof chunk === "string")
      kept.push(
        Buffer.from(chunk, typeof encoding === "string" ? /** @type {BufferEncoding} */ (encoding) : "utf8"),
      );
    else if (chunk instanceof Uint8Array) kept.push(Buffer.from(chunk));
  };
  const release = () => {
    held = false;
    const body = Buffer.concat(kept);
    const text = textOf(body, response.getHeader("content-encoding"));
    const isHtml = /^text\/html/.test(String(response.getHeader("content-type") ?? ""));
    const instead = text === null ? null : wordsInstead(response.statusCode, isHtml, text);
    if (instead === null) return original.end(body);
    for (const name of ["content-encoding", "transfer-encoding", "etag"]) response.removeHeader(name);
    setHeadersFor(response, instead, "text/html");
    return original.end(instead);
  };

  /** @param {number} status @param {...any} rest */
  response.writeHead = (status, ...rest) => {
    response.statusCode = status;
    const headers = rest.find((each) => typeof each === "object" && each !== null);
    if (headers && !Array.isArray(headers))
      for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    return isHeld() ? response : original.writeHead(status, ...rest);
  };
  response.flushHeaders = () => {
    if (!isHeld()) original.flushHeaders();
  };
  /** @param {any} chunk @param {any} [encoding] @param {any} [done] */
  response.write = (chunk, encoding, done) => {
    if (!isHeld()) return original.write(chunk, encoding, done);
    keep(chunk, encoding);
    const called = typeof encoding === "function" ? encoding : done;
    if (called) process.nextTick(called);
    return true;
  };
  /** @param {any} [chunk] @param {any} [encoding] @param {any} [done] */
  response.end = (chunk, encoding, done) => {
    if (!isHeld()) return original.end(chunk, encoding, done);
    if (typeof chunk !== "function") keep(chunk, encoding);
    const called = [chunk, encoding, done].find((each) => typeof each === "function");
    if (called) response.once("finish", called);
    release();
    return response;
  };
}

/**
 * A server's listener with the door before it.
 * @param {(request: Request, response: Response) => unknown} listener
 * @returns {(request: Request, response: Response) => unknown}
 */
export function withDoor(listener) {
  return (request, response) => {
    const policy = contentSecurityPolicy(randomBytes(16).toString("base64"));
    // The framework reads the word for its scripts from the request.
    request.headers["content-security-policy"] = policy;
    response.setHeader("Content-Security-Policy", policy);
    const refused = refusedAtDoor(request);
    if (refused) {
      // What is still being sent is let in and dropped: a browser that is cut off shows no answer.
      request.resume();
      response.statusCode = refused.status;
      const isPage = !isScripted(request);
      const text = isPage ? plainPage(refused.notice) : refused.notice.text;
      setHeadersFor(response, text, isPage ? "text/html" : "text/plain");
      return response.end(text);
    }
    if (isOfPages(request) && request.method !== "HEAD" && !isScripted(request)) holdBareAnswers(response);
    return listener(request, response);
  };
}
