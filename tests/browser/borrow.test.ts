/** Asking for something that shows several structures, and the catalogue that is open to the public. */
import { addDays } from "#lib/platform/dates.ts";
import { collection } from "#seed/scenario/collection.ts";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

const today = new Date().toISOString().slice(0, 10);

test("a lecturer names structures and days, and puts the proposed set on the slip", async ({ signedIn }) => {
  const page = await signedIn("lecturer", "livingframe");
  await open(page, "/borrow");
  for (const [typed, name] of [
    ["Herz", "heart cor"],
    ["brachial plexus", "brachial plexus plexus brachialis"],
  ] as const) {
    await page.getByRole("combobox", { name: /Add a structure/ }).fill(typed);
    await page.getByRole("option", { name, exact: true }).click();
  }
  await page.getByLabel("Day of delivery").fill(addDays(today, 900));
  await page.getByLabel("Return by").fill(addDays(today, 960));
  await page.getByRole("button", { name: "Propose a set" }).click();
  await expect(page).toHaveURL(/shows=heart&shows=brachial-plexus/);
  await ready(page);
  const set = page.getByRole("table", { name: "Specimens of the set" });
  await expect(set).toContainText("brachial plexus (");
  await expect(set).toContainText("heart (");
  await expect(page.getByText("No smaller set shows as much")).toBeVisible();
  await expectAccessible(page);
  const numbers = await set.getByRole("rowheader").allInnerTexts();

  await page.getByRole("button", { name: /^Put \d specimens? on the slip$/ }).click();
  await expect(page).toHaveURL(/\/slip$/);
  const slip = page.getByRole("table", { name: "Lines of the loan" });
  for (const number of numbers) await expect(slip).toContainText(number);
  await expect(page.getByLabel("Day of delivery")).toHaveValue(addDays(today, 900));
  await expect(page.getByRole("group", { name: "What is kept of your institution" })).toContainText(
    "Facility report",
  );
  await expect(page.getByLabel("Purpose")).toHaveValue("teaching");
  await page.getByRole("button", { name: "Save and submit the request" }).click();
  await expect(page.getByLabel("All of this still holds")).toHaveAttribute("aria-invalid", "true");
  await page.getByLabel("All of this still holds").check();
  await page.getByLabel("Opening, or first day of the course").fill(addDays(today, 903));
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved. Suitability below is worked out anew.")).toBeVisible();
  await page.reload();
  await expect(page.getByLabel("All of this still holds")).toBeChecked();
  await expect(page.getByLabel("Opening, or first day of the course")).toHaveValue(addDays(today, 903));
  await expectAccessible(page);
});

test("who is not signed in reads what the centre has opened, and no other fact", async ({ page }) => {
  await open(page, "/sign-in");
  await page.getByRole("link", { name: "Look at the open catalogue" }).click();
  await expect(page).toHaveURL("/catalogue");
  await ready(page);
  const table = page.getByRole("table", { name: "Specimens of the open catalogue" });
  await expect(table.getByRole("rowheader").first()).toBeVisible();
  await expectAccessible(page);
  const listed: string[] = [];
  for (;;) {
    listed.push(...(await table.getByRole("rowheader").allInnerTexts()));
    const next = page.getByRole("link", { name: "Next page" });
    if (!(await next.isVisible())) break;
    await next.click();
    await expect(table.getByRole("rowheader").filter({ hasText: listed.at(-1) ?? "" })).toHaveCount(0);
  }
  const publishable = collection.filter(({ record }) => record.publishable);
  expect(listed.sort()).toEqual(publishable.map(({ record }) => record.accessionNumber).sort());

  const record = publishable[0]?.record;
  for (const headers of [{}, { RSC: "1" }]) {
    const answer = await page.request.get(`/catalogue?q=${record?.accessionNumber}`, { headers });
    const body = await answer.text();
    expect(body).toContain(record?.title);
    for (const secret of ["D-", "EUR", "Tollgate Quay", "Dry store", "H-DRY"])
      expect(body).not.toContain(secret);
  }
  const hidden = collection.find(({ record: one }) => !one.publishable);
  if (hidden) {
    await open(page, `/catalogue?q=${hidden.record.accessionNumber}`);
    await expect(page.getByText("Nothing in the catalogue answers this")).toBeVisible();
  }
  const picture = await page.request.get("/catalogue/pictures/01900000-0000-7000-8000-000000000000");
  expect(picture.status()).toBe(404);
});
