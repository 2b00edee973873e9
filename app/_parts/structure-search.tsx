/** Finds a structure while it is typed, by any of its names; arrows and Enter choose. */
"use client";

import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import styles from "#app/_parts/structure-search.module.css";

export type StructureChoice = { id: string; english: string; latin: string; paired: boolean };

export function StructureSearch({
  label,
  choose,
}: {
  label: string;
  choose: (structure: StructureChoice) => void;
}) {
  const [text, setText] = useState("");
  const [found, setFound] = useState<StructureChoice[]>([]);
  const [active, setActive] = useState(0);
  const list = useId();
  const field = useRef<HTMLInputElement>(null);

  useEffect(() => {
    const asked = text.trim();
    if (asked.length < 2) {
      setFound([]);
      return;
    }
    const stop = new AbortController();
    const wait = setTimeout(async () => {
      try {
        const answer = await fetch(`/api/v1/structures?q=${encodeURIComponent(asked)}`, {
          signal: stop.signal,
        });
        if (answer.ok) setFound(((await answer.json()) as StructureChoice[]).slice(0, 12));
        setActive(0);
      } catch (error) {
        if (!(error instanceof DOMException)) throw error;
      }
    }, 120);
    return () => {
      clearTimeout(wait);
      stop.abort();
    };
  }, [text]);

  const take = (structure: StructureChoice | undefined) => {
    if (!structure) return;
    choose(structure);
    setText("");
    setFound([]);
    field.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (found.length === 0) {
      // What is typed is still being looked for: the form around is not sent without it.
      if (event.key === "Enter" && text.trim() !== "") event.preventDefault();
      return;
    }
    if (event.key === "ArrowDown") setActive((active + 1) % found.length);
    else if (event.key === "ArrowUp") setActive((active + found.length - 1) % found.length);
    else if (event.key === "Enter") take(found[active]);
    else if (event.key === "Escape") setFound([]);
    else return;
    event.preventDefault();
  };

  return (
    <div className={styles.search}>
      <label htmlFor={`${list}-field`}>{label}</label>
      <input
        id={`${list}-field`}
        ref={field}
        role="combobox"
        aria-expanded={found.length > 0}
        aria-controls={list}
        aria-autocomplete="list"
        aria-activedescendant={found.length > 0 ? `${list}-${active}` : undefined}
        autoComplete="off"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <div id={list} role="listbox" aria-label={label} className={styles.list} hidden={found.length === 0}>
        {found.map((structure, index) => (
          <div
            key={structure.id}
            id={`${list}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === active}
            onPointerDown={(event) => {
              event.preventDefault();
              take(structure);
            }}
          >
            {structure.english} <i>{structure.latin}</i>
          </div>
        ))}
      </div>
    </div>
  );
}
