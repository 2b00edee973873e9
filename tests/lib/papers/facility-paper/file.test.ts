import { extractText, getDocumentProxy } from "unpdf";
import { expect, test } from "vitest";
import { facilityPaperHash, paintFacilityPaper } from "#lib/papers/facility-paper/file.ts";
import { aPaper, labels } from "#tests/lib/papers/facility-paper/facility-cases.ts";

const paint = (paper = aPaper()) =>
  paintFacilityPaper(paper, "letter", { labels, language: "en", author: "Port Selwyn" });

test("the file reads back with its fingerprint on every page", async () => {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(await paint())));
  for (const page of text) expect(page).toContain(facilityPaperHash(aPaper()));
  expect(text.join(" ").replace(/\s+/g, " ")).toContain("Facility report: Dissection room 2");
});

test("the same version gives the same bytes, another answer another fingerprint", async () => {
  const [first, second] = await Promise.all([paint(), paint()]);
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  expect(facilityPaperHash(aPaper())).not.toBe(facilityPaperHash(aPaper({ version: 3 })));
});
