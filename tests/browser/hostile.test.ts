/**
 * What somebody types, sends or opens that was not meant so: numbers written as
 * elsewhere, codes that are none, forms from other sites, pages without scripts.
 */
import type { Page } from "@playwright/test";
import {
  expect,
  expectAccessible,
  open,
  personOf,
  ready,
  signIn,
  test,
} from "#tests/support/browser-page.ts";
import { recordThroughApi } from "#tests/support/browser-specimen.ts";

const heading = (page: Page) => page.getByRole("heading", { level: 1 });
const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });

const institution = () => ({
  id: null,
  name: `School of the Odd Letters ${Date.now()}`,
  kind: "medical school",
  countryCode: "NO",
  city: "Northmere",
  address: "1 Quiet Street",
  languages: ["en"],
  email: "loans@odd.example",
  phone: "+47 000 000",
  standing: "good",
  verifiedOn: null,
  note: "",
});

test("an amount is read as it is written in many countries, or asked for again with both readings", async ({
  signedIn,
}) => {
  const page = await signedIn("collection manager");
  const { id } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}/edit`);
  await field(page, "Currency").fill("XXZ");
  await field(page, "Stated on").fill("2026-01-05");
  await field(page, "Stated by").fill("The curator");
  const amount = field(page, "Amount");
  const save = page.getByRole("button", { name: "Save", exact: true });
  await amount.fill("30.000");
  await save.click();
  await expect(amount).toHaveAccessibleDescription(
    "This can be read in two ways. Write 30000 or 30.00, with no mark between the thousands.",
  );
  await expect(field(page, "Currency")).toHaveAccessibleDescription(/There is no money of this code today/);
  await amount.fill("0");
  await expect(amount).toHaveAccessibleDescription("Write an amount of more than nothing.");
  await expectAccessible(page);
  await field(page, "Currency").fill("EUR");
  await amount.fill("12.345,67");
  await save.click();
  await expect(page).toHaveURL(`/specimens/${id}`);
  const record = await (await page.request.get(`/api/v1/specimens/${id}`)).json();
  expect(record.replacementCost).toMatchObject({ minor: 1_234_567, currency: "EUR" });
});

test("a venue is refused in the units it is typed in, each field once", async ({ signedIn }) => {
  const page = await signedIn("registrar");
  const made = await page.request.post("/api/v1/institutions", { data: institution() });
  const { id } = (await made.json()) as { id: string };
  await open(page, `/institutions/${id}/venues/new`);
  await field(page, "Name of the room or hall").fill("Hall");
  await field(page, "Address").fill("1 Quiet Street");
  await field(page, "Country").fill("ZZ");
  await field(page, "Lowest relative humidity, %").fill("150");
  await page.getByRole("button", { name: "Add a narrow point" }).click();
  await field(page, "Clear width, mm").fill("1.200");
  const save = page.getByRole("button", { name: "Save the venue" });
  await save.click();
  await expect(field(page, "Lowest relative humidity, %")).toHaveAccessibleDescription(
    "Write a share between 0 and 100 %.",
  );
  await expect(field(page, "Clear width, mm")).toHaveAccessibleDescription(
    "This can be read in two ways. Write 1200 or 1.2000, with no mark between the thousands.",
  );
  await expect(field(page, "Country")).toHaveAccessibleDescription(/There is no country of this code/);

  await field(page, "Country").fill("NO");
  await field(page, "Lowest relative humidity, %").fill("45,5");
  await page.getByRole("button", { name: "Remove: Narrow point 1" }).click();
  await field(page, "Facts reported on").fill("2099-01-01");
  await save.click();
  await expect(field(page, "Facts reported on")).toHaveAccessibleDescription(
    "This day is still to come. Write the day on which it happened.",
  );
  await field(page, "Facts reported on").fill("2026-01-05");
  await save.click();
  await expect(page).toHaveURL(new RegExp(`/institutions/${id}#venue-`));
});

test("codes that are none, words for a number and hidden letters do not come in through the API", async ({
  signedIn,
}) => {
  const { request } = await signedIn("registrar");
  const post = async (data: object, headers: Record<string, string> = {}) => {
    const answer = await request.post("/api/v1/institutions", { data, headers });
    return { status: answer.status(), body: await answer.json() };
  };
  for (const [path, value] of [
    ["countryCode", "ZZ"],
    ["phone", "abc"],
    ["phone", "javascript:alert(1)"],
    ["verifiedOn", "2099-01-01"],
    ["name", "\u202e\u200b"],
  ] as const) {
    const { status, body } = await post({ ...institution(), [path]: value });
    expect(status, `${path}: ${value}`).toBe(422);
    expect(body.error.issues.map((issue: { path: string }) => issue.path)).toEqual([path]);
  }
  const headers = { "idempotency-key": `once ${Date.now()}` };
  const first = institution();
  const made = await post({ ...first, city: "\u202eNorth\u200bmere\u202c" }, headers);
  expect(made.status).toBe(201);
  expect((await (await request.get(`/api/v1/institutions/${made.body.id}`)).json()).city).toBe("Northmere");
  expect(await post({ ...first, city: "Northmere" }, headers)).toEqual(made);
  const reused = await post({ ...first, city: "Southmere" }, headers);
  expect([reused.status, reused.body.error.code]).toEqual([409, "command.key-reused"]);
});

test("a question with a parameter that is wrong or unknown is refused, and nothing speaks of saving", async ({
  signedIn,
}) => {
  const { request } = await signedIn("registrar");
  for (const [query, path] of [
    ["loans?state=x", "state"],
    ["loans?overdue=banana", "overdue"],
    ["loans?limit=0", "limit"],
    ["loans?text=a&text=b", "text"],
    ["institutions?page=2", "page"],
    ["structures?q=heart&limit=2", "limit"],
    ["workings?id=air", "id"],
  ] as const) {
    const answer = await request.get(`/api/v1/${query}`);
    expect(answer.status(), query).toBe(422);
    const { error } = await answer.json();
    expect(error.message, query).not.toMatch(/saved/i);
    expect(error.issues.map((issue: { path: string }) => issue.path)).toEqual([path]);
  }
});

test("a form from elsewhere, too large, or of no action is answered with a page that says so", async ({
  request,
  baseURL,
}) => {
  const own = { origin: baseURL ?? "" };
  const multipart = { $ACTION_ID_00deadbeef00deadbeef00deadbeef00deadbeef00: "", email: "x" };
  for (const [what, headers, form, status, title] of [
    ["elsewhere", { origin: "https://elsewhere.example" }, multipart, 403, "This form came from elsewhere"],
    ["no action", own, multipart, 409, "This form is of an earlier day"],
    [
      "35 MB",
      own,
      { file: { name: "x.png", mimeType: "image/png", buffer: Buffer.alloc(35_000_000) } },
      413,
      "This is too much at once",
    ],
  ] as const) {
    const answer = await request.post("/sign-in", { headers, multipart: { ...form } });
    expect(answer.status(), what).toBe(status);
    expect(answer.headers()["content-type"], what).toContain("text/html");
    expect(await answer.text(), what).toContain(`<h1>${title}</h1>`);
  }
});

test("a picture of a few pixels is refused with one sentence, said once", async ({ signedIn }) => {
  const page = await signedIn("curator");
  const { id } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}`);
  await page.locator("summary", { hasText: "Put this picture on the record" }).click();
  const dot = Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
    "base64",
  );
  await page.locator("input[type=file]").setInputFiles({ name: "x.png", mimeType: "image/png", buffer: dot });
  await page.getByRole("button", { name: "Put this picture on the record" }).click();
  const alert = page.getByRole("main").getByRole("alert");
  await expect(alert).toHaveText(
    "The picture is smaller than 200 pixels on its longer side. Too little can be seen on it; use a larger one.",
  );
  expect((await page.request.get(`/specimens/${id}/picture`)).headers()["content-type"]).toContain(
    "text/html",
  );
});

test("without scripts, a page that is not there says so", async ({ browser, signedIn }) => {
  const session = await (await signedIn("lecturer")).context().storageState();
  const context = await browser.newContext({ storageState: session, javaScriptEnabled: false });
  const page = await context.newPage();
  for (const address of ["/institutions", "/specimens/01900000-0000-7000-8000-000000000000", "/nothing"]) {
    const answer = await page.goto(address);
    expect(answer?.status(), address).toBe(404);
    await expect(heading(page), address).toHaveText("There is no such page");
    await expect(page.getByRole("main"), address).toContainText("your role does not open");
    await expect(page.getByRole("link", { name: "To what is due" })).toBeVisible();
  }
  await context.close();
});

test("the door leads whoever is signed in onward, and never back to itself", async ({ page }) => {
  await open(page, "/sign-in?to=/sign-in");
  await signIn(page, personOf("curator"));
  await expect(heading(page)).toHaveText("Due and at risk");
  for (const [address, leads] of [
    ["/sign-in", "/"],
    ["/sign-in?to=/series", "/series"],
    ["/sign-in?to=//elsewhere.example", "/"],
  ] as const) {
    await page.goto(address);
    await expect(page, address).toHaveURL(leads);
  }
});

test("no script runs that the program did not send, and all of its own do", async ({ signedIn }) => {
  const page = await signedIn("curator");
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" && !/status of 404/.test(message.text())) complaints.push(message.text());
  });
  for (const address of ["/", "/specimens", "/series", "/workings/air", "/specimens/new"])
    await open(page, address);
  await page.goto("/specimens/01900000-0000-7000-8000-000000000000");
  await expect(heading(page)).toHaveText("There is no such page");
  await page.goto("/nothing");
  await ready(page);
  expect(complaints).toEqual([]);

  const ran = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "document.body.dataset.ran = 'yes'";
    document.body.append(script);
    document.body.insertAdjacentHTML("beforeend", "<img src='data:,' onerror='document.body.dataset.ran=1'>");
    return new Promise((resolve) => setTimeout(() => resolve(document.body.dataset.ran ?? "no"), 0));
  });
  expect(ran).toBe("no");
});

test("a moment is told in universal time and on the reader's own clock", async ({ signedIn }) => {
  const page = await signedIn("curator");
  await open(page, "/specimens?q=AN");
  const first = page.getByRole("main").getByRole("table").getByRole("rowheader").getByRole("link").first();
  await first.click();
  await page.waitForURL(/\/specimens\/[0-9a-f-]{36}/);
  await ready(page);
  const moment = page.getByRole("main").locator("time", { hasText: "UTC" }).first();
  await expect(moment).toHaveText(/\d\d:\d\d UTC \((?:\d+ \w+, )?\d\d:\d\d CES?T\)$/);
});
