/** Keys of the field that goes anywhere: Ctrl K (or Cmd K) brings one there, Escape leaves it and its card. */
"use client";

import { useEffect } from "react";

export function GoKeys({ fieldId }: { fieldId: string }) {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const field = document.getElementById(fieldId);
      if (!(field instanceof HTMLInputElement)) return;
      if (event.key.toLowerCase() === "k" && (event.ctrlKey || event.metaKey) && !event.altKey) {
        event.preventDefault();
        field.focus();
        field.select();
      } else if (event.key === "Escape") {
        const inside = document.activeElement;
        if (inside instanceof HTMLElement && field.closest("search")?.contains(inside)) inside.blur();
      }
    };
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, [fieldId]);
  return null;
}
