/** Signing in. Who is signed in already is led on. */
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { currentViewer } from "#app/_server/viewer.ts";
import { signInWords } from "#app/_words/en/sign-in.ts";
import styles from "#app/sign-in/sign-in.module.css";
import { SignInForm } from "#app/sign-in/sign-in-form.tsx";
import { wayBack } from "#app/sign-in/way-back.ts";
import { findOpenCatalogue } from "#lib/specimens/queries/public-catalogue.ts";

export const metadata: Metadata = { title: signInWords.title };

export default async function SignInPage({
  searchParams,
}: {
  searchParams: Promise<{ to?: string | string[] }>;
}) {
  const { to } = await searchParams;
  if (await currentViewer()) redirect(wayBack(to));
  return (
    <main className={styles.page}>
      <h1>Anatheca</h1>
      <p className={styles.about}>{signInWords.about}</p>
      <SignInForm to={wayBack(to)} />
      <p className="quiet small">{signInWords.help}</p>
      {(await findOpenCatalogue(null)) && (
        <p>
          <Link href="/catalogue">{signInWords.catalogue}</Link>
        </p>
      )}
    </main>
  );
}
