/** What a form lacks is said with the name of the field. */
import { expect, test } from "vitest";
import { firstRefused, lackingIn } from "#app/_parts/lacking.ts";

const control = (name: string, label: string | null, found: Partial<ValidityState>) =>
  ({
    name,
    labels: label === null ? null : [{ textContent: ` ${label} ` }],
    validity: { valueMissing: false, badInput: false, ...found },
  }) as unknown as Parameters<typeof lackingIn>[0][number];

test("an empty field that is needed is named, and what is whole is not", () => {
  expect(
    lackingIn([
      control("receivedOn", "Received on", { valueMissing: true }),
      control("effectiveOn", "Counts from", {}),
    ]),
  ).toEqual([{ path: "receivedOn", message: "Received on: Fill this in." }]);
});

test("a day or a number that was typed by half cannot be read", () => {
  const [issue] = lackingIn([control("on", "Day", { badInput: true, valueMissing: true })]);
  expect(issue?.message).toBe("Day: What stands here cannot be read. Write it again.");
});

test("what is too long or out of range is left to the server, which says by how much", () => {
  expect(lackingIn([control("reason", "Reason", { tooShort: true, rangeOverflow: true })])).toEqual([]);
});

test("a field without a label has its sentence all the same", () => {
  expect(lackingIn([control("x", null, { valueMissing: true })])[0]?.message).toBe("Fill this in.");
});

test("of what an answer refuses the first field in the order of the form is found", () => {
  const fields = [{ name: "" }, { name: "office" }, { name: "grounds" }, { name: "reference" }];
  const refused = (...paths: string[]) =>
    ({
      state: "refused",
      kind: "invalid",
      message: "No.",
      issues: paths.map((path) => ({ path, message: "No." })),
    }) as const;
  expect(firstRefused(fields, refused("reference", "grounds"))?.name).toBe("grounds");
  expect(firstRefused(fields, refused("", "elsewhere"))).toBeNull();
  expect(firstRefused(fields, { state: "done", message: "Saved." })).toBeNull();
});
