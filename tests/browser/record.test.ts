/** Keeping the record of a specimen: making it, revising it, what it shows, its picture, its checks. */
import type { Page } from "@playwright/test";
import sharp from "sharp";
import { collection, histories } from "#seed/scenario/collection.ts";
import { expect, expectAccessible, open, ready, tabTo, test } from "#tests/support/browser-page.ts";
import { recordThroughApi } from "#tests/support/browser-specimen.ts";

const alert = (page: Page) => page.getByRole("main").getByRole("alert");
const save = (page: Page) => page.getByRole("button", { name: "Save", exact: true }).click();

/** The sentence that stands with a field. */
const sentenceOf = (page: Page, label: string) => page.getByLabel(label, { exact: true });

test("a curator records a specimen; wrong fields say what is wrong and nothing typed is lost", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  await open(page, "/specimens");
  await page.getByRole("link", { name: "New specimen" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("New specimen");
  await ready(page);
  await expectAccessible(page);

  await page.getByLabel("Number", { exact: true }).fill("Left arm 12");
  await page.getByLabel("Latin title").fill("Membrum superius sinistrum");
  await page.getByLabel("Preparation").selectOption("fluid-preserved");
  await page.getByRole("group", { name: "Size", exact: true }).getByLabel("Length, mm").fill("640");
  await page
    .getByRole("group", { name: "Mass", exact: true })
    .getByLabel("Mass, kg", { exact: true })
    .fill("-3");
  await save(page);
  await expect(sentenceOf(page, "Title")).toHaveAccessibleDescription("Fill this in.");
  await expect(sentenceOf(page, "Mass, kg")).toHaveAccessibleDescription("More than 0.");
  await expect(
    page.getByRole("group", { name: "Size", exact: true }).getByLabel("Width, mm"),
  ).toHaveAccessibleDescription("Write a number.");
  await expectAccessible(page);

  await page.getByLabel("Title", { exact: true }).fill("Left upper limb in fluid");
  await page.getByLabel("Mass, kg", { exact: true }).fill("2.6");
  await page.getByRole("group", { name: "Size", exact: true }).getByLabel("Width, mm").fill("180");
  await page.getByRole("group", { name: "Size", exact: true }).getByLabel("Height, mm").fill("140");
  await save(page);
  await expect(sentenceOf(page, "Fluid")).toHaveAccessibleDescription(
    "Name the fluid: limits and transport depend on it.",
  );
  await page.getByLabel("Fluid", { exact: true }).selectOption("ethanol");
  await page.getByLabel("Concentration, %").fill("70");
  await page.getByRole("button", { name: "Add a component" }).click();
  await page.getByLabel("Component", { exact: true }).fill("glass jar");
  await page.getByRole("button", { name: "Add a hazard" }).click();
  await page.getByLabel("Substance", { exact: true }).selectOption("alcohol");

  // What only the collection can tell comes from the server and stands at its field as well.
  await save(page);
  await expect(alert(page)).toContainText("This number does not follow the centre's pattern.");
  await expect(sentenceOf(page, "Number")).toHaveAccessibleDescription(
    /does not follow the centre's pattern/,
  );
  await expect(page.getByLabel("Latin title")).toHaveValue("Membrum superius sinistrum");
  await expect(page.getByLabel("Component", { exact: true })).toHaveValue("glass jar");

  await page.reload();
  await ready(page);
  await expect(page.getByLabel("Title", { exact: true })).toHaveValue("Left upper limb in fluid");
  await expect(page.getByLabel("Fluid", { exact: true })).toHaveValue("ethanol");

  await page.getByLabel("Number", { exact: true }).fill("AN 2019.0142");
  await save(page);
  await expect(sentenceOf(page, "Number")).toHaveAccessibleDescription(
    /Another specimen has this accession number already/,
  );
  const number = `AN ${2100 + (Date.now() % 800)}.0001`;
  await page.getByLabel("Number", { exact: true }).fill(number);
  await save(page);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Left upper limb in fluid");
  await expect(page.getByRole("main")).toContainText(number);
  await expect(page.getByRole("main")).toContainText("glass jar");
  await expect(page.getByRole("main")).toContainText("ethanol");
  await expectAccessible(page);
});

test("a curator revises a record", async ({ signedIn }) => {
  const page = await signedIn("curator");
  const { id, title } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}`);
  await page.getByRole("link", { name: "Edit the record" }).click();
  await expect(page.getByLabel("Title", { exact: true })).toHaveValue(title);
  await ready(page);
  await expectAccessible(page);
  await page.getByLabel("Title", { exact: true }).fill("Knee joint, opened from the front");
  await page.getByRole("button", { name: "Add a number" }).click();
  const others = page.getByRole("region", { name: "Other numbers" });
  await others.getByLabel("Other number", { exact: true }).fill("K 12");
  await others.getByLabel("Marked on").fill("tag on the stand");
  await save(page);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Knee joint, opened from the front");
  await expect(page.getByRole("main")).toContainText("K 12");
});

test("going through the fields of a record changes none of them", async ({ signedIn }) => {
  const page = await signedIn("collection manager");
  const costed = collection.find(({ cost }) => cost !== null);
  const number = costed?.record.accessionNumber ?? "";
  await open(page, `/go?q=${encodeURIComponent(number)}`);
  const address = page.url();
  const before = await (await page.request.get(address.replace("/specimens", "/api/v1/specimens"))).json();
  expect(before.replacementCost.minor).toBe((costed?.cost?.euros ?? 0) * 100);
  await page.getByRole("link", { name: "Edit the record" }).click();
  await expect(page.getByLabel("Amount")).toHaveValue((before.replacementCost.minor / 100).toFixed(2));
  await ready(page);
  await page.getByLabel("Number", { exact: true }).focus();
  await tabTo(page, page.getByRole("button", { name: "Save", exact: true }));
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(address);
  const after = await (await page.request.get(address.replace("/specimens", "/api/v1/specimens"))).json();
  expect(after).toEqual({ ...before, version: before.version + 1 });
});

test("a revision is refused when somebody else was faster, and what was typed stays", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  const { id, record } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}/edit`);
  await page.getByLabel("Title", { exact: true }).fill("Typed by the slower one");

  const faster = (await signedIn("collection manager")).request;
  const revised = await faster.put(`/api/v1/specimens/${id}`, {
    data: { ...record, title: "Typed by the faster one", version: 1 },
  });
  expect(revised.status()).toBe(200);

  await save(page);
  await expect(alert(page)).toContainText("Somebody else changed this record while you were working on it.");
  await expect(page.getByLabel("Title", { exact: true })).toHaveValue("Typed by the slower one");
  const stored = await (await faster.get(`/api/v1/specimens/${id}`)).json();
  expect(stored).toMatchObject({ title: "Typed by the faster one", version: 2 });
});

test("what a specimen shows is added by keyboard alone, and its region then finds it", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  const { id, number } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}`);
  await tabTo(page, page.getByRole("link", { name: "Edit what it shows" }).first());
  await page.keyboard.press("Enter");
  const field = page.getByRole("combobox", { name: "Structure, in any form" });
  await expect(field).toBeVisible();
  await ready(page);
  await expectAccessible(page);

  await tabTo(page, field);
  await page.keyboard.type("plexus brachialis");
  await expect(page.getByRole("option").first()).toContainText("brachial plexus");
  await expectAccessible(page);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  const added = page
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name: "brachial plexus" }) });
  await expect(added).toBeVisible();
  await tabTo(page, added.getByLabel("Side"));
  await page.keyboard.type("left");
  await tabTo(page, added.getByLabel("Seen"));
  await page.keyboard.type("partly");
  await tabTo(page, added.getByLabel("Remark"));
  await page.keyboard.type("Cords lie free");
  await tabTo(page, page.getByRole("button", { name: "Save", exact: true }));
  await page.keyboard.press("Enter");

  await expect(page).toHaveURL(new RegExp(`/specimens/${id}(#shows)?$`));
  const shown = page.getByRole("table", { name: "Shows" });
  await expect(shown.getByRole("row").filter({ hasText: "plexus brachialis" })).toContainText(
    /left\s*partly exposed\s*Cords lie free/,
  );

  await open(page, "/specimens?q=upper+limb&kind=body+region");
  await expect(page.getByRole("row").filter({ hasText: number })).toContainText(
    "shows brachial plexus (left, partly exposed)",
  );
});

test("a picture is put on the record; a damaged or over-large one is refused with a sentence", async ({
  signedIn,
}) => {
  const page = await signedIn("curator");
  const { id } = await recordThroughApi(page.request);
  await open(page, `/specimens/${id}`);
  const pictureOnRecord = async () => (await page.request.get(`/specimens/${id}/picture`)).status();
  expect(await pictureOnRecord()).toBe(404);
  const photograph = await sharp({ create: { width: 640, height: 480, channels: 3, background: "#a86" } })
    .jpeg()
    .toBuffer();

  await page.getByText("Put this picture on the record").first().click();
  const form = page.getByRole("form", { name: "Put this picture on the record" });
  const send = async (name: string, buffer: Buffer) => {
    await form.getByLabel("Picture").setInputFiles({ name, mimeType: "image/jpeg", buffer });
    await form.getByRole("button", { name: "Put this picture on the record" }).click();
  };
  const unreadable =
    "This file is not a picture that can be read, or it is damaged. Use a JPEG, PNG or WebP file.";
  const tooLarge = "The picture is larger than 15 MB. Save a smaller copy and try again.";
  for (const [name, content, sentence] of [
    ["cut-short.jpg", photograph.subarray(0, photograph.length / 2), unreadable],
    ["page.jpg", Buffer.from("<html><script>alert(1)</script></html>"), unreadable],
    ["very-large.jpg", Buffer.concat([photograph, Buffer.alloc(18 * 1024 * 1024)]), tooLarge],
    ["script.png", Buffer.from("<svg onload='alert(1)'/>"), unreadable],
    ["large.jpg", Buffer.concat([photograph, Buffer.alloc(15 * 1024 * 1024)]), tooLarge],
  ] as const) {
    await send(name, content);
    await expect(form.getByRole("alert"), name).toContainText(sentence);
    expect(await pictureOnRecord(), name).toBe(404);
  }

  await send("limb.jpg", photograph);
  await expect(form.getByRole("status")).toHaveText("Saved.");
  expect(await pictureOnRecord()).toBe(200);
  await page.reload();
  await expect(page.getByRole("main")).toContainText("Photograph on the record.");
});

test("a check begins with nothing chosen, is refused half done, and stands on the sheet when signed", async ({
  signedIn,
}) => {
  const page = await signedIn("conservator");
  const number = "AN 2019.0142";
  expect(histories[number]?.checks.length).toBeGreaterThan(0);
  await open(page, `/go?q=${encodeURIComponent(number)}`);
  const sheet = page.url();
  await page.getByRole("region", { name: "Condition" }).getByRole("link", { name: "Record a check" }).click();
  await expect(page.getByRole("heading", { name: "What was seen before" })).toBeVisible();
  await ready(page);
  await expect(page.getByRole("radio")).not.toHaveCount(0);
  await expect(page.getByRole("radio", { checked: true })).toHaveCount(0);
  await expectAccessible(page);

  const sign = page.getByRole("button", { name: "Sign and record this check" });
  await page.getByLabel("Grounds").fill("Seen on the bench in raking light, by the browser.");
  await sign.click();
  const waiting = "Some fields need another look. Nothing has been recorded yet.";
  await expect(alert(page)).toContainText(waiting);
  for (const named of ["1. Now it is", "Fit to travel", "Occasion"])
    await expect(alert(page).getByRole("link", { name: named, exact: true })).toBeVisible();

  for (const same of await page.getByRole("radio", { name: "the same", exact: true }).all())
    await same.check();
  await page.getByRole("button", { name: "Add a finding" }).click();
  await page.getByLabel("Where", { exact: true }).fill("Tip of the thumb");
  for (const question of ["Fit to show", "Fit to handle"])
    await page.getByRole("group", { name: question }).getByRole("radio", { name: "yes" }).check();
  await page.getByRole("group", { name: "Fit to travel" }).getByRole("radio", { name: "no" }).check();
  await page.getByRole("group", { name: "Occasion" }).getByRole("radio", { name: "Periodic" }).check();
  await page.getByLabel("Extent, % of the area").last().fill("120");
  await page.getByLabel("Checked on").fill("1990-01-01");
  await sign.click();
  await expect(alert(page), "the new finding has no word and no severity yet").toContainText("Severity");
  await expect(alert(page)).not.toContainText("Fit to travel");
  await expect(page.getByLabel("Extent, % of the area").last()).toHaveAccessibleDescription(
    "Between 0 and 100 % of the area.",
  );
  await expect(page.getByLabel("Checked on")).toHaveAccessibleDescription(/The check before this one is of/);
  await expectAccessible(page);

  await page.getByLabel("What", { exact: true }).selectOption({ index: 1 });
  await page.getByLabel("Extent, % of the area").last().fill("");
  await page.getByLabel("Extent, mm").last().fill("4");
  await page.getByLabel("Checked on").fill(new Date().toISOString().slice(0, 10));
  for (const [question, answer] of [
    ["Activity", "stable"],
    ["Severity", "trace"],
  ] as const)
    await page.getByRole("group", { name: question }).last().getByRole("radio", { name: answer }).check();
  await expectAccessible(page);
  await sign.click();

  await expect(page).toHaveURL(new RegExp(`^${sheet}(#condition)?$`));
  const condition = page.getByRole("region", { name: "Condition" });
  await expect(condition).toContainText("Seen on the bench in raking light, by the browser.");
  await expect(condition).toContainText("Tip of the thumb");
  await expect(condition).toContainText("1 new");
  await condition.getByRole("table", { name: "All checks" }).getByRole("link").first().click();
  await expect(page.getByRole("heading", { level: 2, name: "Findings" })).toBeVisible();
  await expect(page.getByRole("main")).toContainText("Seen on the bench in raking light, by the browser.");
  await expectAccessible(page);
});
