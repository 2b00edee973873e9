/** Untrusted input becomes a value, or one refusal that names every wrong field. */
import { expect, test } from "vitest";
import { z } from "zod";
import { parseInput } from "#lib/platform/parse.ts";
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
