/** The sheet of an institution: its loans, the next one, and what a borrower sees of it. */
import type { Page } from "@playwright/test";
import { expect, expectAccessible, open, ready, test } from "#tests/support/browser-page.ts";

const heading = (page: Page) => page.getByRole("heading", { level: 1 });
const loansOf = (page: Page, name: string) =>
  page.getByRole("table", { name: `Loans of ${name}, the newest first` });

type Institutions = { rows: { id: string; name: string }[] };
type Loans = { rows: { number: string; borrower: string }[] };

async function read<Answer>(page: Page, address: string): Promise<Answer> {
  return (await (await page.request.get(`/api/v1${address}`)).json()) as Answer;
}

/** An institution of this test's own, without a venue. */
async function anInstitution(page: Page): Promise<{ id: string; name: string }> {
  const name = `School of the Many Loans ${Date.now()}`;
  const answer = await page.request.post("/api/v1/institutions", {
    data: {
      id: null,
      name,
      kind: "medical school",
      countryCode: "NO",
      city: "Northmere",
      address: "1 Quiet Street",
      languages: ["en"],
      email: "loans@many.example",
      phone: "+47 000 000",
      standing: "good",
      verifiedOn: null,
      note: "",
    },
  });
  expect(answer.status()).toBe(201);
  return { id: ((await answer.json()) as { id: string }).id, name };
}

test("a registrar reads an institution's loans on its sheet, the newest first", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  const { rows: loans } = await read<Loans>(page, "/loans?limit=200");
  const borrower = loans[0]?.borrower ?? "";
  const { rows } = await read<Institutions>(page, "/institutions");
  const { id = "" } = rows.find(({ name }) => name === borrower) ?? {};
  await open(page, `/institutions/${id}`);
  const theirs = loans.filter((loan) => loan.borrower === borrower).map(({ number }) => number);
  expect(await loansOf(page, borrower).getByRole("link").allTextContents()).toEqual(theirs.slice(0, 20));
  await expectAccessible(page);

  await page.getByRole("link", { name: "Open a loan for this institution" }).click();
  await expect(heading(page)).toHaveText("Open a loan");
  await ready(page);
  const offered = page.getByLabel("Borrower and venue").locator("option:not([value=''])");
  expect(await offered.count()).toBeGreaterThan(0);
  for (const name of await offered.allTextContents()) expect(name).toContain(borrower);
  await expectAccessible(page);
  for (const wrong of ["nothing", "01900000-0000-7000-8000-000000000000"])
    expect((await page.request.get(`/loans/new?institution=${wrong}`)).status(), wrong).toBe(404);
});

test("from an institution without a venue the way leads to its venue, its loans, and all of them", async ({
  signedIn,
}) => {
  const page = await signedIn("registrar");
  const { id, name } = await anInstitution(page);
  await open(page, `/institutions/${id}`);
  await expect(page.getByRole("main")).toContainText("A loan goes to a venue: record one first.");
  await open(page, `/loans/new?institution=${id}`);
  await page.getByRole("main").getByRole("link", { name: "New venue" }).click();
  await expect(heading(page)).toHaveText(`New venue at ${name}`);
  await ready(page);
  await page.getByLabel("Name of the room or hall").fill("Hall");
  await page.getByLabel("Address").fill("1 Quiet Street");
  await page.getByRole("button", { name: "Save the venue" }).click();
  await expect(heading(page)).toHaveText(name);
  await page.getByRole("link", { name: "Open a loan for this institution" }).click();
  await expect(page.getByLabel("Borrower and venue")).not.toHaveValue("");
  await ready(page);
  await page.getByRole("button", { name: "Open the slip" }).click();
  await expect(page).toHaveURL(/\/loans\/[0-9a-f-]{36}$/);
  for (let made = 1; made < 21; made += 1) {
    const data = { borrowerId: id, request: null, specimenIds: [] };
    expect((await page.request.post("/api/v1/loans", { data })).status()).toBe(201);
  }
  await open(page, `/institutions/${id}`);
  await expect(loansOf(page, name).getByRole("link")).toHaveCount(20);
  await page.getByRole("link", { name: "All loans of this institution" }).click();
  await expect(heading(page)).toHaveText("Loans");
  await expect(page.getByLabel("Borrower", { exact: true })).toHaveValue(id);
  await expect(page.getByRole("main").getByRole("table").getByRole("link")).toHaveCount(21);
});

test("a borrower's registrar sees the own institution with the own loans alone", async ({ signedIn }) => {
  const page = await signedIn("borrower registrar", "vesterlunde");
  await open(page, "/institutions");
  const name = (await heading(page).textContent()) ?? "";
  const { rows } = await read<Loans>(page, "/loans?limit=200");
  expect(rows.length).toBeGreaterThan(0);
  const shown = await loansOf(page, name).getByRole("link").allTextContents();
  expect(shown).toEqual(rows.map(({ number }) => number).slice(0, 20));
  await expect(page.getByRole("link", { name: "Open a loan for this institution" })).toHaveCount(0);
  await expect(page.getByRole("main").getByRole("link", { name: "Find specimens" })).toBeVisible();
  await expectAccessible(page);
});
