/**
 * How a chain of custody begins: in the house, on the day on which the specimen came
 * to it. That is the day of acquisition where the record has one, at its midnight in
 * universal time because no hour is known, and otherwise the moment at which the
 * house first had to say who has it. What is only a deposit is in the house as well.
 */
import type { Work } from "#lib/people/command.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { handoverLinks } from "#lib/whereabouts/custody.ts";
import { houseOf, lastHandoversOf } from "#lib/whereabouts/queries.ts";

/** The moments at which specimens came to the house, none of them after `at`. */
export async function arrivalsOf(
  transaction: Transaction,
  specimenIds: readonly string[],
  at: Date,
): Promise<(specimenId: string) => Date> {
  const rows = await transaction.specimen.findMany({
    where: { id: { in: [...specimenIds] }, acquiredOn: { lte: at } },
    select: { id: true, acquiredOn: true },
  });
  const acquired = new Map(rows.map(({ id, acquiredOn }) => [id, acquiredOn]));
  return (specimenId) => acquired.get(specimenId) ?? at;
}

/** Who stands in the first link of a chain: nobody gave it out of hand, the house took it. */
export const openingNote = (house: { name: string }) => ({
  releasedBy: "",
  receivedBy: house.name,
  reason: "the record of custody begins",
  loanId: null,
});

/**
 * Begins the chains of specimens that have none; their locks are the caller's. A house
 * that has not said its name yet begins none.
 */
export async function beginCustody(
  { transaction }: Work,
  specimenIds: readonly string[],
  at: Date,
): Promise<void> {
  const house = await houseOf(transaction);
  if (house.name === "") return;
  const lastOf = await lastHandoversOf(transaction, specimenIds);
  const without = specimenIds.filter((id) => !lastOf.has(id));
  const cameAt = await arrivalsOf(transaction, without, at);
  await transaction.custodyEvent.createMany({
    data: without.flatMap((specimenId) =>
      handoverLinks(null, house.name, house).map(({ opens: _, ...link }) => ({
        id: newId(),
        specimenId,
        ...link,
        handedOverAt: cameAt(specimenId),
        ...openingNote(house),
      })),
    ),
  });
}
