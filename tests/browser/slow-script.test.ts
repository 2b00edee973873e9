/**
 * A page whose script comes late: what is typed into a record's form before it runs
 * stays, is saved with everything else, and cannot be sent too early.
 */
import type { Locator, Page } from "@playwright/test";
import type { InstitutionInput } from "#lib/people/schema.ts";
import type { Role } from "#lib/people/viewer.ts";
import { expect, open, ready, test } from "#tests/support/browser-page.ts";
import { recordThroughApi } from "#tests/support/browser-specimen.ts";

/** Opens a page whose scripts wait. @returns lets them come, and waits until the page listens */
async function openSlowly(page: Page, address: string): Promise<() => Promise<void>> {
  let release = () => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  const scripts = "**/_next/static/**/*.js";
  await page.route(scripts, async (route) => {
    await released;
    await route.continue();
  });
  const answer = await page.goto(address, { waitUntil: "domcontentloaded" });
  expect(answer?.status(), address).toBe(200);
  return async () => {
    release();
    await ready(page);
    await page.unroute(scripts);
  };
}

const main = (page: Page) => page.getByRole("main");
const field = (page: Page, label: string | RegExp) => main(page).getByLabel(label, { exact: true });
const save = (page: Page) => main(page).getByRole("button", { name: "Save", exact: true });

/** An institution of this test's own. */
async function anInstitution(page: Page): Promise<InstitutionInput & { id: string }> {
  const record: InstitutionInput = {
    id: null,
    name: `School by the Ferry ${Date.now()}`,
    kind: "museum",
    countryCode: "NO",
    city: "Northmere",
    address: "1 Quiet Street",
    languages: ["en"],
    email: "ferry@school.example",
    phone: "+47 000 000",
    standing: "good",
    verifiedOn: null,
    note: "Writes in English.\nAnswers in the afternoon.",
  };
  const answer = await page.request.post("/api/v1/institutions", { data: record });
  expect(answer.status()).toBe(201);
  const { id } = (await answer.json()) as { id: string };
  return { ...record, id };
}

test("what is typed before the script runs stands beside what the record holds, and is saved", async ({
  signedIn,
}) => {
  const page = await signedIn("registrar");
  const { id, name, kind, note: said } = await anInstitution(page);
  const run = await openSlowly(page, `/institutions/${id}/edit`);
  await expect(field(page, "Name")).toHaveValue(name);
  await expect(field(page, "Kind")).toHaveValue(kind);
  await expect(field(page, "Note")).toHaveValue(said);
  await expect(save(page)).toBeDisabled();
  const note = `Spoken to on the telephone, ${Date.now()}`;
  await field(page, "Note").fill(note);
  await field(page, "Facts looked at on").fill("2026-03-02");
  await field(page, "Languages written to").fill("en, nb");
  await field(page, "Telephone").pressSequentially("9");
  const telephone = await field(page, "Telephone").inputValue();
  // Sent by a key it would take all of this along in the address and bring back an empty form.
  await field(page, "Telephone").press("Enter");

  await run();
  expect(new URL(page.url()).search).toBe("");
  await expect(field(page, "Name")).toHaveValue(name);
  await expect(field(page, "Kind")).toHaveValue(kind);
  await expect(field(page, "Note")).toHaveValue(note);
  await expect(field(page, "Telephone")).toHaveValue(telephone);
  await save(page).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(name);
  for (const typed of [note, "2 March 2026", "en, nb", telephone])
    await expect(main(page)).toContainText(typed);
});

test("figures, percentages, answers and rows typed early are saved as they were typed", async ({
  signedIn,
}) => {
  const page = await signedIn("registrar");
  const { id } = await anInstitution(page);
  const run = await openSlowly(page, `/institutions/${id}/venues/new`);
  const name = `Late room ${Date.now()}`;
  await field(page, "Name of the room or hall").fill(name);
  await field(page, "Kind").selectOption("library");
  await field(page, "Address").fill("4 Quiet Street");
  await field(page, "Lowest temperature, °C").fill("18.5");
  await field(page, "Highest relative humidity, %").fill("55");
  await field(page, "Fire detection").selectOption("yes");
  await field(page, "Guarded at night").selectOption("no");
  await run();
  // Drawn again by what is typed now, the form still holds what was typed before.
  await field(page, "Swing of temperature within 24 h, K").fill("2");
  await expect(field(page, "Lowest temperature, °C")).toHaveValue("18.5");
  await expect(field(page, "Fire detection")).toHaveValue("yes");
  await main(page).getByRole("button", { name: "Save the venue" }).click();
  const venue = main(page).getByRole("region", { name });
  for (const typed of ["library", "4 Quiet Street", "18.5 to", "2 K within", "to 55 %"])
    await expect(venue).toContainText(typed);
  await expect(venue.getByRole("definition").filter({ hasText: /^yes$/ })).toHaveCount(1);
  await expect(venue.getByRole("definition").filter({ hasText: /^no$/ })).toHaveCount(1);
});

test("answers chosen early in a consent are all kept, and none is chosen that was not", async ({
  signedIn,
}) => {
  const page = await signedIn("donor officer");
  await open(page, "/donors");
  const donor = await main(page).getByRole("table").getByRole("link").first().textContent();
  const run = await openSlowly(page, `/donors/${donor}/consent/new`);
  const answer = (scope: string, word: string) =>
    main(page).getByRole("group", { name: scope, exact: true }).getByRole("radio", { name: word });
  await answer("professional teaching", "granted").check();
  await answer("research", "refused").check();
  await answer("export", "granted").check();
  await field(page, "Where the evidence is held").fill("Archive, box 12");
  await field(page, "Witnesses").fill("2");
  await field(page, "Recognisable").check();
  await run();
  // One more answer draws all of them again, from what the form knows.
  await answer("sampling", "refused").check();
  for (const [scope, word] of [
    ["professional teaching", "granted"],
    ["research", "refused"],
    ["export", "granted"],
    ["sampling", "refused"],
    ["mass media", "unknown"],
  ] as const)
    await expect(answer(scope, word), scope).toBeChecked();
  await expect(field(page, "Where the evidence is held")).toHaveValue("Archive, box 12");
  await expect(field(page, "Witnesses")).toHaveValue("2");
  await expect(field(page, "Recognisable")).toBeChecked();
});

test("a draft that was kept comes back with what was typed since, each where it was typed", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  const { id, title } = await recordThroughApi(page.request);
  const address = `/specimens/${id}/edit`;
  await open(page, address);
  await field(page, "Title").fill(`${title}, revised`);
  await main(page).getByRole("button", { name: "Add a component" }).click();
  await field(page, "Component").fill("glass jar");

  const run = await openSlowly(page, address);
  await expect(field(page, "Title")).toHaveValue(title);
  await field(page, "Latin title").fill("Membrum superius");
  await field(page, "Origin").selectOption("false");
  await field(page, "Species").fill("Equus caballus");
  await field(page, /^May appear in the catalogue/).setChecked(true);
  await field(page, "Mass is weighed, not estimated").setChecked(true);
  await run();
  await expect(field(page, "Title")).toHaveValue(`${title}, revised`);
  await expect(field(page, "Component")).toHaveValue("glass jar");
  await expect(field(page, "Latin title")).toHaveValue("Membrum superius");
  await expect(field(page, "Origin")).toHaveValue("false");
  await save(page).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(`${title}, revised`);
  const kept = await (await page.request.get(`/api/v1/specimens/${id}`)).json();
  expect(kept).toMatchObject({
    latinTitle: "Membrum superius",
    human: false,
    scientificName: "Equus caballus",
    publishable: true,
    massWeighed: true,
    massKg: 2.5,
    components: [{ name: "glass jar" }],
  });
});

/** Every form of a whole record, who fills it in, and a field that is typed into. */
const forms: [address: string, role: Role, typedInto: (page: Page) => Locator, house?: string][] = [
  ["/specimens/new", "curator", (page) => field(page, "Title")],
  ["/series/new", "curator", (page) => field(page, "Title")],
  ["/institutions/new", "registrar", (page) => field(page, "Name")],
  ["/accounts/new", "administrator", (page) => field(page, "Name")],
  ["/specimens/{specimen}/shown", "curator", (page) => main(page).getByRole("combobox").first()],
  ["/slip", "lecturer", (page) => field(page, "Name of the course or show"), "livingframe"],
];
for (const [address, role, typedInto, house] of forms)
  test(`${address} keeps what is typed early and is not sent before it listens`, async ({ signedIn }) => {
    const page = await signedIn(role, house);
    const curator = (await signedIn("curator")).request;
    if (address === "/slip") {
      const { id } = await recordThroughApi(curator);
      await open(page, `/specimens/${id}`);
      await page.getByRole("button", { name: "Note on slip" }).click();
      await expect(page.getByRole("main")).toContainText("Noted on the slip");
    }
    const specimen = address.includes("{specimen}") ? (await recordThroughApi(curator)).id : "";
    const run = await openSlowly(page, address.replace("{specimen}", specimen));
    const typed = typedInto(page);
    await typed.fill("median nerve");
    await typed.press("Enter");
    const buttons = typed.locator("xpath=ancestor::form[1]").locator("button[type=submit]");
    expect(await buttons.count()).toBeGreaterThan(0);
    for (const button of await buttons.all()) await expect(button).toBeDisabled();
    const before = page.url();
    await run();
    expect(page.url()).toBe(before);
    await expect(typed).toHaveValue("median nerve");
    for (const button of await buttons.all()) await expect(button).toBeEnabled();
    await expect(typed).toHaveValue("median nerve");
  });
