/** Papers of a loan: issued, printed on both sheets, and checked by a stranger who holds one. */
import { extractText, getDocumentProxy } from "unpdf";
import { expect, expectAccessible, open, test } from "#tests/support/browser-page.ts";

type LoanRow = { id: string; number: string; state: string };

test("what is issued is printed, and its code says to anyone whether it is the valid version", async ({
  signedIn,
  browser,
}) => {
  const page = await signedIn("registrar");
  const { rows } = (await (await page.request.get("/api/v1/loans?limit=200")).json()) as { rows: LoanRow[] };
  const loan = rows.find(({ state }) => state === "at venue");
  await open(page, `/loans/${loan?.id}`);
  const section = page.getByRole("region", { name: "Papers" });
  const link = section.getByRole("link", { name: /^Crate label, .*Letter$/ }).first();
  const address = (await link.getAttribute("href")) ?? "";
  const answer = await page.request.get(address);
  expect(answer.headers()["content-type"]).toBe("application/pdf");
  const file = await getDocumentProxy(new Uint8Array(await answer.body()));
  expect((await file.getPage(1)).view.slice(2)).toEqual([612, 792]);
  const { text } = await extractText(file, { mergePages: true });
  const code = /\/paper\/([a-z2-7]{26})/.exec(text)?.[1] ?? "";
  expect(code).not.toBe("");

  await section.getByLabel("Which").selectOption({ label: "Dispatch note, way out" });
  await section.getByRole("button", { name: "Issue papers" }).click();
  await expect(section.getByText(/papers? issued\.|Nothing has changed/)).toBeVisible();

  const stranger = await (await browser.newContext()).newPage();
  await open(stranger, new URL(`/paper/${code}`, page.url()).href);
  await expect(stranger.getByRole("heading", { level: 1 })).toHaveText("Crate label");
  const main = stranger.getByRole("main");
  await expect(main).toContainText(/Valid: version \d+, in (English|German|French)\./);
  await expect(main).toContainText(loan?.number ?? "");
  await expect(main).not.toContainText(/AN \d|Telephone|Faculty|Course/);
  await expectAccessible(stranger);
  await stranger.context().close();
});
