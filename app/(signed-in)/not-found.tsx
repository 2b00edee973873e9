/** What is not there and what is not yours look the same; the frame stays. */
import Link from "next/link";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { outsideWords } from "#app/_words/en/outside.mjs";
import { shellWords } from "#app/_words/en/shell.ts";

export default function NotFound() {
  return (
    <PlainPage>
      <Masthead title={shellWords.notFoundTitle} />
      <p>{shellWords.notFoundText}</p>
      <p>
        <Link href="/">{outsideWords.start}</Link>
      </p>
      <p>
        <Link href="/specimens">{outsideWords.specimens}</Link>
      </p>
    </PlainPage>
  );
}
