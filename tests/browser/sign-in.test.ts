/** Signing in and out, and coming back to what one came for. */
import {
  expect,
  expectAccessible,
  open,
  personOf,
  ready,
  signIn,
  test,
} from "#tests/support/browser-page.ts";

const curator = personOf("curator");

test("the right e-mail and password lead to what is due, and signing out ends it", async ({ page }) => {
  await open(page, "/sign-in");
  await expectAccessible(page);
  await signIn(page, curator);
  await expect(page.getByRole("heading", { level: 1, name: "Due and at risk" })).toBeVisible();
  await expect(page.getByRole("banner")).toContainText(`${curator.name}, curator`);

  await page.getByRole("button", { name: "Sign out" }).click();
  await expect(page).toHaveURL("/sign-in");
  await page.goto("/specimens");
  await expect(page.getByRole("button", { name: "Sign in" })).toBeVisible();
});

test("an e-mail in capital letters is the same e-mail", async ({ page }) => {
  await open(page, "/sign-in");
  await signIn(page, { ...curator, email: curator.email.toUpperCase() });
  await expect(page.getByRole("banner")).toContainText(curator.name);
});

test("a wrong pair is refused with one sentence that tells nothing, and the e-mail stays typed", async ({
  page,
}) => {
  await open(page, "/sign-in");
  for (const [what, typed] of [
    ["a wrong password", { ...curator, password: "wrong-password-2026" }],
    ["an unknown e-mail", { ...curator, email: "nobody@halmren.example" }],
    ["a query in the fields", { email: "'or'1'='1@halmren.example", password: "' or 1=1; --" }],
  ] as const)
    await test.step(what, async () => {
      await page.reload();
      await ready(page);
      await signIn(page, typed);
      await expect(page.getByRole("main").getByRole("alert")).toHaveText(
        "This e-mail and password do not belong together. Check both and try again.",
      );
      await expect(page.getByLabel("E-mail")).toHaveValue(typed.email);
    });
  await expectAccessible(page);
  await page.goto("/specimens");
  await expect(page.getByRole("button", { name: "Sign in" })).toBeVisible();
});

test("after ten wrong passwords an e-mail waits, and nobody else's does", async ({ page }) => {
  const guessed = { ...curator, email: "guessed@halmren.example", password: "wrong-password-2026" };
  await open(page, "/sign-in");
  const alert = page.getByRole("main").getByRole("alert");
  for (let attempt = 0; attempt < 10; attempt += 1) {
    await page.reload();
    await ready(page);
    await signIn(page, guessed);
    await expect(alert).toContainText("do not belong together");
  }
  await page.reload();
  await ready(page);
  await signIn(page, guessed);
  await expect(alert).toHaveText(
    /^Too many attempts under this e-mail. The next one is possible in 1[45] min.$/,
  );
  await page.reload();
  await ready(page);
  await signIn(page, curator);
  await expect(page.getByRole("banner")).toContainText(curator.name);
});

test("a stranger comes back to the page asked for, with everything that was asked of it", async ({
  page,
}) => {
  await page.goto("/specimens?q=upper+limb&kind=sheet");
  await ready(page);
  await signIn(page, curator);
  await expect(page).toHaveURL("/specimens?q=upper+limb&kind=sheet");
  await expect(page.getByLabel("Number, title, or a structure")).toHaveValue("upper limb");
});

test("an address outside the program is not followed after signing in", async ({ page, baseURL }) => {
  for (const outside of [
    "https://elsewhere.example/",
    "//elsewhere.example/",
    "/\\elsewhere.example/",
    "/\t/elsewhere.example/",
    "javascript:alert(1)",
  ])
    await test.step(JSON.stringify(outside), async () => {
      await page.context().clearCookies();
      await open(page, `/sign-in?to=${encodeURIComponent(outside)}`);
      await signIn(page, curator);
      await expect(page.getByRole("banner")).toContainText(curator.name);
      await expect(page).toHaveURL(new URL("/", baseURL).href);
    });
});
