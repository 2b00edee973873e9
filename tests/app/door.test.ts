/** The door before the pages: what goes no further, what gets its words on the way out, and what passes as it is. */
import http from "node:http";
import type { AddressInfo } from "node:net";
import { Readable } from "node:stream";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { contentSecurityPolicy, mostFormBytes, withDoor, wordsInstead } from "#app/_server/launch/door.mjs";
import { outsideWords as words } from "#app/_words/en/outside.mjs";

const shell = '<!DOCTYPE html><html id="__next_error__"><head></head><body><script>1</script></body></html>';
const whole = "<!doctype html><html><body><main><h1>Elbow</h1></main></body></html>";
type Answer = (request: http.IncomingMessage, response: http.ServerResponse) => void;

/** What stands behind the door in these tests, by address. */
const behind: Readonly<Record<string, Answer>> = {
  "/whole": (_request, response) => {
    response.writeHead(200, { "content-type": "text/html" });
    response.write(whole.slice(0, 20));
    response.end(whole.slice(20));
  },
  "/missing": (_request, response) => {
    response.statusCode = 404;
    response.setHeader("content-type", "text/html; charset=utf-8");
    response.flushHeaders();
    response.write(shell.slice(0, 30));
    response.end(shell.slice(30), () => {});
  },
  "/missing-and-said": (_request, response) => {
    response.writeHead(404, { "content-type": "text/html" }).end(whole);
  },
  "/missing-packed": (_request, response) => {
    response.writeHead(404, { "content-type": "text/html", "content-encoding": "gzip" });
    response.end(gzipSync(shell));
  },
  "/broken": (_request, response) => {
    response.statusCode = 500;
    response.end("Internal Server Error");
  },
  "/stale": (_request, response) => {
    response.writeHead(409, { "content-type": "text/plain" }).end("Server Action unavailable.");
  },
  "/strange": (_request, response) => {
    response.writeHead(405, { "content-type": "text/plain" }).end("Method Not Allowed");
  },
  "/api/v1/missing": (_request, response) => {
    response.writeHead(404, { "content-type": "application/json" }).end('{"error":1}');
  },
  "/policy": (request, response) => {
    response.writeHead(200, { "content-type": "text/plain" });
    response.end(String(request.headers["content-security-policy"]));
  },
};

const server = http.createServer(
  withDoor((request, response) => {
    request.resume();
    (behind[request.url ?? ""] as Answer)(request, response);
  }),
);
let base = "";
beforeAll(async () => {
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => {
  server.close();
});

async function ask(address: string, request: RequestInit = {}) {
  const answer = await fetch(`${base}${address}`, request);
  const type = answer.headers.get("content-type") ?? "";
  return { status: answer.status, type, text: await answer.text(), headers: answer.headers };
}
const form = (bytes = 10) => {
  const fields = new FormData();
  fields.append("file", new Blob([new Uint8Array(bytes)]), "picture.png");
  return fields;
};

describe("a form that goes no further", () => {
  test.each(["https://elsewhere.example", "null", "nonsense", "http://127.0.0.1"])(
    "because it comes from %s",
    async (origin) => {
      const { status, type, text } = await ask("/whole", {
        method: "POST",
        body: form(),
        headers: { origin },
      });
      expect([status, type]).toEqual([403, "text/html; charset=utf-8"]);
      expect(text).toContain(words.foreignText);
      expect(text).toContain("<main>");
    },
  );

  test("because it is too large, though all of it was sent", async () => {
    const { status, text } = await ask("/whole", { method: "POST", body: form(mostFormBytes) });
    expect(status).toBe(413);
    expect(text).toContain(words.tooLargeText);
  });

  test("because it does not say how long it is", async () => {
    const { status, text } = await ask("/whole", {
      method: "POST",
      body: Readable.toWeb(Readable.from([Buffer.from("a=b")])) as ReadableStream,
      duplex: "half",
    } as RequestInit);
    expect(status).toBe(411);
    expect(text).toContain(words.noLengthText);
  });

  test("because nothing in it can be told apart", async () => {
    const headers = { "content-type": "multipart/form-data" };
    const { status, text } = await ask("/whole", { method: "POST", body: "a=b", headers });
    expect(status).toBe(400);
    expect(text).toContain(words.unreadableText);
  });

  test("is told so in plain words where the program's own script reads the answer", async () => {
    const headers = { "next-action": "1", origin: "https://elsewhere.example" };
    expect(await ask("/whole", { method: "POST", body: "[]", headers })).toMatchObject({
      status: 403,
      type: "text/plain; charset=utf-8",
      text: words.foreignText,
    });
  });
});

describe("what passes", () => {
  test("is a form of our own, of any length up to the most", async () => {
    const own = await ask("/whole", { method: "POST", body: form(), headers: { origin: base } });
    expect([own.status, own.text]).toEqual([200, whole]);
    const forwarded = { origin: "https://loans.example", "x-forwarded-host": "loans.example, inner" };
    expect((await ask("/whole", { method: "POST", body: form(), headers: forwarded })).status).toBe(200);
    expect((await ask("/whole", { method: "POST", body: form(mostFormBytes - 1_000) })).status).toBe(200);
  });

  test("is the API, which judges for itself", async () => {
    const headers = { origin: "https://elsewhere.example" };
    const answer = await ask("/api/v1/missing", { method: "POST", body: "{}", headers });
    expect([answer.status, answer.text]).toEqual([404, '{"error":1}']);
  });

  test("is what already has its words, and what is no page", async () => {
    expect((await ask("/missing-and-said")).text).toBe(whole);
    expect((await ask("/strange")).text).toBe("Method Not Allowed");
    expect((await ask("/missing", { headers: { rsc: "1" } })).text).toBe(shell);
    expect((await ask("/missing", { method: "HEAD" })).status).toBe(404);
  });
});

describe("what gets its words on the way out", () => {
  test.each(["/missing", "/missing-packed"])(
    "is a page that is empty without scripts: %s",
    async (address) => {
      const { status, text, headers } = await ask(address);
      expect(status).toBe(404);
      expect(headers.get("content-encoding")).toBeNull();
      expect(text).toMatch(/<noscript>[\s\S]*There is no such page[\s\S]*<\/noscript><\/body>/);
      expect(text).toContain("<script>1</script>");
    },
  );

  test("is a bare fault", async () => {
    const { status, type, text } = await ask("/broken");
    expect([status, type]).toEqual([500, "text/html; charset=utf-8"]);
    expect(text).toContain(words.errorTitle);
    expect(text).not.toContain("Internal Server Error");
  });

  test("is a form whose action the program does not have any more", async () => {
    const { status, text } = await ask("/stale", { method: "POST", body: form(), headers: { origin: base } });
    expect(status).toBe(409);
    expect(text).toContain(words.staleText);
  });

  test("and nothing of a body is lost that cannot be read here", () => {
    expect(wordsInstead(404, true, "no page at all")).toBeNull();
    expect(wordsInstead(403, true, shell)).toBeNull();
  });
});

test("each answer has a word of its own for its scripts, in the request and in the answer alike", async () => {
  const headers = { "content-security-policy": "script-src *" };
  const [first, second] = [await ask("/policy", { headers }), await ask("/policy", { headers })];
  for (const { text, headers: answered } of [first, second])
    expect(answered.get("content-security-policy")).toBe(text);
  expect(first.text).not.toBe(second.text);
  expect(first.text).toMatch(/script-src 'self' 'nonce-[\w+/]{22}=='/);
  const [scripts] = contentSecurityPolicy("x").match(/script-src[^;]*/) ?? [];
  expect(scripts).not.toMatch(/unsafe|\*/);
});
