/**
 * A logger's file as it is filed for a venue, and what is kept of it: how it was
 * read, its curves thinned without losing a peak, and how it stands against the
 * default limits and against the strictest limits of each loan that was there.
 */
import { z } from "zod";
import { groupLimits } from "#lib/environment/group-limits.ts";
import { dateOrders } from "#lib/environment/logger-clock.ts";
import { type HowRead, type LoggerFile, mostLoggerBytes } from "#lib/environment/logger-file.ts";
import {
  type CurvePoint,
  defaultLimits,
  type Judgement,
  judgeReadings,
  type ReadingLimits,
  readingLimitsOf,
  thinnedCurve,
} from "#lib/environment/logger-judgement.ts";
import { limitsOfSpecimen, type PreparedSpecimen } from "#lib/environment/specimen-limits.ts";
import { Id } from "#lib/platform/identity.ts";

export const FileClimateRecordInput = z.object({
  venueId: Id,
  /** What it is called: the place of the logger, and when. */
  name: z.string().trim().min(1).max(120),
  content: z
    .instanceof(Uint8Array, { error: "logger.file-missing" })
    .refine((bytes) => bytes.byteLength > 0, "logger.file-missing")
    .refine((bytes) => bytes.byteLength <= mostLoggerBytes, "logger.file-too-large"),
  /** Minutes that the logger's clock is ahead of UTC; null as the file says. */
  utcOffsetMinutes: z.number().int().min(-720).max(840).nullable(),
  dateOrder: z.enum(dateOrders).nullable(),
});

/** Curves have at most so many stretches: more than a screen is wide is not seen. */
const mostStretches = 400;
export const curveQuantities = ["temperatureC", "humidity", "illuminanceLx", "uvMicrowattPerLumen"] as const;
export type CurveQuantity = (typeof curveQuantities)[number];

/** A loan that was there while the logger ran, with its specimens. */
export type LoanAtVenue = { id: string; number: string; specimens: readonly PreparedSpecimen[] };

export type JudgedRecord = {
  how: HowRead;
  curves: Record<CurveQuantity, CurvePoint[]>;
  judgements: {
    /** Null against the default limits. */
    loan: { id: string; number: string; specimens: number } | null;
    limits: ReadingLimits;
    judgement: Judgement;
  }[];
};

export function judgedRecord({ readings, how }: LoggerFile, loans: readonly LoanAtVenue[]): JudgedRecord {
  const curve = (quantity: CurveQuantity) => thinnedCurve(readings, quantity, mostStretches);
  const own = loans.filter(({ specimens }) => specimens.length > 0);
  return {
    how,
    curves: {
      temperatureC: curve("temperatureC"),
      humidity: curve("humidity"),
      illuminanceLx: curve("illuminanceLx"),
      uvMicrowattPerLumen: curve("uvMicrowattPerLumen"),
    },
    judgements: [
      { loan: null, limits: defaultLimits, judgement: judgeReadings(readings, defaultLimits) },
      ...own.map(({ id, number, specimens }) => {
        const members = specimens.map((one, at) => ({ id: String(at), limits: limitsOfSpecimen(one) }));
        const limits = readingLimitsOf(groupLimits(members).limits);
        return {
          loan: { id, number, specimens: specimens.length },
          limits,
          judgement: judgeReadings(readings, limits),
        };
      }),
    ],
  };
}
