/** Two sides of a loan write to each other, and read what the program wrote to them by mail. */
import { expect, expectAccessible, open, test } from "#tests/support/browser-page.ts";

test("a borrower writes, the registrar finds it due, answers, and reads the letter about it", async ({
  signedIn,
}) => {
  const lecturer = await signedIn("lecturer", "portselwyn");
  await open(lecturer, "/loans");
  const row = lecturer.getByRole("row").filter({ hasText: "Airways, summer school" });
  await row.getByRole("link").first().click();
  await expect(lecturer).toHaveURL(/\/loans\/[0-9a-f-]{36}$/);
  const address = new URL(lecturer.url()).pathname;
  const question = `Is Monday the right day? ${Date.now()}`;
  await lecturer.getByLabel("Message", { exact: true }).fill(question);
  await lecturer.getByRole("button", { name: "Send the message" }).click();
  await expect(lecturer.getByRole("list", { name: "Messages" })).toContainText(question);
  await expectAccessible(lecturer);

  const registrar = await signedIn("registrar");
  await open(registrar, "/");
  const due = registrar.getByRole("link", { name: /have not been read|has not been read/ });
  await expect(due.first()).toBeVisible();
  await open(registrar, address);
  const messages = registrar.getByRole("list", { name: "Messages" });
  await expect(messages.getByRole("listitem").filter({ hasText: question })).toContainText("not read yet");
  await registrar.getByLabel("Message", { exact: true }).fill("Monday it is.");
  await registrar.getByRole("button", { name: "Send the message" }).click();
  await expect(messages).not.toContainText("not read yet");

  await open(lecturer, "/letters");
  await lecturer
    .getByRole("row")
    .filter({ hasText: "a message from the centre" })
    .first()
    .getByRole("link")
    .click();
  await expect(lecturer.getByRole("heading", { level: 1 })).toContainText("a message from the centre");
  await expect(lecturer.getByRole("main")).not.toContainText("Monday");
  await expect(lecturer.getByRole("main")).toContainText("kept");
  await expectAccessible(lecturer);
});
