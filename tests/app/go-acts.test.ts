/** Frequent acts lead only where a role has a place for them, and each role has one to be shown. */
import { describe, expect, test } from "vitest";
import { actWords } from "#app/_words/en/go.ts";
import { actCalled, exampleAct } from "#app/(signed-in)/go/acts.ts";
import { borrowerRoles, roles } from "#lib/people/viewer.ts";
import { aViewer } from "#tests/support/builders.ts";

const viewerOf = (role: (typeof roles)[number]) =>
  (borrowerRoles as readonly string[]).includes(role)
    ? aViewer(role, "01920000-0000-7000-8000-0000000000aa")
    : aViewer(role);

test("every way of saying an act is that act, and no two acts are said alike", () => {
  const said = Object.values(actWords).flat();
  expect(new Set(said).size).toBe(said.length);
  for (const words of said) expect(actCalled(viewerOf("curator"), words.toUpperCase()), words).not.toBeNull();
  expect(actCalled(viewerOf("curator"), "vagus")).toBeNull();
});

describe("an act", () => {
  test.each([
    ["new specimen", "curator", "/specimens/new"],
    ["new specimen", "lecturer", null],
    ["slip", "lecturer", "/slip"],
    ["slip", "curator", null],
    ["new borrower", "registrar", "/institutions/new"],
    ["donors", "donor officer", "/donors"],
    ["donors", "registrar", null],
    ["accounts", "administrator", "/accounts"],
    ["audit", "lecturer", null],
    ["loans", "borrower registrar", "/loans"],
    ["loans", "administrator", null],
    ["new loan", "registrar", "/loans/new"],
    ["new loan", "lecturer", null],
    ["due", "inspector", "/"],
  ] as const)("%j leads a %s to %j", (text, role, address) =>
    expect(actCalled(viewerOf(role), text)).toEqual({ address }),
  );

  test.each(roles)("that is shown to a %s is one that they may do", (role) => {
    const viewer = viewerOf(role);
    expect(actCalled(viewer, exampleAct(viewer))?.address).toMatch(/^\//);
  });
});
