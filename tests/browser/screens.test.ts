/** The main pages on a desk, a tablet and a phone: nothing is wider than the screen, and no barrier stands on them. */
import type { Page } from "@playwright/test";
import type { Role } from "#lib/people/viewer.ts";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

/** Pages by who opens them. */
const pages: readonly (readonly [Role, readonly string[]])[] = [
  [
    "registrar",
    [
      "/",
      "/institutions",
      "/institutions/new",
      "/audit",
      "/letters",
      "/workings",
      "/workings/crate",
      "/rules",
    ],
  ],
  ["curator", ["/specimens", "/specimens/new", "/series", "/series/new"]],
  ["donor officer", ["/donors"]],
  ["administrator", ["/accounts", "/accounts/new", "/centre/fees", "/centre/fees/edit"]],
  ["lecturer", ["/", "/specimens", "/borrow", "/series"]],
  ["borrower registrar", ["/institutions"]],
];

/** Pages of one record, by what people type to get there. */
const records: readonly (readonly [Role, string, readonly string[]])[] = [
  ["curator", "AN 2019.0142", ["", "/edit", "/shown", "/check", "/provenance"]],
  ["curator", "SR 03", [""]],
  ["registrar", "Kestrel Bay", ["", "/edit", "/venues/new"]],
  ["lecturer", "AN 2011.0002", [""]],
];

async function expectFits(page: Page): Promise<void> {
  await ready(page);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width, `width of ${page.url()}`).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
  // Both narrow screens hold the same things in the same order: one look for barriers is enough.
  if (test.info().project.name === "phone") await expectAccessible(page);
}

for (const [role, addresses] of pages)
  test(`the pages of a ${role} fit the screen`, { tag: ["@narrow", "@tablet", "@phone"] }, async ({
    signedIn,
  }) => {
    test.setTimeout(240_000);
    const page = await signedIn(role);
    for (const address of addresses)
      await test.step(address, async () => {
        await open(page, address);
        await expectFits(page);
      });
    for (const [, typed, parts] of records.filter(([reader]) => reader === role)) {
      await open(page, `/go?q=${encodeURIComponent(typed)}`);
      const record = page.url();
      for (const part of parts)
        await test.step(`${typed}${part}`, async () => {
          if (part !== "") await open(page, `${record}${part}`);
          await expectFits(page);
        });
    }
  });

test("the door fits the screen", { tag: ["@narrow", "@tablet", "@phone"] }, async ({ page }) => {
  await open(page, "/sign-in?to=/specimens");
  await expectFits(page);
});
