/** What a record is on paper: a few pages of what it says, without forms, acts or what stands folded. */
import type { Page } from "@playwright/test";
import { PDFDocument } from "pdf-lib";
import { expect, open, test } from "#tests/support/browser-page.ts";

async function pagesOnPaper(page: Page): Promise<number> {
  const paper = await page.pdf({ format: "A4", preferCSSPageSize: true });
  return (await PDFDocument.load(paper)).getPageCount();
}

async function openRecord(page: Page, typed: string): Promise<void> {
  await open(page, `/go?q=${encodeURIComponent(typed)}`);
  await page.emulateMedia({ media: "print" });
}

for (const [what, typed, most] of [
  ["a specimen with many structures and a long life", "AN 2019.0142", 5],
  ["a loan of two specimens that is away", "L 2026-007", 7],
  ["a loan of two specimens that is over", "L 2025-002", 7],
] as const)
  test(`${what} takes at most ${most} pages`, async ({ signedIn }) => {
    const page = await signedIn("registrar");
    await openRecord(page, typed);
    expect(await pagesOnPaper(page)).toBeLessThanOrEqual(most);
    await expect(page.getByRole("navigation")).toHaveCount(0);
    await expect(page.getByRole("main").getByRole("button")).toHaveCount(0);
    await expect(page.getByRole("main").getByRole("textbox")).toHaveCount(0);
    // A folded section is printed in full; what is folded within one is not.
    await expect(
      page.locator("details:not([open]):not(:has(> summary > h2))").filter({ visible: true }),
    ).toHaveCount(0);
  });

test("a working that was opened is printed, with the figures that were put in", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  await open(page, "/workings/sheet-series?thicknessMm=3&sawLossMm=1&sheetCount=20");
  await page.emulateMedia({ media: "print" });
  await expect(page.getByLabel("Thickness as cut, mm")).toBeVisible();
  await expect(page.getByRole("main")).toContainText("79 mm");
});
