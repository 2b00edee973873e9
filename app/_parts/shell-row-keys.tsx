/**
 * Keys of every list: from the name of a row, or from the heading above the rows,
 * the arrows lead to the names of the rows beside it. Where the focus stands on
 * anything else, an arrow does what it always does.
 */
"use client";

import { useEffect } from "react";

const rowName = "tbody th[scope=row] a[href]";
/** A heading that stands above the rows of a list. */
const listHeading = "[data-heads-list]";

/** The names of the rows of the list at which the focus stands, and which of them has it: -1 above all of them. */
function listAtFocus(): { names: HTMLElement[]; at: number } | null {
  const focus = document.activeElement;
  if (!(focus instanceof HTMLElement)) return null;
  if (focus.matches(listHeading)) {
    const all = [...document.querySelectorAll<HTMLElement>(rowName)];
    const isBehind = (name: HTMLElement) =>
      (focus.compareDocumentPosition(name) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
    const table = all.find(isBehind)?.closest("table");
    return table ? { names: [...table.querySelectorAll<HTMLElement>(rowName)], at: -1 } : null;
  }
  const table = focus.matches(rowName) ? focus.closest("table") : null;
  if (!table) return null;
  // One name for each row, whatever else its cell links to.
  const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
  const names = rows.flatMap((row) => row.querySelector<HTMLElement>("th[scope=row] a[href]") ?? []);
  return { names, at: names.indexOf(focus) };
}

export function ShellRowKeys() {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
      if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
      const list = listAtFocus();
      const next = list?.names[list.at + (event.key === "ArrowDown" ? 1 : -1)];
      if (!next) return;
      event.preventDefault();
      next.focus();
    };
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, []);
  return null;
}
