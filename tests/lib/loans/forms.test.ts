/** The forms on a loan's file, as their sources say: what they send to is bound where they are drawn. */
import fs from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";

const folders = ["loans", "slip"].map((folder) =>
  path.resolve(import.meta.dirname, "../../../app/(signed-in)", folder),
);
const sources = folders.flatMap((folder) =>
  fs
    .readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => {
      const file = path.join(entry.parentPath, entry.name);
      return { file, text: fs.readFileSync(file, "utf8") };
    }),
);
const inBrowser = sources.filter(({ text }) => text.includes('"use client"'));

test("no form binds its action in the browser, so that each is sent without a script as well", () => {
  expect(inBrowser.length).toBeGreaterThan(8);
  const binding = inBrowser
    .filter(({ text }) => /\.bind\(/.test(text))
    .map(({ file }) => path.basename(file));
  expect(binding).toEqual([]);
});

const sourceOf = (name: string) => sources.find(({ file }) => path.basename(file) === name)?.text ?? "";

test("Enter in a field of the request saves it: the first button that sends is the one that saves", () => {
  const sends = [...sourceOf("request-form.tsx").matchAll(/<button[^>]*type="submit"[^>]*>/g)].map(
    ([tag]) => tag,
  );
  expect(sends.map((tag) => /value="(\w+)"/.exec(tag)?.[1])).toEqual(["save", "submit"]);
});

test("what cannot be taken back is said before it is done, in a fold that opens without a script", () => {
  for (const [file, action] of [
    ["leave-form.tsx", "withdrawLine"],
    ["request-section.tsx", "withdrawLoan"],
    ["cover-section.tsx", "takeCoverBack"],
  ] as const) {
    const text = sourceOf(file);
    const used = text.lastIndexOf(`${action}.bind`);
    expect(used, file).toBeGreaterThan(0);
    expect(text.lastIndexOf("<details", used), file).toBeGreaterThan(text.lastIndexOf("</details>", used));
    expect(text, file).not.toContain('"use client"');
  }
});
