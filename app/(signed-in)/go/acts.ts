/** Where each frequent act is done, and for whom there is such a place. */
import { type ActName, actWords } from "#app/_words/en/go.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

type Place = { address: string; isFor: (viewer: Viewer) => boolean };

const everybody = () => true;

/** In the order in which they are offered as an example: what is most a role's own comes first. */
const places: Record<ActName, Place> = {
  newSpecimen: { address: "/specimens/new", isFor: (viewer) => mayDo(viewer, "recordSpecimen") },
  newInstitution: { address: "/institutions/new", isFor: (viewer) => mayDo(viewer, "keepInstitution") },
  slip: { address: "/slip", isFor: (viewer) => mayDo(viewer, "openLoan") },
  set: { address: "/borrow", isFor: everybody },
  donors: { address: "/donors", isFor: (viewer) => maySee(viewer, "donorCode") },
  accounts: { address: "/accounts", isFor: (viewer) => maySee(viewer, "accounts") },
  whatHappened: { address: "/audit", isFor: (viewer) => maySee(viewer, "audit") },
  newSeries: { address: "/series/new", isFor: (viewer) => mayDo(viewer, "recordSeries") },
  newLoan: { address: "/loans/new", isFor: (viewer) => mayDo(viewer, "openLoan") && !isBorrower(viewer) },
  places: { address: "/places", isFor: (viewer) => maySee(viewer, "storeLocation") },
  institutions: { address: "/institutions", isFor: (viewer) => maySee(viewer, "institutions") },
  loans: { address: "/loans", isFor: (viewer) => isBorrower(viewer) || maySee(viewer, "allLoans") },
  due: { address: "/", isFor: everybody },
  series: { address: "/series", isFor: everybody },
  centre: { address: "/centre", isFor: (viewer) => maySee(viewer, "institutions") },
  workings: { address: "/workings", isFor: everybody },
};

/** The act that is called so, and its address for this viewer; the address is null where it is not theirs. */
export function actCalled(viewer: Viewer, text: string): { address: string | null } | null {
  const plain = text.toLowerCase();
  const names = Object.keys(actWords) as ActName[];
  const name = names.find((each) => (actWords[each] as readonly string[]).includes(plain));
  if (name === undefined) return null;
  const { address, isFor } = places[name];
  return { address: isFor(viewer) ? address : null };
}

/** What a person of this role does often, as it is typed. */
export function exampleAct(viewer: Viewer): string {
  const names = Object.keys(places) as ActName[];
  return actWords[names.find((name) => places[name].isFor(viewer)) ?? "workings"][0];
}
