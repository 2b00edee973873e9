/** Finding specimens: by structure in any of its names, by filters, and page by page. */
import type { Page } from "@playwright/test";
import { addDays } from "#lib/platform/dates.ts";
import { collection } from "#seed/scenario/collection.ts";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

const catalogue = (page: Page) => page.getByRole("table", { name: "Specimens" });
const row = (page: Page, number: string) => catalogue(page).getByRole("row").filter({ hasText: number });

/** The accession numbers in the list, from top to bottom. */
const numbers = (page: Page) => catalogue(page).getByRole("rowheader").allInnerTexts();

/** Searches as somebody does who has the catalogue open. */
async function search(page: Page, text: string): Promise<void> {
  await page.getByLabel("Number, title, or a structure").fill(text);
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page).toHaveURL(({ searchParams }) => searchParams.get("q") === text);
}

const showing = (structureId: string) =>
  collection.filter(({ shows }) =>
    shows.some((shown) => shown.structureId === structureId && /shown|variant/.test(shown.state)),
  );

test("a region finds what is recorded with a structure of it, although no title says so", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  const plexusOnly = showing("brachial-plexus").filter(
    ({ record }) => !/upper limb|membrum superius/i.test(`${record.title} ${record.latinTitle}`),
  );
  expect(plexusOnly.length).toBeGreaterThan(0);
  await open(page, "/specimens");
  await search(page, "upper limb");
  await expect(page.getByRole("main")).toContainText("Taken to mean: upper limb membrum superius");
  for (const { record } of plexusOnly)
    await expect(row(page, record.accessionNumber)).toContainText(/shows brachial plexus \(/);
  await expectAccessible(page);
});

test("the tenth cranial nerve is found by each of its names, by its numeral and with a typing error", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  await open(page, "/specimens");
  for (const name of ["vagus", "nervus vagus", "n. vagus", "X", "CN X", "Vagus Nerve", "nervus vagos"])
    await test.step(name, async () => {
      await search(page, name);
      await expect(page.getByRole("main")).toContainText("vagus nerve nervus vagus");
      for (const { record } of showing("vagus-nerve"))
        await expect(row(page, record.accessionNumber)).toContainText(/vagus nerve \(/);
    });
});

test("a misspelt word, and a German one, are taken to mean the structure", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  for (const [text, meant] of [
    ["vegus", "vagus nerve nervus vagus"],
    ["hart", "heart cor"],
    ["brachal plexus", "brachial plexus plexus brachialis"],
    ["femoris artery", "femoral artery arteria femoralis"],
    ["Niere", "kidney ren"],
    ["Armgeflecht", "brachial plexus plexus brachialis"],
    ["Leber", "liver hepar"],
  ] as const)
    await test.step(text, async () => {
      await search(page, text);
      await expect(page.getByRole("main")).toContainText(`Taken to mean: ${meant}`);
    });
});

test("better answers stand first, and every row says why it is there", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  await search(page, "X");
  // Each row shows the nerve, or has an X in some number; those that show it come first.
  const reasons = await catalogue(page)
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader") })
    .allInnerTexts();
  expect(reasons.length).toBeGreaterThan(2);
  expect(reasons[0]).toMatch(/shows vagus nerve \(.*fully exposed\)/);
  for (const reason of reasons) expect(reason).toMatch(/shows |number |title/);
  const shows = reasons.map((reason) => /shows /.test(reason));
  expect(shows).toEqual([...shows].sort((one, other) => Number(other) - Number(one)));

  await search(page, "heart");
  const titles = await catalogue(page).getByRole("row").filter({ hasText: "by its title" }).allInnerTexts();
  expect(titles.length).toBeGreaterThan(0);
  await expect(catalogue(page).getByRole("row").nth(1)).toContainText("by its title");
});

test("sheets of series are left out until they are asked for, or found by their number", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  const sheets = catalogue(page).getByRole("rowheader").filter({ hasText: /^SR / });
  await search(page, "liver");
  await expect(row(page, "AN ").first()).toBeVisible();
  await expect(sheets).toHaveCount(0);
  await expect(page.getByText("Sheets of series are left out.")).toBeVisible();
  await page.getByLabel("Sheets of series too").check();
  await page.getByRole("button", { name: "Find" }).click();
  await expect(sheets.first()).toBeVisible();
  await expect(page.getByText("Sheets of series are left out.")).toBeHidden();
  const number = (await sheets.first().textContent()) ?? "";
  await open(page, "/specimens");
  await search(page, number);
  await expect(row(page, number)).toBeVisible();
});

test("filters narrow the list to what they say", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  await open(page, "/specimens");
  await page.getByLabel("Origin").selectOption("animal");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page).toHaveURL(/origin=animal/);
  const animals = collection.filter(({ record }) => !record.human);
  expect(await numbers(page)).toEqual(animals.map(({ record }) => record.accessionNumber).sort());

  await page.getByLabel("Kind").selectOption("skeleton or bone");
  await page.getByLabel("Allowed use").selectOption("viewing only");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page).toHaveURL(/kind=skeleton/);
  const bones = animals.filter(
    ({ record }) => record.kind === "skeleton or bone" && record.use === "viewing only",
  );
  expect(await numbers(page)).toEqual(bones.map(({ record }) => record.accessionNumber).sort());

  await page.getByLabel("Preparation").selectOption("slide");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page.getByText("Nothing in the catalogue answers this.")).toBeVisible();
  await expectAccessible(page);
  await page.getByRole("main").getByRole("link", { name: "Clear the search" }).first().click();
  await expect(page).toHaveURL("/specimens");
  await expect(page.getByLabel("Origin")).toHaveValue("");
});

test("a specimen promised in the house is not free on those days", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  const today = new Date().toISOString().slice(0, 10);
  const find = async (from: string, until: string) => {
    await page.getByLabel("Free from").fill(from);
    await page.getByLabel("Free until, that day not included").fill(until);
    await page.getByRole("button", { name: "Find" }).click();
    await expect(page).toHaveURL(new RegExp(`from=${from}`));
  };
  await open(page, "/specimens");
  await search(page, "AN 2022.0051");
  await expect(row(page, "AN 2022.0051")).toBeVisible();
  await find(addDays(today, 12), addDays(today, 20));
  await expect(page.getByText("Nothing in the catalogue answers this.")).toBeVisible();
  // It is free again after some eighty days, and needs a month before the first day of a loan.
  await find(addDays(today, 130), addDays(today, 140));
  await expect(row(page, "AN 2022.0051")).toBeVisible();
});

test("days around the wanted ones are kept free too, and the strip covers all of them", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  const today = new Date().toISOString().slice(0, 10);
  const number = "AN 2022.0051";
  const isFree = async (from: string, until: string) => {
    const asked = new URLSearchParams({ text: number, freeFrom: from, freeUntil: until });
    const { rows } = (await (await page.request.get(`/api/v1/specimens?${asked}`)).json()) as {
      rows: unknown[];
    };
    return rows.length > 0;
  };
  // It may be promised up to the day before, or from the day after: only with all its days free is it listed.
  const days = Array.from({ length: 120 }, (_, day) => addDays(today, day + 1));
  let first: string | undefined;
  let isWithin = false;
  for (const day of days) {
    const listed = await isFree(day, addDays(day, 1));
    if (isWithin && listed) {
      first = day;
      break;
    }
    if (!listed) isWithin = true;
  }
  expect(first, "it is promised for a while, and free again").toBeDefined();
  const from = first ?? today;
  const until = addDays(from, 7);
  await open(page, `/specimens?q=${number}&from=${from}&until=${until}`);
  await expect(
    page.getByText("Days for packing, travel and checks before and after are kept free too"),
  ).toBeVisible();
  const strip = row(page, number).getByRole("img");
  const label = (await strip.getAttribute("aria-label")) ?? "";
  const [, freeFrom = ""] = /free (\d+ \w+ \d{4}) to/.exec(label) ?? [];
  // The free days begin two weeks before the first day on which it could be had, not on that day.
  expect(new Date(`${freeFrom} UTC`).toISOString().slice(0, 10) <= addDays(from, -14)).toBe(true);
  await expect(page.getByText("the days asked for", { exact: true })).toBeVisible();
  await expect(page.getByText("with the days for packing, travel and checks", { exact: true })).toBeVisible();
  await expectAccessible(page);
});

test("after “Find” the keys go on at the list: arrows from row to row, Enter opens", async ({ signedIn }) => {
  const page = await signedIn("curator");
  await open(page, "/specimens");
  const field = page.getByLabel("Number, title, or a structure");
  await field.fill("heart");
  await field.press("Enter");
  await expect(page.getByRole("heading", { name: "Found" })).toBeFocused();
  await ready(page);
  const names = catalogue(page).getByRole("rowheader").getByRole("link");
  await page.keyboard.press("ArrowDown");
  await expect(names.nth(0)).toBeFocused();
  await page.keyboard.press("ArrowDown");
  await expect(names.nth(1)).toBeFocused();
  await page.keyboard.press("ArrowUp");
  await expect(names.nth(0)).toBeFocused();
  await page.keyboard.press("ArrowUp");
  await expect(names.nth(0)).toBeFocused();
  const number = (await names.nth(0).textContent()) ?? "";
  await page.keyboard.press("Enter");
  await expect(page.getByRole("main")).toContainText(number);
  await expect(page).toHaveURL(/\/specimens\/[0-9a-f-]{36}/);
});

test("on a telephone each row is a card with its title, its free days and its button", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, "/specimens?q=heart");
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(390);
  const card = catalogue(page).getByRole("row").nth(1);
  for (const part of [
    card.getByRole("rowheader"),
    card.getByRole("img"),
    card.getByRole("button", { name: /Note on slip/ }),
  ]) {
    const box = await part.boundingBox();
    expect(box).not.toBeNull();
    expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(390);
  }
  for (const place of ["/loans", "/slip"]) {
    await open(page, place);
    const inner = await page
      .getByRole("main")
      .getByRole("table")
      .evaluateAll((tables) => tables.map((table) => table.scrollWidth - table.clientWidth));
    for (const beyond of inner) expect(beyond, place).toBeLessThanOrEqual(0);
  }
});

test("the API reads what is true or false, and refuses what it does not know", async ({ signedIn }) => {
  const { request } = await signedIn("curator");
  const ask = async (query: string) => await request.get(`/api/v1/specimens?${query}`);
  type Answer = { rows: { human: boolean; seriesCode: string | null }[] };
  const animals = (await (await ask("human=false&size=200")).json()) as Answer;
  expect(animals.rows.length).toBeGreaterThan(0);
  expect(animals.rows.every(({ human }) => !human)).toBe(true);
  const alone = (await (await ask("withoutSheets=true&size=200")).json()) as Answer;
  expect(alone.rows.every(({ seriesCode }) => seriesCode === null)).toBe(true);
  for (const query of ["animal=1", "human=perhaps", "kind=organ&kind=sheet", "kind=soup", "text=%00"]) {
    const answer = await ask(query);
    expect(answer.status(), query).toBe(422);
    const { error } = (await answer.json()) as { error: { message: string; issues: { message: string }[] } };
    expect(error.message, query).not.toContain("saved");
    expect(error.issues.length, query).toBeGreaterThan(0);
    for (const { message } of error.issues) expect(message, query).toMatch(/^[A-Z].*\.$/);
  }
});

test("days in the wrong order, or one day of two, are answered with a sentence on the same page", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  await page.getByLabel("Free from").fill("2027-03-01");
  await page.getByLabel("Free until, that day not included").fill("2027-02-01");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toHaveText(
    "The last day has to lie after the first.",
  );
  await expect(page.getByLabel("Free from")).toHaveValue("2027-03-01");
  await page.getByLabel("Free until, that day not included").fill("");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toHaveText(
    "Give both days, the first and the last, or neither.",
  );
  await expectAccessible(page);
});

test("the pages of the list lose nothing and repeat nothing, there and back", async ({ signedIn }) => {
  const page = await signedIn("curator");
  await open(page, "/specimens");
  const pages = [await numbers(page)];
  const next = page.getByRole("link", { name: "Next page" });
  while (await next.isVisible()) {
    await next.click();
    await expect(row(page, pages.at(-1)?.[0] ?? "")).toBeHidden();
    pages.push(await numbers(page));
  }
  expect(pages.length).toBeGreaterThan(1);
  const all = pages.flat();
  expect(new Set(all).size).toBe(all.length);
  expect(all).toEqual([...all].sort());
  expect(all).toEqual(expect.arrayContaining(collection.map(({ record }) => record.accessionNumber)));

  for (const earlier of pages.slice(0, -1).reverse()) {
    await page.getByRole("link", { name: "Previous page" }).click();
    await expect(row(page, earlier[0] ?? "")).toBeVisible();
    expect(await numbers(page)).toEqual(earlier);
  }
  await expect(page.getByRole("link", { name: "Previous page" })).toBeHidden();
});

test("on paper the list has its rows and nothing to press", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  await expect(page.getByRole("button", { name: "Find" })).toBeVisible();
  await page.emulateMedia({ media: "print" });
  await expect(catalogue(page).getByRole("rowheader")).toHaveCount(40);
  for (const role of ["button", "textbox", "searchbox", "combobox", "checkbox", "navigation"] as const)
    await expect(page.getByRole(role)).toHaveCount(0);
});
