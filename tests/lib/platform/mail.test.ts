/** Where a letter stands, and in which language it is written. */
import { expect, test } from "vitest";
import { LETTER_DAYS, letterStateOf, mailLanguageOf, oldestToSend } from "#lib/platform/mail.ts";

const now = new Date("2027-03-10T12:00:00Z");
const daysAgo = (days: number) => new Date(now.getTime() - days * 86_400_000);
const letter = { queuedAt: daysAgo(1), sentAt: null, fault: "" };

test.each([
  ["waiting where there is a mail server", letter, true, "waiting"],
  ["kept where there is none", letter, false, "kept"],
  ["kept once it is older than a week", { ...letter, queuedAt: daysAgo(LETTER_DAYS + 1) }, true, "kept"],
  ["a fault, however old", { ...letter, queuedAt: daysAgo(90), fault: "550" }, true, "fault"],
  ["a fault without a mail server too", { ...letter, fault: "550" }, false, "fault"],
  ["sent, whatever went before", { ...letter, sentAt: now, fault: "550" }, false, "sent"],
] as const)("it is %s", (_what, row, hasServer, state) => {
  expect(letterStateOf(row, { hasServer, now })).toBe(state);
});

test("a letter goes by itself to the end of its week", () => {
  const standing = { hasServer: true, now };
  expect(letterStateOf({ ...letter, queuedAt: oldestToSend(now) }, standing)).toBe("waiting");
  expect(letterStateOf({ ...letter, queuedAt: new Date(oldestToSend(now).getTime() - 1) }, standing)).toBe(
    "kept",
  );
});

test("the language is one there are letters in, and English else", () => {
  expect(mailLanguageOf(["de", "en-GB"])).toBe("en");
  expect(mailLanguageOf(["fr"])).toBe("en");
  expect(mailLanguageOf([])).toBe("en");
});
