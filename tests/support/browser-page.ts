/**
 * What the browser tests share: pages of people who are signed in, opening a page
 * until it answers to keys, and the check that no serious barrier stands on it.
 * Everybody signs in once for a whole run; the session is kept in memory and each
 * test gets a browser context of its own with it.
 */
import fs from "node:fs";
import path from "node:path";
import AxeBuilder from "@axe-core/playwright";
import { type BrowserContext, test as base, expect, type Locator, type Page } from "@playwright/test";
import type { Role } from "#lib/people/viewer.ts";

type SignIn = { email: string; password: string; role: Role; name: string };
type Session = Awaited<ReturnType<BrowserContext["storageState"]>>;

export const people = JSON.parse(
  fs.readFileSync(path.join(import.meta.dirname, "../../seed/sign-ins.json"), "utf8"),
) as SignIn[];

/** A person of the demo scenario, by role and, where several hold it, by the house of the e-mail address. */
export function personOf(role: Role, house = ""): SignIn {
  const person = people.find((each) => each.role === role && each.email.includes(house));
  if (!person) throw new Error(`Nobody in seed/sign-ins.json is ${role} ${house}.`);
  return person;
}

type TestFixtures = {
  /** A page of somebody who is signed in. */
  signedIn: (role: Role, house?: string) => Promise<Page>;
};
type RunFixtures = { sessions: Map<string, Session> };

export const test = base.extend<TestFixtures, RunFixtures>({
  sessions: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs, and this one needs nothing
    async ({}, use) => {
      await use(new Map());
    },
    { scope: "worker" },
  ],
  signedIn: async ({ browser, sessions }, use) => {
    const contexts: BrowserContext[] = [];
    await use(async (role, house) => {
      const person = personOf(role, house);
      const session = sessions.get(person.email);
      const context = await browser.newContext(session ? { storageState: session } : {});
      contexts.push(context);
      const page = await context.newPage();
      if (!session) {
        await open(page, "/sign-in");
        await signIn(page, person);
        await expect(page.getByRole("banner")).toContainText(person.name);
        sessions.set(person.email, await context.storageState());
      }
      return page;
    });
    for (const context of contexts) await context.close();
  },
});

export { expect };

/** Waits until the forms of a page answer to what is typed: the framework leaves its mark on each. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    [...document.forms].every((form) => Object.keys(form).some((name) => name.startsWith("__reactProps"))),
  );
}

/** Opens a page of the program, which has to be there. */
export async function open(page: Page, address: string): Promise<void> {
  const answer = await page.goto(address);
  expect(answer?.status(), address).toBe(200);
  await ready(page);
}

/** Fills the sign-in form that is open and sends it. */
export async function signIn(
  page: Page,
  { email, password }: Pick<SignIn, "email" | "password">,
): Promise<void> {
  await page.getByLabel("E-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
}

/** No barrier that axe calls serious or critical stands on the page. */
export async function expectAccessible(page: Page): Promise<void> {
  // Only barriers are wanted, and no page of ours has frames: a shorter look.
  const look = new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true);
  const { violations } = await look.analyze();
  const barriers = violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
  expect(barriers, `barriers on ${page.url()}`).toEqual([]);
}

/** Goes with the Tab key, and nothing else, to where somebody wants to be. */
export async function tabTo(page: Page, place: Locator, mostStops = 120): Promise<void> {
  for (let stop = 0; stop < mostStops; stop += 1) {
    await page.keyboard.press("Tab");
    if (await place.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`The Tab key does not come to ${place} within ${mostStops} stops.`);
}
