/**
 * Who is asking, from the session of the request. A page that needs somebody
 * signed in calls `requireViewer`, which sends strangers to the sign-in page and
 * brings them back afterwards.
 */
import "server-only";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { auth } from "#app/_server/auth.ts";
import { findViewer } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";

/** The viewer of this request, or null; asked for many times, looked up once. */
export const currentViewer = cache(async (): Promise<Viewer | null> => {
  const session = await auth().api.getSession({ headers: await headers() });
  return session ? await findViewer(session.user.id) : null;
});

/** @param comeBackTo the address to return to after signing in */
export async function requireViewer(comeBackTo?: string): Promise<Viewer> {
  const viewer = await currentViewer();
  if (viewer) return viewer;
  redirect(comeBackTo ? `/sign-in?to=${encodeURIComponent(comeBackTo)}` : "/sign-in");
}
