/** The way through a long list, page by page, by key. */
import Link from "next/link";
import styles from "#app/_parts/pager.module.css";
import { shellWords } from "#app/_words/en/shell.ts";

export function Pager({ previous, next }: { previous: string | null; next: string | null }) {
  if (!previous && !next) return null;
  return (
    <nav aria-label={shellWords.pages} className={`no-print ${styles.pager}`}>
      {previous && (
        <Link href={previous} rel="prev">
          ← {shellWords.previousPage}
        </Link>
      )}
      {next && (
        <Link href={next} rel="next">
          {shellWords.nextPage} →
        </Link>
      )}
    </nav>
  );
}
