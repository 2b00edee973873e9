/**
 * A moment: in universal time, which everybody on a loan reads alike, and beside it
 * what the reader's own clock shows then. Only the browser knows that clock, so it is
 * added once the page runs; the page as it is served says universal time alone.
 */
"use client";

import { useSyncExternalStore } from "react";
import { formatLocal, formatMoment, formatMomentShort } from "#app/_words/format.ts";

const never = () => () => {};

/** The moment on the reader's clock, in brackets; nothing where that clock shows universal time. */
export function LocalTime({ at }: { at: string }) {
  const local = useSyncExternalStore(
    never,
    () => formatLocal(at, Intl.DateTimeFormat().resolvedOptions().timeZone),
    () => null,
  );
  return local === null ? null : <span style={{ whiteSpace: "nowrap" }}> ({local})</span>;
}

/**
 * On one line where there is room for it.
 * @param long with the month in full, where it stands by itself and not in a row of a table
 */
export function Moment({ at, long = false }: { at: string; long?: boolean }) {
  if (long)
    return (
      <time dateTime={at}>
        {formatMoment(at)}
        <LocalTime at={at} />
      </time>
    );
  const [day, ...time] = formatMomentShort(at).split(", ");
  return (
    <time dateTime={at} className="small">
      <span style={{ whiteSpace: "nowrap" }}>{day},</span>{" "}
      <span style={{ whiteSpace: "nowrap" }}>{time.join(", ")}</span>
      <LocalTime at={at} />
    </time>
  );
}
