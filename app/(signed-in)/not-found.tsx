/** What is not there and what is not yours look the same; the frame stays. */
import Link from "next/link";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { placeWords } from "#app/_words/en/places.ts";
import { shellWords } from "#app/_words/en/shell.ts";

export default function NotFound() {
  return (
    <PlainPage>
      <Masthead title={shellWords.notFoundTitle} />
      <p>{shellWords.notFoundText}</p>
      <p>
        <Link href="/specimens">{placeWords.specimens}</Link>
      </p>
    </PlainPage>
  );
}
