/** Donors under random pseudonyms, their consents and sealed records, a withdrawal, and looks into the seal. */
import {
  keepSealedRecord,
  openSealedRecord,
  recordConsent,
  registerDonor,
  withdrawConsent,
} from "#lib/provenance/commands.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { accounts } from "#seed/scenario/accounts.ts";
import { donors, sealedLooks } from "#seed/scenario/donors.ts";
import type { Day } from "#seed/scenario/shape.ts";

const registeredOn: Day = -1_420;
const sealedOn: Day = -1_412;
const consentsOn: Day = -1_405;

export function planDonors(timeline: Timeline, world: World): void {
  const officer = () => world.as("donor officer");
  const dateOrNull = (day: Day | null) => (day === null ? null : timeline.on(day));
  const all = Object.entries(donors);
  timeline.add(
    registeredOn,
    "donors",
    ...all.map(([key]) => async () => {
      world.donorCodes.set(key, await registerDonor(officer(), {}));
    }),
  );
  timeline.add(
    sealedOn,
    "sealed records",
    ...all.flatMap(([key, { sealed }]) =>
      sealed === null
        ? []
        : [() => keepSealedRecord(officer(), { ...sealed, donorCode: world.donorCode(key) })],
    ),
  );
  for (const [key, { consent }] of all) {
    if (consent === null) continue;
    const { validUntil, reviewDue, dispositionDue, verified, withdrawn, ...form } = consent;
    timeline.add(Math.max(consentsOn, (verified ?? consentsOn) + 1), "consents", () =>
      recordConsent(officer(), {
        ...form,
        donorCode: world.donorCode(key),
        validUntil: dateOrNull(validUntil),
        reviewDueOn: dateOrNull(reviewDue),
        dispositionDueOn: dateOrNull(dispositionDue),
        verifiedBy: verified === null ? null : accounts["donor officer"].name,
        verifiedOn: dateOrNull(verified),
      }),
    );
    if (withdrawn !== null)
      timeline.add(withdrawn.received, "consents", () =>
        withdrawConsent(officer(), {
          donorCode: world.donorCode(key),
          receivedOn: timeline.on(withdrawn.received),
          effectiveOn: timeline.on(withdrawn.effective),
        }),
      );
  }
  for (const { day, by, donor, reason } of sealedLooks)
    timeline.add(day, "looks into the seal", () =>
      openSealedRecord(world.as(by), { donorCode: world.donorCode(donor), reason }),
    );
}
