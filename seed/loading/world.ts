/** What the loader knows by the keys of the scenario once it has been recorded. */
import type { Finding } from "#lib/condition/schema.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type AccountKey, accounts } from "#seed/scenario/accounts.ts";
import type { BorrowerKey, VenueKey } from "#seed/scenario/borrowers.ts";
import type { Mark } from "#seed/scenario/shape.ts";

function known<Key, Value>(map: ReadonlyMap<Key, Value>, key: Key): Value {
  const value = map.get(key);
  if (value === undefined) throw new Error(`The scenario names ${String(key)} before it is recorded.`);
  return value;
}

export class World {
  readonly borrowers = new Map<BorrowerKey, string>();
  readonly venues = new Map<VenueKey, string>();
  readonly viewers = new Map<AccountKey, Viewer>();
  readonly places = new Map<string, string>();
  readonly donorCodes = new Map<string, string>();
  /** By accession number. */
  readonly specimens = new Map<string, string>();
  readonly marks = new Map<string, Record<string, Mark>>();
  readonly lastFindings = new Map<string, Finding[]>();
  readonly lastFit = new Map<string, { show: boolean; handle: boolean; travel: boolean }>();

  borrower = (key: BorrowerKey) => known(this.borrowers, key);
  venue = (key: VenueKey) => known(this.venues, key);
  place = (code: string) => known(this.places, code);
  donorCode = (key: string) => known(this.donorCodes, key);
  specimen = (accessionNumber: string) => known(this.specimens, accessionNumber);
  /** Somebody of the scenario as the one who acts. */
  as = (key: AccountKey): Viewer => known(this.viewers, key);

  institutionOf(key: AccountKey): string | null {
    const { borrower } = accounts[key];
    return borrower === null ? null : this.borrower(borrower);
  }
}
