/** Moves along a ruler with the arrow keys: one stop for Tab, the open sheet, instead of one for each sheet. */
"use client";

import { type KeyboardEvent, type ReactNode, useEffect, useRef } from "react";

const strides: Readonly<Record<string, number>> = {
  ArrowDown: 1,
  ArrowRight: 1,
  ArrowUp: -1,
  ArrowLeft: -1,
  PageDown: 10,
  PageUp: -10,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

export function RulerKeys({ label, children }: { label: string; children: ReactNode }) {
  const around = useRef<HTMLElement>(null);
  const ticks = () => [...(around.current?.querySelectorAll<SVGAElement>("a") ?? [])];

  useEffect(() => {
    const all = ticks();
    const stop = all.find((tick) => tick.hasAttribute("aria-current")) ?? all[0];
    for (const tick of all) tick.setAttribute("tabindex", tick === stop ? "0" : "-1");
  });

  const move = (event: KeyboardEvent) => {
    const stride = strides[event.key];
    const all = ticks();
    const here = all.indexOf(document.activeElement as unknown as SVGAElement);
    if (stride === undefined || here < 0) return;
    event.preventDefault();
    all[Math.min(Math.max(here + stride, 0), all.length - 1)]?.focus();
  };

  return (
    <nav ref={around} aria-label={label} onKeyDown={move}>
      {children}
    </nav>
  );
}
