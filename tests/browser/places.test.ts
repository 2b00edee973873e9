/** Where specimens stand and when they are promised, by hand: places, moves, bookings of the house, the centre itself. */
import type { Locator, Page } from "@playwright/test";
import { expect, expectAccessible, open, ready, tabTo, test } from "#tests/support/browser-page.ts";
import { freshNumber, recordThroughApi } from "#tests/support/browser-specimen.ts";

const refusal = (form: Locator) => form.getByRole("alert");
/** The section of a page; a table of the same name in it is a region as well. */
/** A section of a page, or a table of it. */
const region = (page: Page, name: string) =>
  page
    .getByRole("region", { name, exact: true })
    .or(page.getByRole("group", { name, exact: true }))
    .first();

/** A code that no other place has, on a server that was used before as well. */
const freshCode = () => `S-${freshNumber().replace(/\D/g, "")}`;

/** A shelf in the dry store, made on the screen. @returns its name and the address of its page */
async function makeShelf(page: Page): Promise<{ name: string; code: string; address: string }> {
  const code = freshCode();
  const name = `Shelf ${code}`;
  await open(page, "/places");
  await page.getByRole("link", { name: "Dry store" }).click();
  await page.getByRole("link", { name: "New place in here" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("New place in Dry store");
  await ready(page);
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByLabel("Code", { exact: true }).fill(code);
  await expect(page.getByLabel("Kind")).toHaveValue("shelf");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(name);
  return { name, code, address: new URL(page.url()).pathname };
}

/** Opens what is folded and gives the form in it. */
async function unfold(page: Page, section: string, name: string): Promise<Locator> {
  await region(page, section).getByText(name, { exact: true }).first().click();
  const form = page.getByRole("form", { name, exact: true });
  await expect(form).toBeVisible();
  return form;
}

test("a curator adds a shelf, brings a specimen there, books it, is told of an overlap, and releases it", async ({
  signedIn,
}) => {
  test.setTimeout(120_000);
  const page = await signedIn("curator");
  const { id, number, title } = await recordThroughApi(page.request);
  await open(page, "/places");
  await expectAccessible(page);
  await expect(region(page, "Specimens without a place")).toContainText(number);

  const shelf = await makeShelf(page);
  await expectAccessible(page);
  await expect(region(page, "Record")).toContainText("Centre, Tollgate Quay, Dry store");
  await expect(region(page, "What stands here")).toContainText("Nothing stands here.");

  await open(page, `/specimens/${id}`);
  await expect(region(page, "Whereabouts")).toContainText("No place is recorded.");
  const give = await unfold(page, "Whereabouts", "Give it its place");
  await expectAccessible(page);
  await give.getByLabel("To", { exact: true }).selectOption({ label: await labelOf(give, shelf.code) });
  await give.getByLabel("Why it is moved").fill("accessioned");
  await give.getByRole("button").click();
  const moved = page.getByRole("status").filter({ hasText: `It stands at ${shelf.name} now.` });
  await expect(moved).toBeVisible();
  const moves = page.getByRole("table", { name: "Moves" });
  await expect(moves.getByRole("row").nth(1)).toContainText("accessioned");
  await expect(moves.getByRole("row").nth(1)).toContainText("Tomas Elsward");

  const book = await unfold(page, "Bookings", "Book days for the house");
  await expectAccessible(page);
  const bookDays = async (first: string, last: string) => {
    await book.getByLabel("For", { exact: true }).selectOption("examination");
    await book.getByLabel("First day").fill(first);
    await book.getByLabel("Last day").fill(last);
    await book.getByRole("button", { name: "Book days for the house" }).click();
  };
  await bookDays("2031-03-04", "2031-03-03");
  await expect(book.getByLabel("Last day")).toHaveAccessibleDescription(/cannot lie before the first/);
  await bookDays("2031-03-03", "2031-03-04");
  await expect(book.getByRole("status")).toHaveText("Booked: 3 March 2031 to 4 March 2031.");
  const bookings = page.getByRole("table", { name: "Bookings", exact: true });
  await expect(bookings.getByRole("row").nth(1)).toContainText("examination");

  await bookDays("2031-03-04", "2031-03-06");
  await expect(refusal(book)).toContainText(
    `${number} is promised on some of these days. It is free again from 5 March 2031.`,
  );

  const release = bookings.getByRole("button", { name: "Release 3 March 2031 to 4 March 2031" });
  await release.click();
  await expect(region(page, "Bookings")).toContainText("No days are promised.");
  await bookDays("2031-03-04", "2031-03-06");
  await expect(book.getByRole("status")).toHaveText("Booked: 4 March 2031 to 6 March 2031.");

  await region(page, "Bookings").getByText("1 earlier or given back").click();
  const again = page.getByRole("button", { name: "Book again: 3 March 2031 to 4 March 2031" });
  await expectAccessible(page);
  await again.click();
  await expect(
    page.getByRole("form", { name: /^Book again: 3 March 2031/ }).getByRole("alert"),
  ).toContainText("It is free again from 7 March 2031.");

  await region(page, "Whereabouts").getByRole("link", { name: shelf.name }).first().click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(shelf.name);
  await expect(region(page, "What stands here").getByRole("row").filter({ hasText: number })).toContainText(
    title,
  );
  await open(page, "/places");
  const row = page.getByRole("table", { name: "Places of the house" }).getByRole("row");
  await expect(row.filter({ hasText: shelf.code })).toContainText(/shelf\s*1\s*1/);
});

/** The whole label of the place with this code in a list of places. */
async function labelOf(form: Locator, code: string): Promise<string> {
  const labels = await form.getByLabel("To", { exact: true }).getByRole("option").allTextContents();
  return labels.find((label) => label.startsWith(code)) ?? "";
}

test("a place has a code of its own and is never put inside itself; what was typed stays", async ({
  signedIn,
}) => {
  const page = await signedIn("collection manager");
  const shelf = await makeShelf(page);
  await page.getByRole("link", { name: "Edit the place" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(`Edit ${shelf.name}`);
  await ready(page);
  const around = await page.getByLabel("Lies in").getByRole("option").allTextContents();
  expect(around.some((label) => label.startsWith("H-DRY "))).toBe(true);
  expect(around.some((label) => label.startsWith(shelf.code))).toBe(false);

  await page.getByLabel("Code", { exact: true }).fill("H-WET");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByRole("main").getByRole("alert")).toHaveText(
    "There is already a place with the code H-WET.",
  );
  await expect(page.getByLabel("Code", { exact: true })).toHaveValue("H-WET");
  await page.getByLabel("Code", { exact: true }).fill("");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByLabel("Code", { exact: true })).toHaveAccessibleDescription(/Fill this in\./);
  await page.getByLabel("Code", { exact: true }).fill(`${shelf.code}-B`);
  await page.getByLabel("Name", { exact: true }).focus();
  await tabTo(page, page.getByRole("button", { name: "Save", exact: true }));
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(shelf.address);
  await expect(page.getByRole("main")).toContainText(`${shelf.code}-B`);
  await expect(region(page, "What happened")).toContainText("Place kept");
});

test("what is away on a loan is not moved by hand, and its days are not released by hand", async ({
  signedIn,
}) => {
  const page = await signedIn("registrar");
  const loans = (await (await page.request.get("/api/v1/loans?limit=200")).json()) as {
    rows: { id: string; number: string; state: string; borrower: string }[];
  };
  const loan = loans.rows.find(({ state }) => state === "at venue");
  const { lines } = (await (await page.request.get(`/api/v1/loans/${loan?.id}`)).json()) as {
    lines: { specimenId: string }[];
  };
  await open(page, `/specimens/${lines[0]?.specimenId}`);
  const whereabouts = region(page, "Whereabouts");
  await expect(whereabouts).toContainText(
    `The specimen is with ${loan?.borrower}. It can be moved here once it has been received home.`,
  );
  await expect(whereabouts.getByRole("form")).toHaveCount(0);
  const row = page
    .getByRole("table", { name: "Bookings", exact: true })
    .getByRole("row")
    .filter({ has: page.getByRole("link", { name: loan?.number ?? "" }) });
  await expect(row).toContainText("given back with the loan");
  await expect(row.getByRole("button")).toHaveCount(0);
});

test("a move is recorded before any script has come", async ({ browser, signedIn }) => {
  const page = await signedIn("conservator");
  const curator = await signedIn("curator");
  const { id } = await recordThroughApi(curator.request);
  await open(page, "/");
  const storageState = await page.context().storageState();
  const context = await browser.newContext({ storageState, javaScriptEnabled: false });
  try {
    const plain = await context.newPage();
    await plain.goto(`/specimens/${id}`);
    const form = await unfold(plain, "Whereabouts", "Give it its place");
    await form.getByLabel("To", { exact: true }).selectOption({ label: await labelOf(form, "H-WORK") });
    await form.getByLabel("Why it is moved").fill("to be cleaned");
    await form.getByLabel("When it was moved").fill("2020-02-03T08:30");
    await form.getByRole("button").click();
    await expect(plain.getByRole("table", { name: "Moves" })).toContainText(
      /3 Feb 2020, 08:30 UTC\s*Conservation workshop H-WORK\s*to be cleaned/,
    );
  } finally {
    await context.close();
  }
});

test("the collection manager changes what the centre says of itself, and the house reads it", async ({
  signedIn,
}) => {
  const page = await signedIn("collection manager");
  await open(page, "/");
  await page.getByRole("contentinfo").getByRole("link", { name: "About the centre" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(
    "Halmren Centre for Anatomical Preservation",
  );
  await expectAccessible(page);
  await page.getByRole("link", { name: "Edit the settings" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Settings of the centre");
  await ready(page);
  await expectAccessible(page);
  const before = await page.getByLabel("Telephone", { exact: true }).inputValue();
  const save = async (telephone: string, example: string) => {
    await page.getByLabel("Telephone", { exact: true }).fill(telephone);
    await page.getByLabel("An example").fill(example);
    await page.getByRole("button", { name: "Save", exact: true }).click();
  };
  await save("+358 2 555 0199", "Left arm 12");
  await expect(page.getByLabel("An example")).toHaveAccessibleDescription(
    /The example does not follow the pattern/,
  );
  await save("+358 2 555 0199", "AN 2019.0142");
  await expect(page).toHaveURL("/centre");
  const curator = await signedIn("curator");
  await open(curator, "/centre");
  await expect(curator.getByRole("main")).toContainText("+358 2 555 0199");
  await expect(curator.getByRole("link", { name: "Edit the settings" })).toHaveCount(0);
  expect((await curator.request.get("/centre/edit")).status()).toBe(404);

  await open(page, "/centre/edit");
  await save(before, "AN 2019.0142");
  await expect(page).toHaveURL("/centre");
});

test("a borrower gets the page that is not there, and no way to it", async ({ signedIn }) => {
  const curator = await signedIn("curator");
  await open(curator, "/places");
  const place = await curator.getByRole("link", { name: "Dry store" }).getAttribute("href");
  for (const role of ["lecturer", "borrower registrar"] as const) {
    const page = await signedIn(role);
    await open(page, "/specimens");
    await expect(page.getByRole("banner").getByRole("link", { name: "Places" })).toHaveCount(0);
    await expect(page.getByRole("contentinfo").getByRole("link", { name: "About the centre" })).toHaveCount(
      0,
    );
    for (const address of [
      "/places",
      "/places/new",
      place ?? "",
      `${place}/edit`,
      "/centre",
      "/centre/edit",
    ]) {
      const answer = await page.goto(address);
      expect(answer?.status(), address).toBe(404);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText("There is no such page");
    }
  }
});
