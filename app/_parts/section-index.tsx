/**
 * The sections of a record at its side; the one being read is marked as the page
 * moves under the hand. Whatever link leads into a folded section opens it.
 */
"use client";

import { useEffect, useState } from "react";
import styles from "#app/_parts/record-page.module.css";
import { shellWords } from "#app/_words/en/shell.ts";

export type IndexEntry = { id: string; label: string; count?: number | undefined };

/** The upper part of the window is where one reads. */
const readingBand = "-10% 0px -70% 0px";

/** Opens everything that the named place is folded away in. @returns whether something was closed */
function unfold(id: string): boolean {
  const target = id === "" ? null : document.getElementById(id);
  let opened = false;
  for (let fold = target?.closest("details"); fold; fold = fold.parentElement?.closest("details")) {
    opened ||= !fold.open;
    fold.open = true;
  }
  return opened;
}

const nameIn = (hash: string) => decodeURIComponent(hash.slice(1));

export function SectionIndex({ entries }: { entries: readonly IndexEntry[] }) {
  const [read, setRead] = useState<string | null>(null);
  const ids = entries.map((entry) => entry.id).join(" ");

  useEffect(() => {
    const sections = ids
      .split(" ")
      .map((id) => document.getElementById(id)?.closest("section"))
      .filter((section) => section != null);
    const inBand = new Set<Element>();
    const observer = new IntersectionObserver(
      (changes) => {
        for (const { target, isIntersecting } of changes) {
          if (isIntersecting) inBand.add(target);
          else inBand.delete(target);
        }
        const first = sections.find((section) => inBand.has(section));
        if (first) setRead(first.getAttribute("aria-labelledby"));
      },
      { rootMargin: readingBand },
    );
    for (const section of sections) observer.observe(section);
    return () => observer.disconnect();
  }, [ids]);

  useEffect(() => {
    const here = nameIn(window.location.hash);
    if (unfold(here)) document.getElementById(here)?.scrollIntoView();
    const onHash = () => unfold(nameIn(window.location.hash));
    // A link on the page opens its section before the page moves to it, also when it is followed again.
    const onClick = ({ target }: MouseEvent) => {
      const link = target instanceof Element ? target.closest<HTMLAnchorElement>("a[href*='#']") : null;
      if (link?.pathname === window.location.pathname) unfold(nameIn(link.hash));
    };
    window.addEventListener("hashchange", onHash);
    document.addEventListener("click", onClick, { capture: true });
    return () => {
      window.removeEventListener("hashchange", onHash);
      document.removeEventListener("click", onClick, { capture: true });
    };
  }, []);

  return (
    <nav className={styles.index} aria-label={shellWords.sections}>
      <ul>
        {entries.map((entry) => (
          <li key={entry.id}>
            <a href={`#${entry.id}`} aria-current={read === entry.id ? "true" : undefined}>
              {entry.label}
              {entry.count !== undefined && <span>{entry.count}</span>}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
