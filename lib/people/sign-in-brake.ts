/**
 * How often a password may be tried under one e-mail. Ten failures in a quarter
 * of an hour are enough for a person who has forgotten theirs and far too few for
 * a machine that guesses; after them the e-mail waits until the oldest of the ten
 * is a quarter of an hour old. Common practice, no source.
 */

export const SIGN_IN_FAILURES = 10;
export const SIGN_IN_WINDOW_MS = 15 * 60_000;

/**
 * @param failedAt the moments of failed attempts, in any order
 * @returns when the next attempt may be made, or null where it may be made now
 */
export function signInWaitsUntil(failedAt: readonly Date[], now: Date): Date | null {
  const counted = failedAt
    .map((moment) => moment.getTime())
    .filter((moment) => moment > now.getTime() - SIGN_IN_WINDOW_MS)
    .sort((a, b) => b - a);
  const deciding = counted[SIGN_IN_FAILURES - 1];
  return deciding === undefined ? null : new Date(deciding + SIGN_IN_WINDOW_MS);
}
