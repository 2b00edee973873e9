/** Where a specimen came from: consents, the sealed record of a donor, and who may look. */
import type { Page } from "@playwright/test";
import { collection } from "#seed/scenario/collection.ts";
import { recentDonors } from "#seed/scenario/donors-recent.ts";
import { expect, expectAccessible, open, personOf, ready, test } from "#tests/support/browser-page.ts";
import { recordThroughApi } from "#tests/support/browser-specimen.ts";

/** A specimen of one donor who has a sealed record. */
const specimen = collection.find(({ donors }) => donors.length === 1 && donors[0] === "alder")?.record;
const fullName = recentDonors.alder.sealed?.fullName ?? "";

async function openSpecimen(page: Page): Promise<void> {
  await open(page, `/go?q=${encodeURIComponent(specimen?.accessionNumber ?? "")}`);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(specimen?.title ?? "");
}

const donorLink = (page: Page) =>
  page.getByRole("region", { name: "Provenance" }).getByRole("definition").getByRole("link");

async function openDonor(page: Page): Promise<string> {
  await openSpecimen(page);
  const code = (await donorLink(page).textContent()) ?? "";
  await donorLink(page).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Donor");
  await expect(page.getByRole("main")).toContainText(code);
  await ready(page);
  return code;
}

test("the donor officer reads a consent: what was allowed, its limits, where the paper lies", async ({
  signedIn,
}) => {
  const page = await signedIn("donor officer");
  const code = await openDonor(page);
  await expectAccessible(page);
  const main = page.getByRole("main");
  await expect(main).toContainText("17 March 2009");
  await expect(main).toContainText(recentDonors.alder.consent?.evidencePlace ?? "no place");
  const scopes = page.getByRole("table", { name: "Scopes of the consent and the answer to each" });
  await expect(scopes.getByRole("row").filter({ hasText: "professional teaching" })).toContainText("granted");
  await expect(main).not.toContainText(fullName);
  await expect(page.getByRole("table", { name: "Specimens of this donor" })).toContainText(
    specimen?.accessionNumber ?? "",
  );
  await open(page, "/donors");
  await expectAccessible(page);
  await expect(page.getByRole("link", { name: code })).toBeVisible();
});

test("a curator opens the sealed record with a reason, and the look is listed for the donor officer", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  const code = await openDonor(page);
  await expectAccessible(page);
  const reason = `A relative asks about the burial, letter of ${new Date().toISOString()}`;
  const main = page.getByRole("main");
  await expect(main).not.toContainText(fullName);
  await page.getByLabel("Reason for opening").fill(reason);
  await page.getByRole("button", { name: "Open sealed record" }).click();
  await expect(main).toContainText(fullName);
  await expect(main.getByRole("status")).toContainText("Your look is recorded");
  await expectAccessible(page);
  await page.getByRole("button", { name: "Close the record" }).click();
  await expect(main).not.toContainText(fullName);
  await page.reload();
  await expect(main.getByLabel("Reason for opening")).toBeVisible();
  await expect(main).not.toContainText(fullName);

  const officer = await signedIn("donor officer");
  await open(officer, `/donors/${code}`);
  const look = officer.getByRole("table", { name: "Looks, the newest first" }).getByRole("row").nth(1);
  await expect(look).toContainText(reason);
  await expect(look).toContainText(personOf("curator").name);
});

test("without a reason that somebody can judge, the sealed record stays sealed and no look is counted", async ({
  signedIn,
}) => {
  const officer = await signedIn("donor officer");
  const code = await openDonor(officer);
  const looks = officer.getByRole("table", { name: "Looks, the newest first" }).getByRole("row");
  const before = await looks.count();

  const page = await signedIn("curator");
  await open(page, `/donors/${code}`);
  const field = page.getByLabel("Reason for opening");
  const press = () => page.getByRole("button", { name: "Open sealed record" }).click();
  await press();
  await expect(field).toBeFocused();
  await field.fill("            ");
  await press();
  await expect(page.getByRole("main").getByRole("alert")).toContainText(
    "Say why the sealed record is opened, in at least ten characters.",
  );
  await expect(page.getByRole("main")).not.toContainText(fullName);

  await officer.reload();
  await expect(looks).toHaveCount(before);
});

test("a registrar sees what was allowed and never whose word it is", async ({ signedIn }) => {
  const officer = await signedIn("donor officer");
  const code = await openDonor(officer);

  const page = await signedIn("registrar");
  await openSpecimen(page);
  await expect(page.getByRole("list", { name: "Consent" })).toContainText("professional teaching");
  await expect(donorLink(page)).toHaveCount(0);
  expect(await page.content()).not.toContain(code);
  await expect(page.getByRole("link", { name: "Donors" })).toHaveCount(0);
  const answer = await page.goto(`/donors/${code}`);
  expect(answer?.status()).toBe(404);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("There is no such page");
  await expect(page.getByRole("main")).not.toContainText(code);
});

test("a conservator reads the consent and has no way to open the seal", async ({ signedIn }) => {
  const page = await signedIn("conservator");
  await openDonor(page);
  await expect(page.getByRole("main")).toContainText("A sealed record is kept.");
  await expect(page.getByRole("button", { name: "Open sealed record" })).toHaveCount(0);
  await expect(page.getByRole("table", { name: "Looks, the newest first" })).toHaveCount(0);
});

test("a lecturer sees neither consent nor donor of a specimen", async ({ signedIn }) => {
  const page = await signedIn("lecturer");
  await openSpecimen(page);
  await expect(page.getByRole("list", { name: "Consent" })).toHaveCount(0);
  await expect(donorLink(page)).toHaveCount(0);
});

test("a registrar takes a permit back with a day and a reason; recorded again, it counts again", async ({
  signedIn,
}) => {
  const { id } = await recordThroughApi((await signedIn("curator")).request);
  const page = await signedIn("registrar");
  await open(page, `/specimens/${id}/provenance`);
  const taking = page.getByRole("form", { name: "Take back a permit" });
  await expect(taking).toHaveCount(0);

  const recording = page.getByRole("form", { name: "Record a permit" });
  await recording.getByLabel("Kind").selectOption("import");
  await recording.getByLabel("Number").fill("IM 77/26");
  await recording.getByLabel("Authority").fill("Veterinary office of the coast");
  await recording.getByRole("button").click();
  const row = page.getByRole("table", { name: "Permits of this specimen" }).getByRole("row").nth(1);
  await expect(row).toContainText("no end stated");

  const reason = "Revoked by the office, letter of 3 March";
  await taking.getByLabel("Permit").selectOption({ label: "import, IM 77/26" });
  await taking.getByLabel("Counts no longer from").fill("2026-03-05");
  await taking.getByLabel("Reason").fill("too short");
  await taking.getByRole("button").click();
  await expect(taking.getByLabel("Reason")).toHaveAccessibleDescription(/in at least ten characters/);
  await expect(taking.getByRole("alert")).toContainText("Say why the permit is taken back");
  await taking.getByLabel("Reason").fill(reason);
  await taking.getByRole("button").click();
  await expect(row).toContainText("taken back on 5 March 2026");
  await expect(row).toContainText(reason);
  await expect(taking).toHaveCount(0);
  await expectAccessible(page);
  await open(page, `/specimens/${id}`);
  await expect(page.getByRole("region", { name: "Provenance" })).not.toContainText("IM 77/26");

  await open(page, `/specimens/${id}/provenance`);
  await recording.getByLabel("Kind").selectOption("import");
  await recording.getByLabel("Number").fill("IM 77/26");
  await recording.getByLabel("Authority").fill("Veterinary office of the coast");
  await recording.getByRole("button").click();
  await expect(row).toContainText("no end stated");
  await expect(row).not.toContainText(reason);
  await open(page, `/specimens/${id}`);
  await expect(page.getByRole("region", { name: "Provenance" })).toContainText("IM 77/26");

  const inspector = await signedIn("inspector");
  await open(inspector, `/audit?rowKey=${id}`);
  await expect(inspector.getByRole("main")).toContainText("Permit taken back");
  await expect(inspector.getByRole("main")).toContainText(reason);
});

test("an inspector reads who was given which role, and no address of anybody", async ({ signedIn }) => {
  const page = await signedIn("inspector");
  await open(page, "/audit?tableName=account");
  const main = page.getByRole("main");
  const { name, email } = personOf("curator");
  await expect(main).toContainText(name);
  await expect(main.getByText("changed; not for your role to see").first()).toBeAttached();
  expect(await page.content()).not.toContain(email);
  await expect(main.getByRole("link", { name })).toHaveCount(0);
  await expectAccessible(page);
});
