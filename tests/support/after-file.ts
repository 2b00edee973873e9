/**
 * What is to be cleared away when a test file has come to its end. Files share the
 * modules of their worker, so nothing registers itself with one file by being read:
 * whoever opens something says here how it is closed (`tests/support/setup.ts` does it).
 */
const clearings: (() => Promise<void>)[] = [];

export function afterThisFile(clear: () => Promise<void>): void {
  clearings.push(clear);
}

/** The newest first; what fails does not keep the others from being cleared. */
export async function clearAfterFile(): Promise<void> {
  const failures: unknown[] = [];
  for (const clear of clearings.splice(0).reverse())
    await clear().catch((error: unknown) => {
      failures.push(error);
    });
  if (failures.length > 0) throw new AggregateError(failures, "Not everything could be cleared away.");
}
