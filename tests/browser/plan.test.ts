/**
 * Time: the plan of a loan is moved and marked, a longer loan is answered, and a
 * person's calendar opens under its secret address alone.
 */
import { expect, expectAccessible, open, test } from "#tests/support/browser-page.ts";

test("a registrar moves the plan, answers a longer loan and reads the own calendar", async ({
  signedIn,
  request,
}) => {
  test.setTimeout(120_000);
  const page = await signedIn("registrar");

  await test.step("the plan moves, and says why where it cannot", async () => {
    await open(page, "/loans?phase=accepted");
    await page
      .getByRole("row", { name: /Abdomen, spring course/ })
      .getByRole("link")
      .first()
      .click();
    const plan = page.getByRole("region", { name: "Plan", exact: true });
    await expect(plan.getByRole("rowheader", { name: "opening day", exact: true })).toBeVisible();
    await expectAccessible(page);
    await plan.getByText("Move a date").click();
    const form = plan.getByRole("form", { name: "Move a date" });
    await form.getByLabel("Step").selectOption({ label: "packed and sealed" });
    await form.getByLabel("Last day or opening day").fill("2020-01-01");
    await form.getByRole("button").click();
    await expect(form.getByText("has passed")).toBeVisible();
    await form.getByLabel("Last day or opening day").fill("");
    await form.getByRole("button").click();
    await expect(form.getByText("The step is back in the plan.")).toBeVisible();
  });

  await test.step("a longer loan is refused with grounds", async () => {
    await open(page, "/loans?phase=away");
    await page
      .getByRole("row", { name: /Winter course, upper limb/ })
      .getByRole("link")
      .first()
      .click();
    const longer = page.getByRole("region", { name: "Longer or sooner", exact: true });
    await expect(longer.getByRole("table", { name: "Longer loans asked for" })).toContainText("waits");
    const form = longer.getByRole("form", { name: "Answer the wish" });
    await form.getByLabel("Answer", { exact: true }).selectOption("refused");
    await form.getByLabel("What the borrower reads").fill("Both specimens have to rest after this course.");
    await form.getByRole("button").click();
    await expect(longer.getByRole("table", { name: "Longer loans asked for" })).toContainText("refused");
  });

  await test.step("the calendar opens for whoever has its address, until it is revoked", async () => {
    await open(page, "/calendar");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Make an address" }).click();
    const told = (await page.getByRole("status").filter({ hasText: "told once" }).textContent()) ?? "";
    const address = new URL(/https?:\S+\.ics/.exec(told)?.[0] ?? "").pathname;
    const answer = await request.get(address);
    expect(answer.headers()["content-type"]).toContain("text/calendar");
    expect(await answer.text()).toContain("BEGIN:VEVENT");
    expect((await request.get(`/calendar/${"a".repeat(43)}.ics`)).status()).toBe(404);
    await page.getByText("Revoke the address").first().click();
    await page.getByRole("button", { name: "Revoke the address" }).click();
    await expect(page.getByText("You have no address yet.")).toBeVisible();
    expect((await request.get(address)).status()).toBe(404);
  });
});
