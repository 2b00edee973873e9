/**
 * Setting the centre's fee scale. Each setting is a new version with the day from
 * which it counts; papers that were drawn up keep naming the version they rest on.
 */
import { z } from "zod";
import { FeeScale } from "#lib/costing/schema.ts";
import { command } from "#lib/people/command.ts";
import { DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export const FeeScaleInput = z.object({ scale: FeeScale, validFrom: DateText });
export type FeeScaleInput = z.infer<typeof FeeScaleInput>;

export const setFeeScale = command(
  "setFeeScale",
  FeeScaleInput,
  async (work, { scale, validFrom }): Promise<{ version: number }> => {
    const { transaction, viewer, now, today } = work;
    if (validFrom < today)
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "validFrom", message: "fee-scale.from-past" },
      ]);
    // of two who set it at once the second sees the first
    await transaction.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended('fee_scale', 0))`;
    const newest = await transaction.feeScale.findFirst({ orderBy: { version: "desc" } });
    if (
      newest &&
      toDateText(newest.validFrom) <= validFrom &&
      canonicalText(newest.content) === canonicalText(scale)
    )
      throw new Refusal("conflict", "fee-scale.unchanged", { version: newest.version });
    const version = (newest?.version ?? 0) + 1;
    await transaction.feeScale.create({
      data: {
        id: newId(),
        version,
        currency: scale.currency,
        content: scale,
        validFrom: toDate(validFrom),
        accountId: viewer.accountId,
        setAt: now,
      },
    });
    return { version };
  },
);
