/** What every command does by itself: an answer once given, the input read, and no day to come. */
import { beforeAll, describe, expect, test } from "vitest";
import { keepInstitution, keepVenue } from "#lib/people/commands.ts";
import { getInstitution, listInstitutions } from "#lib/people/queries.ts";
import type { InstitutionInput } from "#lib/people/schema.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { aBorrower, aVenue, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const school = (said: Partial<InstitutionInput> = {}): InstitutionInput => ({
  id: null,
  name: `School ${newId()}`,
  kind: "medical school",
  countryCode: "DE",
  city: "Southmere",
  address: "2 Quiet Street",
  languages: ["de"],
  email: "loans@example.org",
  phone: "+49 000 000",
  standing: "good",
  verifiedOn: null,
  note: "",
  ...said,
});
const refusalOf = async (attempt: Promise<unknown>) =>
  await attempt.then(
    () => null,
    ({ kind, reason, issues }: Refusal) => ({ kind, reason, issues }),
  );

beforeAll(async () => {
  await testDatabase();
});

describe("a command with an idempotency key", () => {
  test("asked again answers the same and does nothing twice", async () => {
    const options = { idempotencyKey: newId() };
    const input = school();
    const id = await keepInstitution(registrar, input, options);
    // The same input, written in another order and with a blank that is trimmed.
    const again = Object.fromEntries(Object.entries(input).reverse()) as InstitutionInput;
    expect(await keepInstitution(registrar, { ...again, city: " Southmere " }, options)).toBe(id);
    const named = (await listInstitutions(registrar)).filter(({ name }) => name === input.name);
    expect(named).toHaveLength(1);
  });

  test("asked something else with the same key is refused, and nothing is done", async () => {
    const options = { idempotencyKey: newId() };
    await keepInstitution(registrar, school(), options);
    const other = school();
    expect(await refusalOf(keepInstitution(registrar, other, options))).toMatchObject({
      kind: "conflict",
      reason: "command.key-reused",
    });
    expect((await listInstitutions(registrar)).some(({ name }) => name === other.name)).toBe(false);
  });

  test("belongs to its account and its act: somebody else may use the same key", async () => {
    const options = { idempotencyKey: newId() };
    const mine = await keepInstitution(registrar, school(), options);
    const theirs = await keepInstitution(aViewer("registrar"), school(), options);
    expect(theirs).not.toBe(mine);
  });

  test("keeps a fingerprint of what it was told, and not the words", async () => {
    const options = { idempotencyKey: newId() };
    const input = school({ note: "Spoken to on the telephone" });
    const id = await keepInstitution(registrar, input, options);
    const row = await database().commandReceipt.findFirst({ where: { key: options.idempotencyKey } });
    expect(row?.answer).toEqual({ inputSha256: expect.stringMatching(/^[0-9a-f]{64}$/), answer: id });
  });
});

describe("what is told to a command", () => {
  test.each([
    [{ countryCode: "ZZ" }, "countryCode", "country.unknown"],
    [{ phone: "abc" }, "phone", "telephone.unreadable"],
    [{ phone: "javascript:alert(1)" }, "phone", "telephone.unreadable"],
    [{ verifiedOn: "2099-01-01" }, "verifiedOn", "date.to-come"],
  ])("%j is refused at its field", async (said, path, message) => {
    expect(await refusalOf(keepInstitution(registrar, school(said)))).toEqual({
      kind: "invalid",
      reason: "input.invalid",
      issues: [{ path, message }],
    });
  });

  test("is kept without what nobody sees", async () => {
    const id = await keepInstitution(registrar, school({ city: "\u202eSouth\u200bmere\u202c" }));
    expect((await getInstitution(registrar, id)).city).toBe("Southmere");
  });

  test("of a venue is not reported on a day to come; today is none", async () => {
    const institutionId = await aBorrower();
    const venueId = await aVenue({ institutionId });
    const { venues } = await getInstitution(registrar, institutionId);
    const venue = venues.find(({ id }) => id === venueId);
    if (!venue) throw new Error("The venue is not there.");
    const day = await inWork(async ({ today }) => today);
    expect(await refusalOf(keepVenue(registrar, { ...venue, reportedOn: addDays(day, 2) }))).toEqual({
      kind: "invalid",
      reason: "input.invalid",
      issues: [{ path: "reportedOn", message: "date.to-come" }],
    });
    expect(await keepVenue(registrar, { ...venue, reportedOn: day })).toBe(venueId);
  });
});
