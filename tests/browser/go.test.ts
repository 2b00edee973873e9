/** One field that goes anywhere: numbers, names, acts; what it cannot open ends in the catalogue with a sentence. */
import { expect, open, ready, test } from "#tests/support/browser-page.ts";

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

for (const role of [
  "lecturer",
  "borrower registrar",
  "registrar",
  "curator",
  "inspector",
  "administrator",
] as const)
  test(`each example beside “Go to or do” leads somewhere for a ${role}`, async ({ signedIn }) => {
    const page = await signedIn(role);
    await open(page, "/workings");
    await page.getByLabel("Go to or do").focus();
    const examples = page.locator("#go-examples").getByRole("link");
    await expect(examples.first()).toBeVisible();
    const addresses = await examples.evaluateAll((links) =>
      links.map((link) => link.getAttribute("href") ?? ""),
    );
    expect(addresses.length).toBeGreaterThanOrEqual(3);
    for (const address of addresses) {
      const answer = await page.goto(address);
      expect(answer?.status(), address).toBe(200);
      // Only the structure is looked for in the catalogue.
      if (page.url().includes("/specimens?")) expect(page.url(), address).toContain("medianus");
    }
  });

test("“Go to or do” ends on the list of specimens with a sentence where it leads nowhere", async ({
  signedIn,
}) => {
  const page = await signedIn("lecturer");
  for (const [typed, sentence] of [
    ["new specimen", "“new specimen” is not among the acts of your role."],
    ["L 2019-999", "There is no loan L 2019-999, or it is not yours to see."],
  ] as const)
    await test.step(typed, async () => {
      await open(page, "/workings");
      await page.getByLabel("Go to or do").fill(typed);
      await page.getByLabel("Go to or do").press("Enter");
      await expect(page.getByRole("status").filter({ hasText: sentence })).toBeVisible();
      await expect(page.getByRole("heading", { level: 1 })).toHaveText("Specimens");
    });
  await open(page, "/go?q=windmill%20harbour");
  await expect(page).toHaveURL("/specimens?q=windmill%20harbour");
  await expect(page.getByText("Nothing in the catalogue answers this.")).toBeVisible();
});

test("“Go to or do” looks everything else up in the catalogue", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await open(page, "/workings");
  await page.getByLabel("Go to or do").fill("n. medianus");
  await page.getByLabel("Go to or do").press("Enter");
  await expect(page).toHaveURL("/specimens?q=n.%20medianus");
  await expect(page.getByRole("main")).toContainText("median nerve nervus medianus");
  await expect(
    page.getByRole("table", { name: "Specimens" }).getByRole("row").filter({ hasText: "AN 2019.0142" }),
  ).toBeVisible();
});
