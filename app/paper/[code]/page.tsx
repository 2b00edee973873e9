/**
 * What anyone who holds a paper sees by its code, without signing in: which paper it
 * is, and whether it is the valid version. Nothing of the loan besides its number, and
 * nothing of specimens, people or places.
 */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Facts } from "#app/_parts/facts.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Masthead } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { papersWords } from "#app/_words/en/papers.ts";
import styles from "#app/paper/[code]/paper.module.css";
import { type CheckedPaper, checkPaper, type NamedVersion } from "#lib/papers/queries/loan-papers.ts";
import { readConfig } from "#lib/platform/config.ts";

const words = papersWords.check;

export const metadata: Metadata = { title: words.title, referrer: "no-referrer" };
export const dynamic = "force-dynamic";

const languageName = (code: string) => papersWords.languages[code] ?? code;
const named = ({ version, languages }: NamedVersion) => words.which(version, languages.map(languageName));

function Standing({ paper }: { paper: CheckedPaper }) {
  if (!paper.holds) return <StateMark outcome="bar">{words.notValid(named(paper))}</StateMark>;
  if (paper.isSigned === false) return <StateMark outcome="attend">{words.unsigned(named(paper))}</StateMark>;
  return <StateMark outcome="clear">{words.valid(named(paper))}</StateMark>;
}

export default async function CheckPaperPage({ params }: { params: Promise<{ code: string }> }) {
  const { code } = await params;
  const paper = await checkPaper(code, readConfig().secret);
  if (!paper) notFound();
  const others = paper.others.map(named).join("; ");
  return (
    <main className={styles.page}>
      <Masthead number={paper.loanNumber} title={papersWords.kinds[paper.kind]} />
      <p>
        <Standing paper={paper} />
      </p>
      {others !== "" && <p>{paper.holds ? words.beside(others) : words.replaced(others)}</p>}
      <Facts
        facts={[
          [words.loan, paper.loanNumber],
          [papersWords.version, String(paper.version)],
          paper.languages.length > 0 && [words.languages, paper.languages.map(languageName).join(", ")],
          [papersWords.issued, <Moment key="issued" at={paper.issuedAt} long />],
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
