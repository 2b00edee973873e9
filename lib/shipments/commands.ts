/**
 * Writing what happens to crates. These functions work inside the command of a
 * loan that has authorised; only what a carrier confirms by its link stands alone,
 * under the name "carrier link" in the audit. Events are never changed.
 */
import type { Work } from "#lib/people/command.ts";
import { now } from "#lib/platform/clock.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { carrierView } from "#lib/shipments/queries.ts";
import { CarrierWord, type CrateEventKind, type SpecimenCount } from "#lib/shipments/schema.ts";

export type CrateEventNote = {
  kind: CrateEventKind;
  stageId?: string | null;
  sealNumber?: string | null;
  sealIntact?: boolean | null;
  outsideDamage?: string;
  notBefore?: Date | null;
  counts?: readonly SpecimenCount[];
};

async function insertEvents(
  transaction: Transaction,
  at: Date,
  by: string,
  events: readonly ({ crateId: string } & CrateEventNote)[],
): Promise<void> {
  const rows = events.map((event) => ({ id: newId(), event }));
  // The rows of one statement are numbered in their order.
  await transaction.crateEvent.createMany({
    data: rows.map(({ id, event: { crateId, kind, ...said } }) => ({
      id,
      crateId,
      kind,
      at,
      by,
      stageId: said.stageId ?? null,
      sealNumber: said.sealNumber ?? null,
      sealIntact: said.sealIntact ?? null,
      outsideDamage: said.outsideDamage ?? "",
      notBefore: said.notBefore ?? null,
    })),
  });
  await transaction.crateCount.createMany({
    data: rows.flatMap(({ id, event }) =>
      (event.counts ?? []).map(({ specimenId, present, remark }) => ({
        eventId: id,
        specimenId,
        present,
        remark,
      })),
    ),
  });
}

/** Writes events of crates, in this order, as seen by who acts. */
export async function writeCrateEvents(
  work: Work,
  events: readonly ({ crateId: string } & CrateEventNote)[],
): Promise<void> {
  await insertEvents(work.transaction, work.now, work.viewer.name, events);
}

/**
 * A carrier's word on its link: it took the crates over, or brought them. A word
 * more beside the house's own; what moves the specimens is the receipt by the one
 * who takes them over. An unknown link and one that ran out answer the same.
 */
export async function confirmByCarrier(token: string, said: Omit<CarrierWord, "token">): Promise<void> {
  const { word, driver, crates } = parseInput(CarrierWord, { ...said, token });
  await inTransaction({ accountId: "carrier link" }, "confirmByCarrier", async (transaction) => {
    const view = await carrierView(token, transaction);
    if (!view) throw notFound("carrier link");
    const by = `${driver}, ${view.carrier}`;
    const events = crates.map(({ crateId, sealIntact, outsideDamage }) => {
      const crate = view.crates.find((one) => one.id === crateId);
      if (!crate) throw notFound("crate");
      const isUnderWay = crate.events.some(
        (event) => event.kind === "handed over" && event.stageId === view.stageId,
      );
      if (crate.state !== "with the carrier" || !isUnderWay)
        throw new Refusal("conflict", "carrier.not-under-way", { crate: crate.code });
      return { crateId, kind: word, stageId: view.stageId, sealIntact, outsideDamage };
    });
    await insertEvents(transaction, now(), by, events);
  });
}
