/** Every rule of the book is read on the page of some loan of the demo scenario, with what it found. */
import { ruleBook } from "#lib/suitability/rules/book.ts";
import { expect, open, test } from "#tests/support/browser-page.ts";

test("each rule of the book is met in a loan's file, and its entry in the rule book", async ({
  signedIn,
}) => {
  test.setTimeout(120_000);
  const page = await signedIn("registrar");
  const { rows } = (await (await page.request.get("/api/v1/loans?limit=200")).json()) as {
    rows: { id: string }[];
  };
  const wanted = new Set<string>(ruleBook.map(({ id }) => id));
  for (const { id } of rows) {
    if (wanted.size === 0) break;
    await open(page, `/loans/${id}`);
    const answers = page.getByRole("table", { name: "Every answer of the rules", includeHidden: true });
    if ((await answers.count()) === 0) continue;
    for (const rule of await answers.locator("tbody tr > :first-child").allTextContents())
      wanted.delete(rule.trim());
  }
  expect([...wanted]).toEqual([]);
  await open(page, "/rules");
  const shown = await page.getByRole("main").textContent();
  for (const { id } of ruleBook) expect(shown).toContain(id);
});
