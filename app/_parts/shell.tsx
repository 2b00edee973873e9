/** The frame of every page: the name, the places, one field to go anywhere, who is signed in; the house at the foot. */
import Link from "next/link";
import type { ReactNode } from "react";
import { GoKeys } from "#app/_parts/go-keys.tsx";
import { NavigationLink } from "#app/_parts/navigation-link.tsx";
import styles from "#app/_parts/shell.module.css";
import { ShellExamples } from "#app/_parts/shell-examples.tsx";
import { ShellRowKeys } from "#app/_parts/shell-row-keys.tsx";
import { shellWords } from "#app/_words/en/shell.ts";

export type Place = { href: string; label: string };

export function Shell({
  places,
  foot = [],
  who,
  signOut,
  children,
}: {
  places: readonly Place[];
  /** What is rarely gone to. */
  foot?: readonly Place[];
  who: string;
  signOut: ReactNode;
  children: ReactNode;
}) {
  return (
    <>
      <a className={styles.skip} href="#content">
        {shellWords.skip}
      </a>
      <header className={styles.top}>
        <Link className={styles.name} href="/">
          Anatheca
        </Link>
        <nav className={styles.nav} aria-label={shellWords.places}>
          {places.map((place) => (
            <NavigationLink key={place.href} href={place.href}>
              {place.label}
            </NavigationLink>
          ))}
        </nav>
        <search className={styles.find}>
          <form action="/go">
            <label className="visually-hidden" htmlFor="go-to-or-do">
              {shellWords.goToOrDo}
            </label>
            <input
              id="go-to-or-do"
              name="q"
              placeholder={shellWords.goToOrDo}
              autoComplete="off"
              autoCapitalize="none"
              spellCheck={false}
              aria-describedby="go-examples"
            />
          </form>
          <div className={styles.examples} id="go-examples">
            <ShellExamples />
            <p>{shellWords.goToOrDoKeys}</p>
          </div>
          <GoKeys fieldId="go-to-or-do" />
          <ShellRowKeys />
        </search>
        <div className={styles.who}>
          <span>{who}</span>
          {signOut}
        </div>
      </header>
      <main id="content" className={styles.content} tabIndex={-1}>
        {children}
      </main>
      {foot.length > 0 && (
        <footer className={styles.foot}>
          <nav aria-label={shellWords.foot}>
            {foot.map((place) => (
              <NavigationLink key={place.href} href={place.href}>
                {place.label}
              </NavigationLink>
            ))}
          </nav>
        </footer>
      )}
    </>
  );
}
