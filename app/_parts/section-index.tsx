/** The sections of a record at its side; the one being read is marked as the page moves under the hand. */
"use client";

import { useEffect, useState } from "react";
import styles from "#app/_parts/record-page.module.css";
import { shellWords } from "#app/_words/en/shell.ts";

export type IndexEntry = { id: string; label: string; count?: number | undefined };

/** The upper part of the window is where one reads. */
const readingBand = "-10% 0px -70% 0px";

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
