/** What is not there and what is not yours look the same. */
import type { Metadata } from "next";
import Link from "next/link";
import { connection } from "next/server";
import { outsideWords } from "#app/_words/en/outside.mjs";
import { shellWords } from "#app/_words/en/shell.ts";
import styles from "#app/sign-in/sign-in.module.css";

export const metadata: Metadata = { title: shellWords.notFoundTitle };

export default async function NotFound() {
  // Drawn for each request: the scripts of a page drawn beforehand bear no word that lets them run.
  await connection();
  return (
    <main className={styles.page}>
      <h1>{shellWords.notFoundTitle}</h1>
      <p className={styles.about}>{shellWords.notFoundText}</p>
      <p>
        <Link href="/">{outsideWords.start}</Link>
      </p>
      <p>
        <Link href="/specimens">{outsideWords.specimens}</Link>
      </p>
    </main>
  );
}
