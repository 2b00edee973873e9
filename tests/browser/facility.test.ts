/** A venue's facility report, from its page to the next version; a logger's file; and whom it is not for. */
import {
  expect,
  expectAccessible,
  open,
  personOf,
  ready,
  signIn,
  test,
} from "#tests/support/browser-page.ts";

const room = "Teaching room 2";

test("a borrower's registrar files a version, confirms it, and files what a logger wrote", async ({
  signedIn,
}) => {
  const page = await signedIn("borrower registrar", "kestrel");
  await open(page, "/institutions");
  await page.getByRole("link", { name: `Facility report of ${room}` }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(room);
  await expect(page.getByRole("img", { name: /^Relative humidity/ })).toBeVisible();
  await expectAccessible(page);
  const versions = page.getByRole("table", { name: "Versions of the report, the newest first" });
  const before = await versions.getByRole("row").count();

  await page.getByRole("link", { name: "File a new version" }).first().click();
  await ready(page);
  const lux = page.getByLabel("Illuminance at the specimen, lx");
  const stated = Number(await lux.inputValue());
  expect(stated).toBeGreaterThan(10);
  await lux.fill("bright");
  await page.getByLabel("Lenders who may be asked").fill("The centre alone");
  await page.getByRole("button", { name: "File this version" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toBeVisible();
  await expect(page.getByLabel("Lenders who may be asked")).toHaveValue("The centre alone");
  await lux.fill(String(stated - 1));
  await page.getByRole("button", { name: "Add lines below: The way in" }).click();
  await expect(page.getByRole("status")).toContainText("Nothing is filed yet.");
  await expect(lux).toHaveValue(String(stated - 1));
  await expectAccessible(page);
  await page.getByRole("button", { name: "File this version" }).click();
  await expect(versions.getByRole("row")).toHaveCount(before + 1);
  await expect(versions.getByRole("row").nth(1)).toContainText(
    new RegExp(`Illuminance at the specimen, lx: from ${stated} → +to +${stated - 1}`),
  );

  await ready(page);
  await page.getByLabel(/^Nothing has changed since version/).check();
  await page.getByRole("button", { name: "Confirm as of today" }).click();
  await expect(versions.getByRole("row")).toHaveCount(before + 2);
  await expect(versions.getByRole("row").nth(1)).toContainText("nothing");

  await ready(page);
  await page.getByText("File a logger's file").first().click();
  const table = "time,temp °C,RH %\n2026-01-10T00:00Z,20,48\n2026-01-10T20:00Z,20,59\n";
  const file = (content: string) => ({
    name: "case.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(content),
  });
  await page.getByLabel("The logger's file").setInputFiles(file(table.replaceAll("Z,", ",")));
  await page.getByLabel("Place of the logger and time").fill("Case of the test");
  const send = page.getByRole("group").getByRole("button", { name: "File a logger's file" });
  await send.click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("does not say by which clock");
  await page.getByLabel("The logger's file").setInputFiles(file(table));
  await send.click();
  const record = page.getByRole("region", { name: "Case of the test" });
  await expect(record.getByRole("table", { name: "Against the default limits" })).toContainText("bar");
});

test.describe("without a script", () => {
  test.use({ javaScriptEnabled: false });

  test("a report that is refused comes back with everything that was typed", async ({ page }) => {
    await page.goto("/sign-in");
    await signIn(page, personOf("borrower registrar", "vesterlunde"));
    await page.goto("/institutions");
    await page.getByRole("link", { name: "Facility report of Demonstration room" }).click();
    await page
      .getByRole("link", { name: /^File a new version/ })
      .first()
      .click();
    await page.getByLabel("Set point of temperature, °C").fill("warm");
    await page.getByLabel("Who holds keys").fill("The porter alone");
    await page.getByRole("button", { name: "File this version" }).click();
    await expect(page.getByRole("main").getByRole("alert")).toBeVisible();
    await expect(page.getByLabel("Set point of temperature, °C")).toHaveValue("warm");
    await expect(page.getByLabel("Who holds keys")).toHaveValue("The porter alone");
  });
});
