/**
 * A bug, shown with the reference under which it stands in the log; or a form that
 * was refused before the program saw it, shown with the sentence it was refused by.
 */
"use client";

import { unstable_isUnrecognizedActionError as isStaleForm } from "next/navigation";
import { shellWords } from "#app/_words/en/shell.ts";
import styles from "#app/sign-in/sign-in.module.css";

/** What is known of it, in words. */
function wordsOf(error: Error, isStale: boolean): { title: string; text: string } {
  if (isStale) return { title: shellWords.staleTitle, text: shellWords.staleText };
  if (shellWords.refusedAtDoor.includes(error.message))
    return { title: shellWords.refusedTitle, text: error.message };
  return { title: shellWords.errorTitle, text: shellWords.errorText };
}

export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  const isStale: boolean = isStaleForm(error);
  const { title, text } = wordsOf(error, isStale);
  return (
    <main className={styles.page}>
      <h1>{title}</h1>
      <p className={styles.about}>{text}</p>
      {error.digest && (
        <p>
          {shellWords.errorReference} <span className="mono">{error.digest}</span>
        </p>
      )}
      {isStale ? (
        <button type="button" onClick={() => location.reload()}>
          {shellWords.openAnew}
        </button>
      ) : (
        <button type="button" onClick={reset}>
          {shellWords.tryAgain}
        </button>
      )}
    </main>
  );
}
