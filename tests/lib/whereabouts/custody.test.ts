import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { brokenLinks, handoverLinks, holderAt, holderOf, isInHouse } from "#lib/whereabouts/custody.ts";

const house = "Lending Centre";
const houseNow = { name: house, formerNames: ["Collection of Preparations"] };
const at = (day: number) => new Date(Date.UTC(2027, 2, day, 9));
const link = (sequence: number, fromParty: string | null, toParty: string, day: number) => ({
  sequence,
  fromParty,
  toParty,
  handedOverAt: at(day),
});
const chain = [
  link(1, null, house, 1),
  link(2, house, "Carrier North", 3),
  link(3, "Carrier North", "School of Medicine", 4),
  link(4, "School of Medicine", "Carrier North", 20),
];

describe("who has it", () => {
  test("is the last receiver, in whatever order the chain is read", () => {
    expect(holderOf(chain)).toBe("Carrier North");
    expect(holderOf([...chain].reverse())).toBe("Carrier North");
  });
  test("is nobody known while no chain has begun", () => {
    expect(holderOf([])).toBeNull();
  });
  test("can be told for any moment", () => {
    expect(holderAt(chain, at(2))).toBe(house);
    expect(holderAt(chain, at(4))).toBe("School of Medicine");
    expect(holderAt(chain, new Date(Date.UTC(2027, 1, 1)))).toBeNull();
  });
});

test.each([
  [null, true],
  [house, true],
  ["Collection of Preparations", true],
  ["Carrier North", false],
  ["", false],
])("held by %s, a specimen is in the house: %s", (holder, inside) => {
  expect(isInHouse(holder, houseNow)).toBe(inside);
});

describe("a chain", () => {
  test("that holds has no broken link", () => {
    expect(brokenLinks(chain)).toEqual([]);
  });
  const rows: [what: string, chain: typeof chain, broken: number[]][] = [
    ["with a number left out", [chain[0], chain[2]] as typeof chain, [3]],
    ["that begins from somebody", [link(1, "A museum", house, 1)], [1]],
    [
      "that begins elsewhere than it ended",
      [link(1, null, house, 1), link(2, "A museum", "Carrier North", 2)],
      [2],
    ],
    ["that goes back in time", [link(1, null, house, 5), link(2, house, "Carrier North", 4)], [2]],
  ];
  test.each(rows)("%s is broken there", (_what, links, broken) => {
    expect(brokenLinks(links)).toEqual(broken);
  });
});

describe("the next hand-over", () => {
  test("begins where the last one ended", () => {
    expect(handoverLinks({ sequence: 2, toParty: "Carrier North" }, "School of Medicine", houseNow)).toEqual([
      { sequence: 3, fromParty: "Carrier North", toParty: "School of Medicine", opens: false },
    ]);
  });
  test("first states the house when no chain has begun", () => {
    expect(handoverLinks(null, "Carrier North", houseNow)).toEqual([
      { sequence: 1, fromParty: null, toParty: house, opens: true },
      { sequence: 2, fromParty: house, toParty: "Carrier North", opens: false },
    ]);
  });
  test("into the house begins a chain by itself", () => {
    expect(handoverLinks(null, house, houseNow)).toEqual([
      { sequence: 1, fromParty: null, toParty: house, opens: false },
    ]);
  });
  test("to who has it already is none", () => {
    expect(handoverLinks({ sequence: 2, toParty: "Carrier North" }, "Carrier North", houseNow)).toEqual([]);
  });
  test("from the house under a name it had is none into the house, and begins with that name out of it", () => {
    const last = { sequence: 4, toParty: "Collection of Preparations" };
    expect(handoverLinks(last, house, houseNow)).toEqual([]);
    expect(handoverLinks(last, "Carrier North", houseNow)).toEqual([
      { sequence: 5, fromParty: "Collection of Preparations", toParty: "Carrier North", opens: false },
    ]);
  });

  test("however often it is handed on, the chain holds and the last receiver has it", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(house, "Carrier", "School", "Museum"), { minLength: 1, maxLength: 30 }),
        (parties) => {
          const links: (typeof chain)[number][] = [];
          parties.forEach((party, index) => {
            for (const next of handoverLinks(links.at(-1) ?? null, party, houseNow))
              links.push({ ...next, handedOverAt: at(index + 1) });
          });
          expect(brokenLinks(links)).toEqual([]);
          expect(holderOf(links)).toBe(parties.at(-1));
        },
      ),
    );
  });
});
