/** A link of the frame that knows whether its place is open, and stands in sight when it is. */
"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { type ReactNode, useEffect, useRef } from "react";

export function NavigationLink({ href, children }: { href: string; children: ReactNode }) {
  const path = usePathname();
  const link = useRef<HTMLAnchorElement>(null);
  const open = href === "/" ? path === "/" : path === href || path.startsWith(`${href}/`);

  useEffect(() => {
    const row = link.current?.parentElement;
    if (!open || !link.current || !row) return;
    // The row alone is moved; the page stays where its address put it.
    row.scrollLeft = link.current.offsetLeft - (row.clientWidth - link.current.offsetWidth) / 2;
  }, [open]);

  return (
    <Link ref={link} href={href} aria-current={open ? "page" : undefined}>
      {children}
    </Link>
  );
}
