/** Prints the page; where there is no script the browser's own command does. */
"use client";

import { recallLetterWords as words } from "#app/_words/en/recall-letter.ts";

export function PrintButton() {
  return (
    <button type="button" className="outline no-print" onClick={() => window.print()}>
      {words.print}
    </button>
  );
}
