/** The answer to every code that no paper bears. */
import type { Metadata } from "next";
import { connection } from "next/server";
import { papersWords } from "#app/_words/en/papers.ts";
import styles from "#app/paper/[code]/paper.module.css";

export const metadata: Metadata = { title: papersWords.check.unknownTitle };

export default async function NoSuchPaper() {
  await connection();
  return (
    <main className={styles.page}>
      <h1>{papersWords.check.unknownTitle}</h1>
      <p>{papersWords.check.unknown}</p>
    </main>
  );
}
