/** Untrusted input becomes a value, or one refusal that names every wrong field. */
import { expect, test } from "vitest";
import { z } from "zod";
import { parseInput, parseQuery, withoutUnseen } from "#lib/platform/parse.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const Jar = z.object({
  name: z.string().trim().min(1),
  labels: z.array(z.object({ text: z.string() })),
  content: z.instanceof(Uint8Array).nullable(),
});
const jar = { name: "Jar 12", labels: [{ text: "ethanol" }], content: null };

function refusalOf(input: unknown): Refusal {
  try {
    parseInput(Jar, input);
  } catch (error) {
    if (error instanceof Refusal) return error;
  }
  throw new Error("It was not refused.");
}

test("what fits the schema comes out as its value", () => {
  expect(parseInput(Jar, { ...jar, name: " Jar 12 " })).toEqual(jar);
  const content = new Uint8Array(3);
  expect(parseInput(Jar, { ...jar, content }).content).toBe(content);
});

test("every wrong field is named with its path", () => {
  const { kind, reason, issues } = refusalOf({ ...jar, name: 7, labels: [{ text: "x" }, {}] });
  expect([kind, reason]).toEqual(["invalid", "input.invalid"]);
  expect(issues.map(({ path }) => path)).toEqual(["name", "labels.1.text"]);
});

test("text that cannot be kept is refused at its field: a NUL, half of a character", () => {
  const { kind, reason, issues } = refusalOf({ ...jar, name: "a\0b", labels: [{ text: "\ud83d" }] });
  expect([kind, reason]).toEqual(["invalid", "input.not-storable"]);
  expect(issues).toEqual([
    { path: "name", message: "text.not-storable" },
    { path: "labels.0.text", message: "text.not-storable" },
  ]);
  expect(parseInput(Jar, { ...jar, name: "\ud83d\udc40 ä\n" }).name).toBe("\ud83d\udc40 ä");
});

test("a control character is refused, the ends of lines and the tabulator stay", () => {
  for (const character of ["\u0007", "\u001b", "\u007f", "\u0085"])
    expect(refusalOf({ ...jar, name: `Jar${character}12` }).reason, character).toBe("input.not-storable");
  expect(parseInput(Jar, { ...jar, name: "Jar\t12\r\nnew" }).name).toBe("Jar\t12\r\nnew");
});

test("what nobody sees is taken out of every text, and a text of nothing else is empty", () => {
  const turned = {
    ...jar,
    name: "\u202eJar\u200b 12\ufeff\u2066",
    labels: [{ text: "eth\u00adanol\u2060" }],
  };
  expect(parseInput(Jar, turned)).toEqual({ ...jar, name: "Jar 12" });
  expect(refusalOf({ ...jar, name: "\u200b\u2069\u200d" }).issues.map(({ path }) => path)).toEqual(["name"]);
});

test.each([
  ["the joiners between letters", "می\u200cخواهم", "می\u200cخواهم"],
  ["a family of four", "\u{1f468}\u200d\u{1f469}\u200d\u{1f467}", "\u{1f468}\u200d\u{1f469}\u200d\u{1f467}"],
  ["a joiner that joins nothing", "\u200d Jar\u200c 12 \u200d", " Jar 12 "],
  ["a sign that is drawn", "\u0601 12", "\u0601 12"],
  ["letters with marks", "A\u0301 ä ß", "A\u0301 ä ß"],
])("%s: %j becomes %j", (_what, text, seen) => {
  expect(withoutUnseen(text)).toBe(seen);
});

test("a password is taken to the letter", () => {
  const Secret = z.object({ password: z.string(), note: z.string() });
  expect(parseInput(Secret, { password: "long\u200b", note: "long\u200b" })).toEqual({
    password: "long\u200b",
    note: "long",
  });
});

test("of one field one thing is said, and of two bounds the narrower", () => {
  const Air = z.object({
    humidity: z.number().min(0).min(0.01, "too dry"),
    most: z.number().int().max(10, "too much"),
    name: z.string().min(3, "short").regex(/x/, "no x"),
  });
  let issues: unknown = null;
  try {
    parseInput(Air, { humidity: -1, most: 1e300, name: "a" });
  } catch (error) {
    if (error instanceof Refusal) issues = error.issues;
  }
  expect(issues).toEqual([
    { path: "humidity", message: "too dry" },
    { path: "most", message: "too much" },
    { path: "name", message: "short" },
  ]);
});

test("a question that is wrong is refused as a question", () => {
  const reasons = [{ name: 7 }, { name: "\0" }].map((query) => {
    try {
      parseQuery(z.object({ name: z.string() }), query);
    } catch (error) {
      if (error instanceof Refusal) return error.reason;
    }
    return "";
  });
  expect(reasons).toEqual(["query.invalid", "query.not-storable"]);
});

test("what is nested beyond any schema is refused and not walked through", () => {
  const deep = JSON.parse(`${"[".repeat(100_000)}${"]".repeat(100_000)}`);
  expect(refusalOf({ ...jar, name: deep }).reason).toBe("input.invalid");
  expect(refusalOf({ ...jar, labels: deep }).reason).toBe("input.invalid");
});
