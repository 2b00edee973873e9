/** A bug, shown with the reference under which it stands in the log. */
"use client";

import { shellWords } from "#app/_words/en/shell.ts";
import styles from "#app/sign-in/sign-in.module.css";

export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <main className={styles.page}>
      <h1>{shellWords.errorTitle}</h1>
      <p className={styles.about}>{shellWords.errorText}</p>
      {error.digest && <p className="mono">{error.digest}</p>}
      <button type="button" onClick={reset}>
        {shellWords.tryAgain}
      </button>
    </main>
  );
}
