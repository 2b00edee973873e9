/** The frame for everyone who is signed in; each sees the places that are theirs. */
import type { ReactNode } from "react";
import { type Place, Shell } from "#app/_parts/shell.tsx";
import { currentViewer } from "#app/_server/viewer.ts";
import { placeWords } from "#app/_words/en/places.ts";
import { shellWords } from "#app/_words/en/shell.ts";
import { signOut } from "#app/sign-in/actions.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

function placesOf(viewer: Viewer): Place[] {
  if (isBorrower(viewer)) {
    return [
      { href: "/", label: placeWords.expected },
      { href: "/specimens", label: placeWords.find },
      { href: "/borrow", label: placeWords.borrow },
      { href: "/slip", label: placeWords.slip },
      { href: "/loans", label: placeWords.yourLoans },
      ...(viewer.roles.includes("borrower registrar")
        ? [{ href: "/institutions", label: placeWords.yourInstitution }]
        : []),
      { href: "/series", label: placeWords.series },
      { href: "/workings", label: placeWords.workings },
    ];
  }
  return [
    { href: "/", label: placeWords.due },
    { href: "/specimens", label: placeWords.specimens },
    ...(maySee(viewer, "storeLocation") ? [{ href: "/places", label: placeWords.stores }] : []),
    { href: "/series", label: placeWords.series },
    ...(maySee(viewer, "allLoans") ? [{ href: "/loans", label: placeWords.loans }] : []),
    ...(maySee(viewer, "institutions") ? [{ href: "/institutions", label: placeWords.institutions }] : []),
    ...(maySee(viewer, "donorCode") ? [{ href: "/donors", label: placeWords.donors }] : []),
    ...(maySee(viewer, "mandates") ? [{ href: "/mandates", label: placeWords.mandates }] : []),
    ...(maySee(viewer, "accounts") ? [{ href: "/accounts", label: placeWords.accounts }] : []),
    ...(maySee(viewer, "audit") ? [{ href: "/audit", label: placeWords.audit }] : []),
    { href: "/workings", label: placeWords.workings },
  ];
}

export default async function SignedInLayout({ children }: { children: ReactNode }) {
  const viewer = await currentViewer();
  // Each page sends a stranger to the sign-in page itself, because it knows its own address to come back to.
  if (!viewer) return children;
  return (
    <Shell
      places={placesOf(viewer)}
      foot={[
        { href: "/letters", label: placeWords.letters },
        { href: "/calendar", label: placeWords.calendar },
        ...(maySee(viewer, "institutions") ? [{ href: "/centre", label: placeWords.centre }] : []),
      ]}
      who={`${viewer.name}, ${viewer.roles.join(", ")}`}
      signOut={
        <form action={signOut}>
          <button type="submit" className="plain">
            {shellWords.signOut}
          </button>
        </form>
      }
    >
      {children}
    </Shell>
  );
}
