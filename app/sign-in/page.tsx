/** Signing in. */
import type { Metadata } from "next";
import { signInWords } from "#app/_words/en/sign-in.ts";
import styles from "#app/sign-in/sign-in.module.css";
import { SignInForm } from "#app/sign-in/sign-in-form.tsx";

export const metadata: Metadata = { title: signInWords.title };

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ to?: string }> }) {
  const { to } = await searchParams;
  return (
    <main className={styles.page}>
      <h1>Anatheca</h1>
      <p className={styles.about}>{signInWords.about}</p>
      <SignInForm to={typeof to === "string" ? to : "/"} />
      <p className="quiet small">{signInWords.help}</p>
    </main>
  );
}
