/** The main pages on a desk, a tablet and a phone: nothing is wider than the screen, and no barrier stands on them. */

import type { Page } from "@playwright/test";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

const pages = [
  ["registrar", ["/", "/institutions", "/institutions/new", "/audit", "/workings", "/workings/crate"]],
  ["curator", ["/specimens", "/specimens/new", "/series", "/series/new"]],
  ["donor officer", ["/donors"]],
  ["administrator", ["/accounts", "/accounts/new"]],
  ["lecturer", ["/", "/specimens", "/series"]],
  ["borrower registrar", ["/institutions"]],
] as const;

/** Pages of one record, by the number that people type. */
const records = [
  ["curator", "AN 2019.0142", ["", "/edit", "/shown", "/check", "/provenance"]],
  ["lecturer", "AN 2011.0002", [""]],
  ["curator", "SR 03", [""]],
  ["registrar", "Kestrel Bay", ["", "/edit", "/venues/new"]],
] as const;

async function expectFits(page: Page): Promise<void> {
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width, `width of ${page.url()}`).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
}

for (const [role, addresses] of pages)
  for (const address of addresses)
    test(`${address} fits the screen of a ${role}`, { tag: ["@tablet", "@phone"] }, async ({ signedIn }) => {
      const page = await signedIn(role);
      await open(page, address);
      await expectFits(page);
      await expectAccessible(page);
    });

for (const [role, number, parts] of records)
  test(`the pages of ${number} fit the screen of a ${role}`, { tag: ["@tablet", "@phone"] }, async ({
    signedIn,
  }) => {
    const page = await signedIn(role);
    await open(page, `/go?q=${encodeURIComponent(number)}`);
    const record = page.url();
    for (const part of parts) {
      await page.goto(`${record}${part}`);
      await ready(page);
      await expectFits(page);
      await expectAccessible(page);
    }
  });

test("the door fits the screen", { tag: ["@tablet", "@phone"] }, async ({ page }) => {
  await open(page, "/sign-in?to=/specimens");
  await expectFits(page);
});
