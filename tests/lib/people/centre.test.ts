/** What the centre says of itself: who reads it, who changes it, and the names that it had. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { configureCentre } from "#lib/people/commands.ts";
import { centreSettings, getCentre } from "#lib/people/queries.ts";
import { CentreInput } from "#lib/people/schema.ts";
import type { Role } from "#lib/people/viewer.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const manager = aViewer("collection manager");
const ours = "01920000-0000-7000-8000-0000000000aa";
const centre = {
  name: "Centre for Anatomical Loans",
  address: "1 Quiet Street",
  city: "Northmere",
  countryCode: "NO",
  languages: ["nb", "en"],
  email: "loans@example.org",
  phone: "+47 00 00 00 00",
  accessionPattern: "AN \\d{4}\\.\\d{4}|SR \\d{2}\\.\\d{3}",
  accessionExample: "AN 2019.0142",
  currency: "NOK",
};
const refusalOf = async (attempt: Promise<unknown>) =>
  await attempt.then(
    () => null,
    ({ kind, reason, issues }: Refusal) => ({ kind, reason, issues }),
  );

describe("what the centre says of itself", () => {
  test.each([
    ["nothing wrong", {}, []],
    ["an example beside the pattern", { accessionExample: "X 1" }, ["centre.example-differs"]],
    [
      "an example that only begins as the pattern",
      { accessionExample: "AN 2019.01425" },
      ["centre.example-differs"],
    ],
    ["a pattern that is none", { accessionPattern: "AN [" }, ["centre.pattern-broken"]],
    [
      "a pattern that is whole only with brackets around it",
      { accessionPattern: "AN.*)|(.*" },
      ["centre.pattern-broken"],
    ],
    ["a currency in words", { currency: "euro" }, ["currency.three-letters"]],
    ["a language in words", { languages: ["Norwegian"] }, ["language.tag"]],
    ["a country in words", { countryCode: "Norway" }, ["country.two-letters"]],
  ])("with %s", (_what, said, messages) => {
    const issues = CentreInput.safeParse({ ...centre, ...said }).error?.issues ?? [];
    expect(issues.map(({ message }) => message)).toEqual(messages);
  });

  test("stays the same when it is read again", () => {
    const once = CentreInput.parse({ ...centre, name: ` ${centre.name} ` });
    expect(once.name).toBe(centre.name);
    expect(CentreInput.parse(once)).toEqual(once);
  });
});

describe("the settings of the centre", () => {
  beforeAll(async () => {
    await testDatabase();
  });

  test("are nothing before anybody has stated them", async () => {
    expect(await getCentre(manager)).toBeNull();
    expect(await refusalOf(centreSettings())).toMatchObject({ kind: "not-found" });
  });

  describe("once stated", () => {
    beforeEach(async () => {
      await aCentre(centre);
    });

    test("are read by everybody of the house, and by no borrower", async () => {
      const house: Role[] = [
        "registrar",
        "curator",
        "conservator",
        "collection manager",
        "donor officer",
        "inspector",
        "administrator",
      ];
      for (const role of house) expect(await getCentre(aViewer(role))).toMatchObject({ settings: centre });
      for (const role of ["lecturer", "borrower registrar"] as const)
        expect(await refusalOf(getCentre(aViewer(role, ours)))).toMatchObject({ kind: "forbidden" });
    });

    test("are changed by the collection manager and the administrator alone", async () => {
      for (const role of ["registrar", "curator", "inspector", "lecturer"] as const)
        expect(await refusalOf(configureCentre(aViewer(role, ours), centre))).toMatchObject({
          kind: "forbidden",
        });
      await configureCentre(aViewer("administrator"), { ...centre, currency: "EUR" });
      expect(await centreSettings()).toEqual({ ...centre, currency: "EUR" });
    });

    test("keeps the figures of lending that the house has set, and nothing for those that it left empty", async () => {
      const practice = { recallNoticeDays: 45, noticeAbroadDays: undefined };
      await configureCentre(manager, { ...centre, practice });
      expect((await centreSettings()).practice).toEqual({ recallNoticeDays: 45 });
      await configureCentre(manager, centre);
      expect((await centreSettings()).practice).toBeUndefined();
    });

    test("say which field is wrong, and change nothing then", async () => {
      const wrong = configureCentre(manager, { ...centre, city: "Elsewhere", accessionExample: "X 1" });
      expect(await refusalOf(wrong)).toEqual({
        kind: "invalid",
        reason: "input.invalid",
        issues: [{ path: "accessionExample", message: "centre.example-differs" }],
      });
      expect((await centreSettings()).city).toBe("Northmere");
    });

    test("remember each name that was given up, once, and not the one it has", async () => {
      const rename = (name: string) => configureCentre(manager, { ...centre, name });
      const formerNames = async () => (await getCentre(manager))?.formerNames;
      for (const name of ["Second Name", "Third Name", "Second Name", centre.name]) await rename(name);
      expect(await formerNames()).toEqual(["Third Name", "Second Name"]);
      await rename(centre.name);
      expect(await formerNames()).toEqual(["Third Name", "Second Name"]);
    });
  });
});
