/** Dice that fall the same way twice. */
import { beforeAll, expect, test, vi } from "vitest";
import { registerDonor } from "#lib/provenance/commands.ts";
import { aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const dice = vi.hoisted(() => ({ falls: [] as number[] }));
vi.mock("node:crypto", async (importOriginal) => ({
  ...(await importOriginal<typeof import("node:crypto")>()),
  randomInt: () => dice.falls.shift() ?? 0,
}));

const officer = aViewer("donor officer");

beforeAll(async () => {
  await testDatabase();
});

test("a code that is taken is drawn again, and no donor gets another's", async () => {
  expect(await registerDonor(officer, {})).toBe("D-22222");
  dice.falls = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1];
  expect(await registerDonor(officer, {})).toBe("D-33333");
});

test("dice that never fall otherwise end in a refusal", async () => {
  dice.falls = [];
  await expect(registerDonor(officer, {})).rejects.toMatchObject({ reason: "donor.no-code-left" });
});
