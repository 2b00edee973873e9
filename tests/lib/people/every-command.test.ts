/**
 * Every command with every role: refused before anything else happens where the
 * table leaves the role out, and read by its schema where it does not. And the
 * table names exactly the commands there are.
 */
import fs from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { commands } from "#lib/people/command.ts";
import { type Act, acts } from "#lib/people/permission.ts";
import { type Role, roles, type Viewer } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const lib = path.resolve(import.meta.dirname, "../../../lib");
const doors = fs
  .readdirSync(lib, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
  .map((entry) => path.join(entry.parentPath, entry.name))
  .filter((file) => /\/commands(\.ts|\/[^/]+\.ts)$/.test(file));

/** Commands that are told nothing: a new pseudonym has no input that could be wrong. */
const withoutInput: readonly Act[] = ["registerDonor"];

const viewerAs = (role: Role): Viewer => ({
  accountId: "somebody",
  name: "Somebody",
  email: "somebody@example.invalid",
  roles: [role],
  institutionId:
    role === "lecturer" || role === "borrower registrar" ? "0198c2a0-0000-7000-8000-000000000001" : null,
});

async function answerTo(act: Act, role: Role, input: unknown): Promise<string> {
  const command = commands.get(act);
  if (!command) throw new Error(`there is no command ${act}`);
  try {
    await command(viewerAs(role), input);
    return "done";
  } catch (error) {
    return error instanceof Refusal ? error.kind : `a bug: ${String(error)}`;
  }
}

beforeAll(async () => {
  for (const file of doors) await import(file);
});

test("the table names every command, and nothing else", () => {
  expect([...commands.keys()].sort()).toEqual(Object.keys(acts).sort());
});

describe.each(Object.keys(acts) as Act[])("%s", (act) => {
  test.each(roles.filter((role) => !(acts[act] as readonly Role[]).includes(role)))(
    "is refused to the role %s",
    async (role) => {
      expect(await answerTo(act, role, {})).toBe("forbidden");
      expect(await answerTo(act, role, null)).toBe("forbidden");
    },
  );

  test.each(withoutInput.includes(act) ? [] : ([...acts[act]] as Role[]))(
    "is read, and found wanting, from the role %s",
    async (role) => {
      for (const nonsense of [null, 7, [], { nothing: "here" }, { id: "'; DROP TABLE specimen; --" }])
        expect(await answerTo(act, role, nonsense)).toBe("invalid");
    },
  );
});
