/** The permission table, read line by line, and its two edges: strangers and closed subjects. */
import { describe, expect, test } from "vitest";
import { type Act, acts, authorise, mayDo, maySee, requireSight, sights } from "#lib/people/permission.ts";
import { type Role, roles, type Viewer } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const viewerAs = (role: Role, institutionId: string | null = null): Viewer => ({
  accountId: "a",
  name: "A",
  email: "a@example.invalid",
  roles: [role],
  institutionId,
});

describe("acts", () => {
  test.each(Object.keys(acts) as Act[])("%s is refused to every role that the table leaves out", (act) => {
    for (const role of roles) {
      const allowed = (acts[act] as readonly Role[]).includes(role);
      expect(mayDo(viewerAs(role), act)).toBe(allowed);
      if (!allowed) expect(() => authorise(viewerAs(role), act)).toThrow(Refusal);
    }
  });

  test("the registrar does not decide", () => {
    expect(mayDo(viewerAs("registrar"), "decideLoan")).toBe(false);
  });

  test("an administrator and an inspector change nothing of the trade", () => {
    const trade = (Object.keys(acts) as Act[]).filter(
      (act) =>
        ![
          "configureCentre",
          "keepAccount",
          "openSealedRecord",
          "setFeeScale",
          "giveMandate",
          "revokeMandate",
          "sendLetterAgain",
          "makeCalendarFeed",
          "revokeCalendarFeed",
        ].includes(act),
    );
    for (const act of trade) {
      expect(mayDo(viewerAs("administrator"), act)).toBe(false);
      expect(mayDo(viewerAs("inspector"), act)).toBe(false);
    }
  });

  test("what is somebody else's does not exist for a borrower", () => {
    const lecturer = viewerAs("lecturer", "ours");
    expect(mayDo(lecturer, "submitRequest", { institutionId: "ours" })).toBe(true);
    expect(() => authorise(lecturer, "submitRequest", { institutionId: "theirs" })).toThrow(
      expect.objectContaining({ kind: "not-found" }),
    );
    expect(() => authorise(viewerAs("lecturer", null), "submitRequest", { institutionId: null })).toThrow(
      Refusal,
    );
  });
});

describe("sights", () => {
  test("a system administrator sees no donor facts", () => {
    for (const sight of ["consentScopes", "donorCode", "sealedLooks", "personFacts"] as const)
      expect(maySee(viewerAs("administrator"), sight)).toBe(false);
  });

  test("a lecturer sees neither costs, nor the store, nor why a rule bars", () => {
    for (const sight of ["replacementCost", "storeLocation", "suitabilityReasons", "consentScopes"] as const)
      expect(maySee(viewerAs("lecturer", "ours"), sight, { institutionId: "ours" })).toBe(false);
  });

  test("a borrower's registrar sees the own institution's facts and no other's", () => {
    const registrar = viewerAs("borrower registrar", "ours");
    expect(maySee(registrar, "facilityFacts", { institutionId: "ours" })).toBe(true);
    expect(() => requireSight(registrar, "facilityFacts", { institutionId: "theirs" })).toThrow(
      expect.objectContaining({ kind: "not-found" }),
    );
  });

  test("every sight is somebody's", () => {
    for (const allowed of Object.values(sights)) expect(allowed.length).toBeGreaterThan(0);
  });
});
