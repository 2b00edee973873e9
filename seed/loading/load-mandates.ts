/** Who may sign and decide: the house's people by a resolution, the borrowers' registrars by their letters. */
import { giveMandate } from "#lib/people/commands/mandates.ts";
import type { MandateInput } from "#lib/people/mandates.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { type AccountKey, accounts } from "#seed/scenario/accounts.ts";
import type { Day } from "#seed/scenario/shape.ts";

type Story = Pick<MandateInput, "acts" | "limit" | "reference"> & { from: Day; until: Day | null };

const resolution = "Resolution of the board on signing and deciding, section 4";
const upTo = (euros: number) => ({ minor: euros * 100, currency: "EUR" });

/** Of the house: the collection manager without a limit, the registrar for the daily loans. */
const house: Partial<Record<AccountKey, readonly Story[]>> = {
  "collection manager": [
    {
      acts: ["sign agreements", "decide requests"],
      limit: null,
      reference: resolution,
      from: -1_400,
      until: null,
    },
  ],
  curator: [{ acts: ["decide requests"], limit: null, reference: resolution, from: -1_400, until: null }],
  registrar: [
    {
      acts: ["sign agreements"],
      limit: upTo(50_000),
      reference: "Standing in for the collection manager",
      from: -1_400,
      until: -700,
    },
    { acts: ["sign agreements"], limit: upTo(150_000), reference: resolution, from: -700, until: null },
  ],
};

export function planMandates(timeline: Timeline, world: World): void {
  const borrowers = (Object.keys(accounts) as AccountKey[]).filter(
    (key) => accounts[key].role === "borrower registrar",
  );
  const ofBorrowers = borrowers.map((key): [AccountKey, readonly Story[]] => [
    key,
    [
      {
        acts: ["sign agreements", "accept quotations"],
        limit: upTo(2_000_000),
        reference: "Letter of the institution's head",
        from: -1_300,
        until: null,
      },
    ],
  ]);
  const all = [...(Object.entries(house) as [AccountKey, readonly Story[]][]), ...ofBorrowers];
  for (const [key, stories] of all)
    for (const { from, until, ...facts } of stories)
      timeline.add(from, "mandates", async () => {
        await giveMandate(world.as(key === "registrar" ? "administrator" : "registrar"), {
          ...facts,
          accountId: world.as(key).accountId,
          validFrom: timeline.on(from),
          validUntil: until === null ? null : timeline.on(until),
        });
      });
}
