/**
 * A person's calendar under an address that only they know. The address is told
 * once and only its hash is kept; a new one takes the place of the old, and one
 * that is revoked no longer opens.
 */
import { z } from "zod";
import { command, commands } from "#lib/people/command.ts";
import { randomToken, sha256Hex } from "#lib/platform/hash.ts";

const Nothing = z.strictObject({});

const makeFeed = command("makeCalendarFeed", Nothing, async ({ viewer, transaction, now }) => {
  const token = randomToken();
  const kept = { linkHash: sha256Hex(token), madeAt: now };
  await transaction.calendarFeed.upsert({
    where: { accountId: viewer.accountId },
    create: { accountId: viewer.accountId, ...kept },
    update: kept,
  });
  return { token };
});

/** An idempotency key is not taken: its receipt would keep the token, of which only the hash may be kept. */
export const makeCalendarFeed: typeof makeFeed = Object.assign(
  (...[viewer, input]: Parameters<typeof makeFeed>) => makeFeed(viewer, input),
  { act: makeFeed.act, input: makeFeed.input, within: makeFeed.within },
);
commands.set(makeCalendarFeed.act, makeCalendarFeed as never);

export const revokeCalendarFeed = command("revokeCalendarFeed", Nothing, async ({ viewer, transaction }) => {
  await transaction.calendarFeed.deleteMany({ where: { accountId: viewer.accountId } });
});
