/**
 * The one statement that tells on which days specimens are promised. A whole takes
 * its parts along, so the bookings of all below and above a specimen count as its
 * own. A hold that has run out, and what was given back, count no more.
 *
 * Each member of a tree is asked of the index behind "never twice", which holds
 * specimen and range together: what it costs grows with the specimens asked for
 * and not with the bookings there are.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import type { DateText } from "#lib/platform/dates.ts";

/** @param at the moment by which holds have run out, or have not */
export function busyStatement(
  specimenIds: readonly string[],
  from: DateText,
  to: DateText,
  at: Date,
): Prisma.Sql {
  return Prisma.sql`
    WITH RECURSIVE asked (id) AS (SELECT unnest(${[...specimenIds]}::uuid[])),
    below (root, id) AS (
      SELECT id, id FROM asked
      UNION SELECT below.root, part.id FROM below JOIN specimen part ON part.whole_id = below.id),
    above (root, id) AS (
      SELECT asked.id, s.whole_id FROM asked JOIN specimen s ON s.id = asked.id WHERE s.whole_id IS NOT NULL
      UNION SELECT above.root, s.whole_id FROM above JOIN specimen s ON s.id = above.id WHERE s.whole_id IS NOT NULL),
    tree (root, id) AS (SELECT root, id FROM below UNION SELECT root, id FROM above)
    SELECT tree.root::text AS root, booking.id::text AS "bookingId", booking.specimen_id::text AS "specimenId",
      booking.starts_on::text AS "startsOn", booking.ends_on::text AS "endsOn",
      booking.purpose, booking.strength, booking.loan_line_id::text AS "loanLineId"
    FROM tree JOIN booking ON booking.specimen_id = tree.id
      AND daterange(booking.starts_on, booking.ends_on) && daterange(${from}::date, ${to}::date)
    WHERE booking.released_at IS NULL AND (booking.strength = 'firm' OR booking.expires_at > ${at})
    ORDER BY booking.starts_on, booking.specimen_id`;
}
