/**
 * What anyone who holds a paper sees by its code, without signing in: which paper it
 * is, and whether it is the valid version. Nothing of the loan besides its number, and
 * nothing of specimens, people or places.
 */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Facts } from "#app/_parts/facts.tsx";
import { Masthead } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { papersWords } from "#app/_words/en/papers.ts";
import { formatMoment } from "#app/_words/format.ts";
import styles from "#app/paper/[code]/paper.module.css";
import { checkPaper } from "#lib/papers/queries/loan-papers.ts";
import { readConfig } from "#lib/platform/config.ts";

const words = papersWords.check;

export const metadata: Metadata = { title: words.title, referrer: "no-referrer" };
export const dynamic = "force-dynamic";

export default async function CheckPaperPage({ params }: { params: Promise<{ code: string }> }) {
  const { code } = await params;
  const paper = await checkPaper(code, readConfig().secret);
  if (!paper) notFound();
  return (
    <main className={styles.page}>
      <Masthead number={paper.loanNumber} title={papersWords.kinds[paper.kind]} />
      <p>
        <StateMark outcome={paper.isNewest ? "clear" : "attend"}>
          {paper.isNewest ? words.valid : words.notValid}
        </StateMark>
      </p>
      <Facts
        facts={[
          [words.loan, paper.loanNumber],
          [papersWords.version, String(paper.version)],
          [papersWords.issued, formatMoment(paper.issuedAt)],
          [
            words.hash,
            <span key="hash" className={`mono ${styles.hash}`}>
              {paper.sha256}
            </span>,
          ],
        ]}
      />
      <p className="quiet">{words.compare}</p>
    </main>
  );
}
