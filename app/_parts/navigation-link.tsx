/** A link of the frame that knows whether its place is open. */
"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import type { ReactNode } from "react";

export function NavigationLink({ href, children }: { href: string; children: ReactNode }) {
  const path = usePathname();
  const open = href === "/" ? path === "/" : path === href || path.startsWith(`${href}/`);
  return (
    <Link href={href} aria-current={open ? "page" : undefined}>
      {children}
    </Link>
  );
}
