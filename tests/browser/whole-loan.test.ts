/**
 * One loan from a lecturer's question to the specimen safely home: found, asked
 * for, judged, decided, insured, agreed and signed by both, packed, sent, received,
 * rested, opened, sent home, counted, checked beside the check before, checked in
 * and closed. The test's clock runs ahead where crates rest.
 */
import fs from "node:fs";
import type { Browser, Page } from "@playwright/test";
import { extractText, getDocumentProxy } from "unpdf";
import type { Role } from "#lib/people/viewer.ts";
import { expect, expectAccessible, personOf, ready, test } from "#tests/support/browser-page.ts";

const number = "AN 2017.0080";
const course = "Spring course, head and neck";
const dayText = (daysAhead: number) =>
  new Date(Date.now() + daysAhead * 86_400_000).toISOString().slice(0, 10);

/** Moves the server's clock; people sign in anew, as their sessions have run out by then. */
function moveClock(hoursAhead: number): void {
  const file = process.env.ANATHECA_TEST_CLOCK;
  if (!file) throw new Error("ANATHECA_TEST_CLOCK names no file; run this test with npm test.");
  fs.writeFileSync(file, String(hoursAhead));
}

async function signIn(browser: Browser, role: Role, house = ""): Promise<Page> {
  const { email, password } = personOf(role, house);
  const page = await (await browser.newContext()).newPage();
  page.setDefaultTimeout(20_000);
  await page.goto("/sign-in");
  await ready(page);
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("button", { name: "Sign out" })).toBeVisible();
  return page;
}

/** Opens the loan's file and gives one section of it. */
async function section(page: Page, address: string, name: string) {
  await page.goto(address);
  await ready(page);
  return page.getByRole("region", { name, exact: true });
}

test.afterAll(() => moveClock(0));

test("a loan goes out and comes safely home", async ({ browser }) => {
  test.setTimeout(400_000);
  let address = "";

  await test.step("the lecturer finds a specimen and asks for it", async () => {
    const page = await signIn(browser, "lecturer", "kestrelbay");
    await page.goto(`/specimens?q=${encodeURIComponent("soft palate")}`);
    await ready(page);
    await expectAccessible(page);
    await page.getByRole("button", { name: `Note on slip: ${number}` }).click();
    await expect(page.getByRole("status").filter({ hasText: "slip" })).toBeVisible();
    await page.getByRole("link", { name: "Enquiry slip" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Enquiry slip" })).toBeVisible();
    await ready(page);
    await expectAccessible(page);
    await page.getByRole("button", { name: `Take off: ${number}` }).click();
    await expect(page.getByText(`${number} is taken off.`)).toBeVisible();
    await expectAccessible(page);
    await page.getByRole("button", { name: `Put it back: ${number}` }).click();
    await expect(page.getByRole("button", { name: `Take off: ${number}` })).toBeVisible();
    await page.getByLabel("Name of the course or show").fill(course);
    await page.getByLabel("Name of the course or show").press("Enter");
    await expect(page.getByText("Saved. Suitability below is worked out anew.")).toBeVisible();
    await expect(page.getByText(/Some of the request is not stated yet: the purpose/)).toBeVisible();
    await page.getByLabel("Purpose").selectOption("teaching");
    await page.getByLabel("Venue").selectOption({ label: "Teaching room 2, IE" });
    await page.getByLabel("Day of delivery").fill(dayText(15));
    await page.getByLabel("Return by").fill(dayText(60));
    await page.getByLabel("Telephone").fill("+353 1 555 0100");
    await page.getByLabel("Amount").fill("60000.00");
    await page.getByLabel("All of this still holds").check();
    await page.getByRole("button", { name: "Submit the request" }).click();
    await page.waitForURL(/\/loans\/[0-9a-f-]+$/);
    address = new URL(page.url()).pathname;
    await expect(page.getByText("Requested, under review").first()).toBeVisible();
    await expectAccessible(page);
    await page.context().close();
  });

  await test.step("the registrar cannot decide alone; the curator decides", async () => {
    const registrar = await signIn(browser, "registrar");
    await registrar.goto(address);
    await expect(registrar.getByRole("form", { name: "Give your word" })).toHaveCount(0);
    await expectAccessible(registrar);
    await registrar.context().close();
    const curator = await signIn(browser, "curator");
    const decision = await section(curator, address, "Decision");
    await decision.getByRole("radio", { name: "accept" }).check();
    await decision
      .getByLabel("Grounds")
      .fill("Shows what the course teaches, and bears the handling asked for.");
    await decision.getByRole("button", { name: "Record this word" }).click();
    await expect(curator.getByText("Accepted, agreement to come").first()).toBeVisible();
    const check = await curator.request.get(`${address.replace("/loans/", "/api/v1/loans/")}`);
    expect(check.status()).toBe(200);
    await curator.context().close();
  });

  await test.step("cover, crates and the way are planned, the agreement is drawn up and signed by the centre", async () => {
    const page = await signIn(browser, "registrar");
    const cover = await section(page, address, "Cover");
    await cover.getByText("Record a certificate").first().click();
    await cover.getByLabel("Insurer").fill("Mutual Cover of Halmren");
    await cover.getByLabel("Policy number").fill("MC 4711");
    await cover.getByLabel("Amount").fill("90000.00");
    await cover.getByLabel("First day").fill(dayText(-1));
    await cover.getByLabel("Last day").fill(dayText(120));
    await cover.getByLabel("Countries").fill("FI, SE, DK, DE, NL, GB, IE");
    await cover.getByLabel("It covers the specimens on the road").check();
    await cover.getByRole("button", { name: "Record a certificate" }).click();
    await expect(cover.getByRole("cell", { name: "MC 4711", exact: true })).toBeVisible();

    let crates = await section(page, address, "Crates and way");
    await crates.getByRole("button", { name: "Plan the crates" }).click();
    await expect(crates.getByText(/Pack and seal/).first()).toBeVisible();
    for (const [way, leaves, arrives] of [
      ["Way out", 0, 3],
      ["Way home", 57, 60],
    ] as const) {
      crates = await section(page, address, "Crates and way");
      const stage = crates.getByRole("form", { name: `${way}: Plan the stage` });
      if (!(await stage.isVisible())) await crates.getByText(`${way}: Plan the stage`).click();
      await stage.getByLabel("Carrier", { exact: true }).fill("Nordvei Art Carriers");
      await stage.getByLabel("Leaves on").fill(dayText(leaves));
      await stage.getByLabel("Arrives on").fill(dayText(arrives));
      await stage.getByRole("button", { name: /stage/ }).click();
      await expect(crates.getByText(`${way}: Change the stage`)).toBeVisible();
    }
    const agreement = await section(page, address, "Agreement");
    await agreement.getByRole("button", { name: "Draw up the agreement" }).click();
    await expect(agreement.getByRole("link", { name: "Read the agreement (PDF)" })).toBeVisible();
    await signAgreement(page, address, "Registrar of the centre");
    await expectAccessible(page);
    await page.context().close();
  });

  await test.step("the borrower's registrar reads the agreement and signs", async () => {
    const page = await signIn(browser, "borrower registrar", "kestrelbay");
    const agreement = await section(page, address, "Agreement");
    const href = await agreement.getByRole("link", { name: "Read the agreement (PDF)" }).getAttribute("href");
    const paper = await page.request.get(href ?? "");
    expect(paper.headers()["content-type"]).toBe("application/pdf");
    const pdf = await getDocumentProxy(new Uint8Array(await paper.body()));
    const { text, totalPages } = await extractText(pdf, { mergePages: true });
    const read = text.normalize("NFKC").replace(/\s+/g, " ");
    expect(totalPages).toBeGreaterThan(2);
    for (const said of [
      number,
      "Kestrel Bay School of Medicine",
      "Halmren",
      course,
      "SHA-256",
      "Replacement cost",
      "MC 4711",
    ])
      expect(read).toContain(said);
    await signAgreement(page, address, "Registrar");
    await expect(page.getByText("Being prepared").first()).toBeVisible();
    await page.context().close();
  });

  await test.step("the curator checks it going out; the registrar seals the crate and lets it go", async () => {
    const curator = await signIn(browser, "curator");
    await recordCheck(curator, address, "Going out", "same");
    await curator.context().close();

    const page = await signIn(browser, "registrar");
    const crates = await section(page, address, "Crates and way");
    const seal = crates.getByRole("form", { name: /Pack and seal/ });
    await seal.getByRole("checkbox").check();
    await seal.getByLabel("Number of the seal").fill("S-1001");
    await seal.getByRole("button", { name: "Seal the crate" }).click();
    await expect(page.getByText("S-1001").first()).toBeVisible();
    const release = await section(page, address, "Release");
    await release.getByRole("button", { name: "Release and hand over to the carrier" }).click();
    await expect(page.getByText("Travelling out").first()).toBeVisible();
    await page.context().close();
  });

  await test.step("the borrower receives, lets it rest, opens and counts", async () => {
    let page = await signIn(browser, "borrower registrar", "kestrelbay");
    await receive(await section(page, address, "At the venue"));
    await expect(page.getByText(/not before/).first()).toBeVisible();
    await page.context().close();
    moveClock(49);
    page = await signIn(browser, "borrower registrar", "kestrelbay");
    const venue = await section(page, address, "At the venue");
    await venue
      .getByRole("form", { name: /Open and count/ })
      .getByRole("radio", { name: "yes" })
      .check();
    await venue.getByRole("button", { name: "Record the count" }).click();
    await expect(page.getByText("Counted.").or(venue.getByText("opened")).first()).toBeVisible();
    await expectAccessible(page);
    const home = await section(page, address, "At the venue");
    await home.locator("summary", { hasText: "Send home" }).click();
    await home.getByRole("button", { name: "Hand over and send home" }).click();
    await expect(home.getByText("Write down the number of the new seal.").first()).toBeVisible();
    await home.getByLabel(/^Seal of L/).fill("S-1002");
    await home.getByRole("button", { name: "Hand over and send home" }).click();
    await expect(page.getByText("Travelling home").first()).toBeVisible();
    await page.context().close();
  });

  await test.step("it comes home, is counted, checked beside the check before, and checked in", async () => {
    const registrar = await signIn(browser, "registrar");
    await receive(await section(registrar, address, "Home"));
    await expect(registrar.getByText(/not before/).first()).toBeVisible();
    await registrar.context().close();
    moveClock(98);
    const curator = await signIn(browser, "curator");
    let home = await section(curator, address, "Home");
    await home.getByRole("form", { name: "Count the return" }).getByRole("radio", { name: "yes" }).check();
    await home.getByRole("button", { name: "Record the count" }).click();
    await expect(curator.getByText(/Home, to be checked/).first()).toBeVisible();
    await recordCheck(curator, address, "Back home", "same", {
      term: "crack",
      place: "edge of the base",
      extent: "12",
    });
    home = await section(curator, address, "Home");
    await expect(home.getByRole("table", { name: /Differences/ })).toContainText("new");
    await expectAccessible(curator);
    await home.getByRole("radio", { name: "change within wear" }).check();
    await home.getByRole("button", { name: `Check it in: ${number}` }).click();
    await expect(curator.getByText("Checked in").first()).toBeVisible();
    await curator.context().close();
  });

  await test.step("the registrar closes the loan, and the file tells the whole way", async () => {
    const page = await signIn(browser, "registrar");
    await page.goto(address);
    await ready(page);
    await page.getByRole("button", { name: "Close the loan" }).click();
    await expect(page.getByText("Closed", { exact: true }).first()).toBeVisible();
    const custody = await section(page, address, "Custody");
    await expect(custody.getByText("Kestrel Bay School of Medicine").first()).toBeVisible();
    await page.context().close();
  });
});

async function signAgreement(page: Page, address: string, role: string): Promise<void> {
  const agreement = await section(page, address, "Agreement");
  const form = agreement.getByRole("form", { name: /Sign version/ });
  await form.getByLabel("Your role, as it will stand under the agreement").fill(role);
  await form.getByLabel("I agree to sign electronically.").check();
  await form.getByRole("button", { name: /Sign/ }).click();
  await expect(agreement.getByText(role).first()).toBeVisible();
}

async function receive(place: ReturnType<Page["getByRole"]>): Promise<void> {
  const form = place.getByRole("form", { name: /Receive the crates/ });
  await form.getByRole("group", { name: "Has it come?" }).getByRole("radio", { name: "yes" }).check();
  await form.getByRole("group", { name: "Is the seal intact?" }).getByRole("radio", { name: "yes" }).check();
  await form.getByLabel("Outside, °C").fill("12");
  await form.getByLabel("In the room, °C").fill("20");
  await form.getByLabel("Relative humidity in the room, %").fill("48");
  await form.getByRole("button", { name: "Sign for the crates" }).click();
}

async function recordCheck(
  page: Page,
  address: string,
  occasion: string,
  answer: string,
  fresh?: { term: string; place: string; extent: string },
): Promise<void> {
  const place = await section(page, address, "Specimens");
  await place.getByRole("link", { name: /Check/ }).first().click();
  await page.waitForURL(/\/check\//);
  await ready(page);
  await expectAccessible(page);
  const sign = page.getByRole("button", { name: "Sign and record this check" });
  await sign.click();
  await expect(page.getByRole("alert").first()).toBeVisible();
  for (const choice of await page.getByRole("radio", { name: `the ${answer}` }).all()) await choice.check();
  if (fresh) {
    await page.getByRole("button", { name: "Add a finding" }).click();
    await page.getByLabel("What", { exact: true }).selectOption({ label: fresh.term });
    await page.getByLabel("Where", { exact: true }).fill(fresh.place);
    await page.getByLabel("Extent, mm").fill(fresh.extent);
    for (const [question, answer] of [
      ["Activity", "stable"],
      ["Severity", "minor"],
    ] as const)
      await page.getByRole("group", { name: question }).getByRole("radio", { name: answer }).check();
  }
  for (const verdict of ["Fit to show", "Fit to handle", "Fit to travel"])
    await page.getByRole("group", { name: verdict }).getByRole("radio", { name: "yes" }).check();
  await page.getByLabel("Grounds").fill("Looked at on all sides in good light.");
  await page.getByLabel("Witness").fill("A. Second");
  const choice = page.getByRole("group", { name: "Occasion" }).getByRole("radio", { name: occasion });
  if ((await choice.count()) > 0) await choice.check();
  else await expect(page.getByText(occasion).first()).toBeVisible();
  await sign.click();
  await page.waitForURL(/\/loans\/[0-9a-f-]+\?checked=/);
  await expect(page.getByText(`The check of ${number} is signed and on record`)).toBeVisible();
}
