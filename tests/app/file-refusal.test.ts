/** A file that cannot be had is answered with a page for people, and with JSON for programs. */
import { expect, test } from "vitest";
import { fileRefusal } from "#app/_server/refusals.ts";
import { outsideWords } from "#app/_words/en/outside.mjs";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

const ask = async (accept: string | null, refusal: Refusal) => {
  const request = new Request("http://localhost/specimens/x/picture", accept ? { headers: { accept } } : {});
  const answer = fileRefusal(request, refusal, { address: "/specimens", label: 'Speci"mens <1>' });
  const { headers, status } = answer;
  return {
    status,
    type: headers.get("content-type"),
    location: headers.get("location"),
    text: await answer.text(),
  };
};
const browser = "text/html,application/xhtml+xml,image/avif,*/*;q=0.8";

test.each([browser, "image/*", "*/*", null, "application/json, text/html"])(
  "to %s it is a page",
  async (accept) => {
    const forbidden = new Refusal("forbidden", "permission.sight", { sight: "picture" });
    for (const refusal of [notFound("picture"), forbidden, new Refusal("invalid", "input.invalid")]) {
      const { status, type, text } = await ask(accept, refusal);
      expect([status, type]).toEqual([404, "text/html; charset=utf-8"]);
      expect(text).toContain(`<h1>${outsideWords.notFoundTitle}</h1>`);
      expect(text).toContain('<a href="/specimens">Speci&quot;mens &lt;1&gt;</a>');
    }
  },
);

test("to who asks for JSON it is JSON, and tells what is forbidden from what is not there to nobody", async () => {
  const missing = await ask("application/json", notFound("picture"));
  const forbidden = await ask("application/json", new Refusal("forbidden", "permission.sight"));
  expect(missing.status).toBe(404);
  expect(JSON.parse(missing.text).error.code).toBe("record.not-found");
  expect(forbidden).toEqual(missing);
});

test("who has to sign in is led to the door and back, or told so where a program asks", async () => {
  const refusal = new Refusal("unauthenticated", "permission.sign-in");
  expect(await ask(browser, refusal)).toMatchObject({
    status: 303,
    location: "/sign-in?to=%2Fspecimens%2Fx%2Fpicture",
  });
  for (const accept of ["application/json", "image/*", "*/*"]) {
    const { status, text } = await ask(accept, refusal);
    expect([status, JSON.parse(text).error.code], accept).toEqual([401, "permission.sign-in"]);
  }
});
