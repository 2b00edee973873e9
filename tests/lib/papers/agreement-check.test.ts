/** The agreement's code: printed where an address is given, on either sheet. */
import { extractText, getDocumentProxy } from "unpdf";
import { expect, test } from "vitest";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import { paperSizes, sheets } from "#lib/papers/sheet.ts";
import { hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";

const terms = someTerms(2);
const paper = {
  terms,
  version: terms.loan.version,
  sha256: hashOf(terms),
  drawnUpAt: "2026-11-25T10:00:00Z",
  signatures: [],
};
const checkAddress = "https://lending.example.org/paper/abc";

test.each(paperSizes)("an agreement on %s ends with the address where it can be checked", async (size) => {
  const file = await getDocumentProxy(await paintAgreement({ ...paper, checkAddress, size }));
  const { view } = await file.getPage(1);
  expect(view.slice(2)).toEqual([sheets[size].widthPt, sheets[size].heightPt]);
  const { text } = await extractText(file);
  expect(text.at(-1)).toContain(checkAddress);
});

test("without an address no code is printed", async () => {
  const { text } = await extractText(await getDocumentProxy(await paintAgreement(paper)));
  expect(text.join(" ")).not.toContain("Whoever holds this paper");
});
