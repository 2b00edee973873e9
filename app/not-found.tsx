/** What is not there and what is not yours look the same. */
import type { Metadata } from "next";
import Link from "next/link";
import { shellWords } from "#app/_words/en/shell.ts";
import styles from "#app/sign-in/sign-in.module.css";

export const metadata: Metadata = { title: shellWords.notFoundTitle };

export default function NotFound() {
  return (
    <main className={styles.page}>
      <h1>{shellWords.notFoundTitle}</h1>
      <p className={styles.about}>{shellWords.notFoundText}</p>
      <p>
        <Link href="/">Anatheca</Link>
      </p>
    </main>
  );
}
