/** Whose calendar an address is, and since when somebody has one. */
import { findViewer } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { sha256Hex } from "#lib/platform/hash.ts";

/** The person whose calendar this is; null for an address that nobody has, and for an account that is shut. */
export async function viewerOfFeed(token: string): Promise<Viewer | null> {
  const feed = await database().calendarFeed.findUnique({
    where: { linkHash: sha256Hex(token) },
    select: { accountId: true },
  });
  return feed === null ? null : await findViewer(feed.accountId);
}

/** Since when the viewer has an address; null without one. */
export async function feedOf(viewer: Viewer): Promise<{ madeAt: string } | null> {
  const feed = await database().calendarFeed.findUnique({ where: { accountId: viewer.accountId } });
  return feed && { madeAt: feed.madeAt.toISOString() };
}
