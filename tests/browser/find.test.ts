/** Finding specimens: by structure in any of its names, by filters, page by page, and by one field that goes anywhere. */
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

test("filters narrow the list to what they say", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  await open(page, "/specimens");
  await page.getByLabel("Origin").selectOption("animal");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page).toHaveURL(/origin=animal/);
  const animals = collection.filter(({ record }) => !record.human);
  expect(await numbers(page)).toEqual(animals.map(({ record }) => record.accessionNumber).sort());

  await page.getByLabel("Kind").selectOption("skeleton or bone");
  await page.getByLabel("May be").selectOption("viewing only");
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
    await page.getByLabel("until before").fill(until);
    await page.getByRole("button", { name: "Find" }).click();
    await expect(page).toHaveURL(new RegExp(`from=${from}`));
  };
  await open(page, "/specimens");
  await search(page, "AN 2022.0051");
  await expect(row(page, "AN 2022.0051")).toBeVisible();
  await find(addDays(today, 12), addDays(today, 20));
  await expect(page.getByText("Nothing in the catalogue answers this.")).toBeVisible();
  await find(addDays(today, 80), addDays(today, 90));
  await expect(row(page, "AN 2022.0051")).toBeVisible();
});

test("days in the wrong order, or one day of two, are answered with a sentence on the same page", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  await open(page, "/specimens");
  await page.getByLabel("Free from").fill("2027-03-01");
  await page.getByLabel("until before").fill("2027-02-01");
  await page.getByRole("button", { name: "Find" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toHaveText(
    "The last day has to lie after the first.",
  );
  await expect(page.getByLabel("Free from")).toHaveValue("2027-03-01");
  await page.getByLabel("until before").fill("");
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

test("“Go to or do” opens what is typed: a number, a name, a code, an act, a place", async ({ signedIn }) => {
  const page = await signedIn("curator");
  await open(page, "/workings");
  for (const [what, typed, title] of [
    ["an accession number", "AN 2019.0142", "Right upper limb, neurovascular dissection"],
    ["a frequent act", "new specimen", "New specimen"],
    ["a former number", "D 88", "Right upper limb, neurovascular dissection"],
    ["a code of a series", "sr 03", "Trunk, transverse sheets"],
    ["an accession number written otherwise", "an-2019/0142", "Right upper limb, neurovascular dissection"],
    ["a part of an institution's name", "kestrel bay", "Kestrel Bay School of Medicine"],
    ["a place of the program", "what happened", "What happened"],
  ] as const)
    await test.step(what, async () => {
      await page.keyboard.press("Control+k");
      await expect(page.getByLabel("Go to or do")).toBeFocused();
      await page.keyboard.type(typed);
      await page.keyboard.press("Enter");
      await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
      await ready(page);
    });
});

test("“Go to or do” opens a loan by its number", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  const loans = (await (await page.request.get("/api/v1/loans")).json()) as {
    rows: { id: string; number: string }[];
  };
  const { id, number } = loans.rows.at(-1) ?? { id: "", number: "" };
  await open(page, "/workings");
  await page.getByLabel("Go to or do").fill(number.toLowerCase().replace(" ", ""));
  await page.getByLabel("Go to or do").press("Enter");
  await expect(page).toHaveURL(`/loans/${id}`);
  await expect(page.getByRole("main")).toContainText(number);
});

test("“Go to or do” looks everything else up in the catalogue", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/workings");
  await page.getByLabel("Go to or do").fill("n. medianus");
  await page.getByLabel("Go to or do").press("Enter");
  await expect(page).toHaveURL("/specimens?q=n.%20medianus");
  await expect(page.getByRole("main")).toContainText("median nerve nervus medianus");
  await expect(row(page, "AN 2019.0142")).toBeVisible();
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
