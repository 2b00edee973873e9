/** Reading a series of sheets: the level ruler, what is missing and lent, the sheet at the tick. */
import type { Page } from "@playwright/test";
import { seriesOfSheets, sheetNumbers } from "#seed/scenario/series.ts";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

const trunk = seriesOfSheets["SR 03"];
const head = seriesOfSheets["SR 07"];
/** Never made, or given up, and one that did not come back from a loan. */
const missing = [...trunk.missing, 68];

const ruler = (page: Page) => page.getByRole("navigation", { name: /^Level ruler/ });
const tick = (page: Page, number: number) =>
  ruler(page).getByRole("link", { name: new RegExp(`^Sheet ${number},`) });

async function openSeries(page: Page, code: string): Promise<void> {
  await open(page, "/series");
  await page.getByRole("link", { name: code, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(ruler(page)).toBeVisible();
  await ready(page);
}

test("the list of series says how many sheets are recorded", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/series");
  for (const one of [trunk, head])
    await expect(page.getByRole("row").filter({ hasText: one.series.title })).toContainText(
      `${sheetNumbers(one).length} / ${one.series.sheetCount}`,
    );
  await expectAccessible(page);
});

test("the ruler has a tick for each number of the series, and says in words what is missing", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  await openSeries(page, "SR 03");
  await expect(ruler(page).getByRole("link")).toHaveCount(trunk.series.sheetCount);
  for (const number of missing) await expect(tick(page, number)).toHaveAccessibleName(/missing$/);
  await expect(page.getByRole("region", { name: "Level ruler" })).toContainText(
    /Missing numbers\s*17, 58–59, 68, 104/,
  );
  const missingInList = page
    .getByRole("table", { name: "Sheets" })
    .getByRole("row")
    .filter({ hasText: "missing" });
  await expect(missingInList).toHaveCount(missing.length);
  await expectAccessible(page);
});

test("sheets that are away are lent on the ruler, in the list and in the note, the same ones", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  await openSeries(page, "SR 03");
  const lentTicks = await ruler(page).getByRole("link", { name: /lent$/ }).all();
  const lent = await Promise.all(
    lentTicks.map(async (link) => Number(/\d+/.exec((await link.getAttribute("aria-label")) ?? "")?.[0])),
  );
  expect(lent.length).toBeGreaterThan(0);
  const inList = page.getByRole("table", { name: "Sheets" }).getByRole("row").filter({ hasText: "lent" });
  await expect(inList).toHaveCount(lent.length);
  const note = await page.getByRole("region", { name: "Level ruler" }).textContent();
  const [, numbers = ""] = /Lent numbers ([\d–, ]+)/.exec(note ?? "") ?? [];
  const named = [...numbers.matchAll(/(\d+)(?:–(\d+))?/g)].flatMap(([, from, to = from]) =>
    Array.from({ length: Number(to) - Number(from) + 1 }, (_, index) => Number(from) + index),
  );
  expect(named).toEqual(lent);
  await openSeries(page, "SR 07");
  await expect(ruler(page).getByRole("link", { name: /missing$/ })).toHaveCount(head.missing.length);
});

test("the sheet at the tick stands beside the ruler with its level, place and specimen", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  await openSeries(page, "SR 03");
  await tick(page, 60).click();
  await expect(page).toHaveURL(/\?sheet=60$/);
  await expect(page.getByRole("heading", { level: 3 })).toHaveText("Sheet 60, T12");
  await expect(tick(page, 60)).toHaveAttribute("aria-current", "true");
  const beside = page.getByRole("region", { name: "Level ruler" });
  // 59 sheets of 3.5 mm and as many cuts of 1 mm lie before it.
  await expect(beside).toContainText("265.5 to 269.0 mm");
  await expect(beside).toContainText("3.5 mm");
  await expect(beside.getByRole("link", { name: "Open the specimen sheet SR 03.060" })).toBeVisible();
  await expectAccessible(page);

  await tick(page, 58).click();
  await expect(page.getByRole("heading", { level: 3 })).toHaveText(/^Sheet 58/);
  await expect(beside.getByRole("link", { name: /Open the specimen sheet/ })).toHaveCount(0);
});

test("the ruler is walked with the arrow keys", async ({ signedIn }) => {
  const page = await signedIn("curator");
  await openSeries(page, "SR 03");
  await tick(page, 60).click();
  await expect(page.getByRole("heading", { level: 3 })).toHaveText("Sheet 60, T12");
  await tick(page, 60).focus();
  await page.keyboard.press("ArrowDown");
  await expect(tick(page, 61)).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 3 })).toHaveText(/^Sheet 61/);
  await page.getByRole("link", { name: "Open the specimen sheet SR 03.061" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Trunk, transverse sheet 61");
  await expect(page.getByRole("main")).toContainText("SR 03");
});
