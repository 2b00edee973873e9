/** The languages in which the reasons can be read, as links, so that an address can be sent on. */
import { reasonsWords as words } from "#app/_words/en/reasons.ts";
import styles from "#app/(signed-in)/loans/[id]/suitability/reasons-choice.module.css";
import { type PaperLanguage, paperLanguages } from "#lib/papers/languages.ts";

export function ReasonsChoice({ loanId, current }: { loanId: string; current: PaperLanguage }) {
  return (
    <nav className={`${styles.choice} small quiet`} aria-label={words.label}>
      <span>{words.readIn}</span>
      {paperLanguages.map((language) => (
        <a
          key={language}
          href={`/loans/${loanId}?reasons=${language}#suitability`}
          aria-current={language === current ? "true" : undefined}
        >
          {words.languages[language]}
        </a>
      ))}
    </nav>
  );
}
