/** Two pictures of one thing side by side: before at the left, now at the right; under each other on a narrow page. */
import type { ReactNode } from "react";
import styles from "#app/_parts/specimen-drawing.module.css";

export type Shot = { picture: ReactNode; caption: ReactNode };

export function BeforeAfter({ before, after }: { before: Shot; after: Shot }) {
  return (
    <div className={styles.pair}>
      {[before, after].map((shot, position) => (
        <figure key={position === 0 ? "before" : "after"} className={styles.figure}>
          {shot.picture}
          <figcaption>{shot.caption}</figcaption>
        </figure>
      ))}
    </div>
  );
}
