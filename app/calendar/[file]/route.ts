/**
 * `GET /calendar/{token}.ics`: the calendar of the person whose secret address it
 * is. An address that nobody has, or had once, is no page.
 */
import { calendarOf } from "#app/_server/calendar.ts";
import { viewerOfFeed } from "#lib/people/queries/calendar-feed.ts";

export const dynamic = "force-dynamic";

const missing = () =>
  new Response("Not found\n", { status: 404, headers: { "content-type": "text/plain; charset=utf-8" } });

export async function GET(
  _request: Request,
  { params }: { params: Promise<{ file: string }> },
): Promise<Response> {
  const { file } = await params;
  const token = /^([\w-]{43})\.ics$/.exec(file)?.[1];
  const viewer = token === undefined ? null : await viewerOfFeed(token);
  if (viewer === null) return missing();
  return new Response(await calendarOf(viewer), {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": 'inline; filename="anatheca.ics"',
      "cache-control": "private, no-store",
      "referrer-policy": "no-referrer",
      "x-robots-tag": "noindex",
    },
  });
}
