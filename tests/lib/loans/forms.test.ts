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
