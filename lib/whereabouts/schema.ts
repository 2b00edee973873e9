/**
 * The words of whereabouts: places and moves, custody as a chain of hand-overs,
 * and the days on which a specimen is promised. Where a specimen is and who has
 * it is never typed; it is read off the last move and the last hand-over.
 */
import { z } from "zod";
import { DateText, daysBetween } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

/** "venue" is a place at a borrower's; "on the way" is between two places. */
export const placeKinds = ["store", "room", "cabinet", "shelf", "workshop", "venue", "on the way"] as const;
export type PlaceKind = (typeof placeKinds)[number];

/** Kinds of places inside the house, where a specimen belongs between loans. */
export const homeKinds: readonly PlaceKind[] = ["store", "room", "cabinet", "shelf", "workshop"];

export function isHomeKind(kind: string): boolean {
  return (homeKinds as readonly string[]).includes(kind);
}

/** Kinds of places where specimens are kept; in a room or a workshop somebody looks at them. */
export function isStorageKind(kind: string): boolean {
  return kind === "store" || kind === "cabinet" || kind === "shelf";
}

const text = (most: number) => z.string().trim().max(most);

export const PlaceInput = z
  .object({
    id: Id.nullable(),
    code: text(40).min(1),
    name: text(120).min(1),
    kind: z.enum(placeKinds),
    /** The larger place it lies in. */
    parentId: Id.nullable(),
    /** The borrower's venue, for a place of kind "venue" only. */
    venueId: Id.nullable(),
  })
  .check((context) => {
    const { value, issues } = context;
    const refuse = (path: string[], message: string) =>
      issues.push({ code: "custom", input: value, path, message });
    if ((value.kind === "venue") !== (value.venueId !== null)) refuse(["venueId"], "place.venue-of-its-kind");
    if (value.id !== null && value.parentId === value.id) refuse(["parentId"], "place.inside-itself");
  });
export type PlaceInput = z.infer<typeof PlaceInput>;

/** A moment in universal time, in a year that the trade can mean. */
const Moment = z.iso
  .datetime("move.moment-unreadable")
  .refine((moment) => DateText.safeParse(moment.slice(0, 10)).success, "date.year");

export const MoveInput = z.object({
  specimenId: Id,
  placeId: Id,
  reason: text(300).min(1),
  /** When it was moved, for a move that is told afterwards; null for now. */
  movedAt: Moment.nullable().default(null),
});
export type MoveInput = z.infer<typeof MoveInput>;

/** What the house itself promises a specimen for. */
export const housePurposes = [
  "teaching in the house",
  "examination",
  "treatment",
  "picture-taking",
  "rest",
] as const;
export const bookingPurposes = ["loan", ...housePurposes] as const;
export type BookingPurpose = (typeof bookingPurposes)[number];

/** A hold runs out by itself; a firm booking ends when it is released. */
export const bookingStrengths = ["hold", "firm"] as const;
export type BookingStrength = (typeof bookingStrengths)[number];

/** The longest time a specimen can be promised at once. */
export const longestBookingDays = 3_660;

export const HouseBookingInput = z
  .object({
    specimenId: Id,
    purpose: z.enum(housePurposes),
    /** First day on which it is taken. */
    startsOn: DateText,
    /** First day on which it is free again. */
    endsOn: DateText,
  })
  .check((context) => {
    const { value, issues } = context;
    if (!(value.startsOn < value.endsOn))
      issues.push({ code: "custom", input: value, path: ["endsOn"], message: "booking.period-reversed" });
    else if (!(daysBetween(value.startsOn, value.endsOn) <= longestBookingDays))
      issues.push({ code: "custom", input: value, path: ["endsOn"], message: "booking.too-long" });
  });
export type HouseBookingInput = z.infer<typeof HouseBookingInput>;

/** Days, the first inclusive, the last exclusive. */
export type Period = { startsOn: DateText; endsOn: DateText };

/** Days on which a specimen is promised, and for what. */
export type BusyPeriod = Period & {
  bookingId: string;
  /** Whose row it is: the specimen itself, or its whole or part that takes it along. */
  specimenId: string;
  purpose: BookingPurpose;
  strength: BookingStrength;
  loanLineId: string | null;
};

/** One hand-over. Parties are institutions and carriers by name; who signed for them stands beside. */
export type Handover = {
  sequence: number;
  /** Null for the first of a chain. */
  fromParty: string | null;
  toParty: string;
  handedOverAt: Date;
  releasedBy: string;
  receivedBy: string;
  reason: string;
  loanId: string | null;
};
